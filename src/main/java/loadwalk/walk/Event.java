package loadwalk.walk;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;

/** An event: something that reaches a walk from outside. */
public sealed interface Event
    permits Event.Kept,
        Event.NotKept,
        Event.NotWrittenAnew,
        Event.PhotoKept,
        Event.PhotoRefused,
        Event.Tick,
        Event.Reopened,
        Intent {

  /** Returns the model after this event, with the effects to perform. */
  Next reach(Model model, Walker walker);

  /** Returns this event as a tick, if it is one. */
  default Optional<Tick> tick() {
    return Optional.empty();
  }

  /** The facts are on disk. */
  record Kept(List<Stamped> facts) implements Event {
    /** Copies the list. */
    public Kept {
      facts = List.copyOf(facts);
    }

    @Override
    public Next reach(Model model, Walker walker) {
      return walker.kept(model, facts);
    }
  }

  /**
   * The facts could not be written; none of them counts.
   *
   * @param why one sentence
   */
  record NotKept(String why) implements Event {
    @Override
    public Next reach(Model model, Walker walker) {
      return Next.quiet(model.notKept(why));
    }
  }

  /**
   * The walk could not be written anew; it waits as before.
   *
   * @param why whole sentences
   */
  record NotWrittenAnew(String why) implements Event {
    @Override
    public Next reach(Model model, Walker walker) {
      return Next.refused(model, why);
    }
  }

  /**
   * A photo is on disk.
   *
   * @param path where it is kept, relative to the data home
   * @param caption what it shows
   * @param sha256 the SHA-256 of its bytes, in hexadecimal
   * @param mediaType {@code image/png} or {@code image/jpeg}
   */
  record PhotoKept(String path, String caption, String sha256, String mediaType) implements Event {
    @Override
    public Next reach(Model model, Walker walker) {
      String step = model.state().currentId();
      return Next.keeping(
          model, List.of(new Fact.Attached(step, path, caption, sha256, mediaType)));
    }
  }

  /**
   * A photo cannot be attached.
   *
   * @param why one sentence
   */
  record PhotoRefused(String why) implements Event {
    @Override
    public Next reach(Model model, Walker walker) {
      return Next.refused(model, why);
    }
  }

  /**
   * Time has passed.
   *
   * @param monoNanos a clock that only goes forward, ns
   * @param wallMillis the wall clock, ms since 1970
   */
  record Tick(long monoNanos, long wallMillis) implements Event {
    @Override
    public Next reach(Model model, Walker walker) {
      return WarmClock.tick(model, this);
    }

    @Override
    public Optional<Tick> tick() {
      return Optional.of(this);
    }
  }

  /** The walk was read from its journal again. */
  record Reopened(long monoNanos, long wallMillis) implements Event {
    @Override
    public Next reach(Model model, Walker walker) {
      return walker.reopened(model, this);
    }
  }
}
