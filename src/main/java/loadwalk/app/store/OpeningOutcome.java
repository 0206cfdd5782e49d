package loadwalk.app.store;

import java.util.Optional;
import loadwalk.journal.Recovered;
import loadwalk.text.Sentence;

/** What came of opening a walk. */
public sealed interface OpeningOutcome {
  /** Hands itself to who must know what to do with each outcome. */
  <R> R to(Reader<R> reader);

  /** Returns what stands in the journal, where it may be read. */
  Optional<Recovered> journal();

  /** Returns why the walk cannot be opened at all, where it cannot. */
  default Optional<String> refusal() {
    return Optional.empty();
  }

  /** Tells whether the walk is held, with its lock and its file, until it is closed. */
  default boolean isHeld() {
    return false;
  }

  /** Tells whether a new walk needs another name. */
  default boolean isNameTaken() {
    return false;
  }

  /**
   * Knows what to do with each outcome.
   *
   * @param <R> what comes of it
   */
  interface Reader<R> {
    /** Takes a walk that is open for writing. */
    R writing(Writing opening);

    /** Takes a walk that may be looked at. */
    R watching(Watching opening);

    /** Takes why a walk cannot be opened. */
    R refused(String why);
  }

  /**
   * The walk is open for writing.
   *
   * @param walk where records go; to be closed
   * @param read what stands in the journal
   * @param aside where the bytes of a torn line were kept, in one sentence, where there was one
   */
  record Writing(HeldWalk walk, Recovered read, Optional<String> aside) implements OpeningOutcome {
    @Override
    public <R> R to(Reader<R> reader) {
      return reader.writing(this);
    }

    @Override
    public Optional<Recovered> journal() {
      return Optional.of(read);
    }

    @Override
    public boolean isHeld() {
      return true;
    }
  }

  /**
   * The walk may be looked at, not written on.
   *
   * @param read what stands in the journal
   * @param why why it can be read only, in whole sentences
   */
  record Watching(Recovered read, String why) implements OpeningOutcome {
    @Override
    public <R> R to(Reader<R> reader) {
      return reader.watching(this);
    }

    @Override
    public Optional<Recovered> journal() {
      return Optional.of(read);
    }
  }

  /**
   * The walk cannot be opened at all.
   *
   * @param why one sentence
   */
  record Refused(String why) implements OpeningOutcome {
    @Override
    public <R> R to(Reader<R> reader) {
      return reader.refused(why);
    }

    @Override
    public Optional<Recovered> journal() {
      return Optional.empty();
    }

    @Override
    public Optional<String> refusal() {
      return Optional.of(why);
    }
  }

  /**
   * A new walk cannot be made, as there is one of its name.
   *
   * @param name the name
   */
  record NameTaken(WalkName name) implements OpeningOutcome {
    private String why() {
      return Sentence.of("There is already a walk named {}.", name.text());
    }

    @Override
    public <R> R to(Reader<R> reader) {
      return reader.refused(why());
    }

    @Override
    public Optional<Recovered> journal() {
      return Optional.empty();
    }

    @Override
    public Optional<String> refusal() {
      return Optional.of(why());
    }

    @Override
    public boolean isNameTaken() {
      return true;
    }
  }
}
