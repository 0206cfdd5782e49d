package loadwalk.app.store;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.journal.Recovered;
import loadwalk.journal.Soundness;
import loadwalk.text.Sentence;
import loadwalk.view.state.Library;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.fact.WalkState;

/** Begins walks and tells their states, on top of the journals that hold them. */
public final class WalkFolder {
  private static final int NAME_LETTERS = 40;
  private static final int SAME_NAME_MOST = 999;
  private static final int SHOWN_MOST = 30;

  private final JournalFolder store;

  /** Makes the folder of the walks that a store keeps. */
  public WalkFolder(JournalFolder store) {
    this.store = store;
  }

  /** Returns where the journals are. */
  public JournalFolder store() {
    return store;
  }

  /** Returns the data home the walks are in. */
  public DataHome home() {
    return store.home();
  }

  /** Returns the state that a journal tells, or why it cannot be told. */
  public static WalkState state(Recovered read) {
    return FactText.walk(read.bodies());
  }

  /** Returns how far the records of a journal, which tell a state, are all that was kept. */
  public static Soundness soundness(Recovered read, WalkState state) {
    return Soundness.of(read, FactText.isClosed(read.bodies(), state.isFinished()));
  }

  /** Begins a walk; its journal appears with its first record in it or not at all. */
  public OpeningOutcome begin(Fact.Opened unnamed, long wallMillis) {
    String stem = stem(unnamed.amplifier(), wallMillis);
    OpeningOutcome opening =
        new OpeningOutcome.Refused(
            Sentence.of("This amplifier already has {} walks of today.", SAME_NAME_MOST));
    for (int number = 1; number <= SAME_NAME_MOST; number++) {
      String name = number == 1 ? stem : stem + "-" + number;
      String body = FactText.body(List.of(new Stamped(unnamed.named(name), wallMillis)));
      opening = store.create(new WalkName(name), body);
      if (!opening.isNameTaken()) {
        return opening;
      }
    }
    return opening;
  }

  private static String stem(Amplifier amplifier, long wallMillis) {
    String day = Instant.ofEpochMilli(wallMillis).atZone(ZoneOffset.UTC).toLocalDate().toString();
    String name =
        amplifier
            .name()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    String cut = name.substring(0, Math.min(NAME_LETTERS, name.length()));
    return day + "-" + (cut.isEmpty() ? "amplifier" : cut.replaceAll("-$", ""));
  }

  /** Returns what a list shows of the newest walks, with their amplifiers and benches. */
  public Library library(SequenceFinder sequences) throws IOException {
    List<Library.KeptWalk> walks = new ArrayList<>();
    Map<String, String> names = new HashMap<>();
    Map<String, Amplifier> amplifiers = new LinkedHashMap<>();
    Map<String, Bench> benches = new LinkedHashMap<>();
    for (JournalFolder.Listed listed : store.list().walks()) {
      if (walks.size() >= SHOWN_MOST) {
        break;
      }
      Optional<Recovered> read = store.peek(listed.name()).journal();
      Optional<Peeked> walk = read.flatMap(WalkFolder::told);
      if (walk.isPresent()) {
        Fact.Opened opened = walk.get().state().opened();
        String name = listed.name().text();
        String first = names.putIfAbsent(read.get().records().get(0).body(), name);
        walks.add(kept(name, walk.get(), Optional.ofNullable(first)));
        if (opened.practiceSeed().isEmpty()) {
          amplifiers.putIfAbsent(opened.amplifier().name(), opened.amplifier());
          benches.putIfAbsent(opened.bench().name(), opened.bench());
        }
      }
    }
    SequenceFinder.Offered offered = sequences.all();
    return new Library(
        offered.sequences(),
        offered.refused(),
        List.copyOf(amplifiers.values()),
        List.copyOf(benches.values()),
        walks);
  }

  private static Library.KeptWalk kept(String name, Peeked walk, Optional<String> first) {
    WalkState state = walk.state();
    boolean damaged = walk.soundness().standing() == Soundness.Standing.DAMAGED;
    String come = damaged ? "damaged" : standing(state);
    String standing = first.map(f -> Sentence.of("{}, begins as {}", come, f)).orElse(come);
    return new Library.KeptWalk(
        name,
        state.opened().amplifier().name(),
        state.opened().sequence().name(),
        standing,
        !state.isFinished() && !damaged);
  }

  private static String standing(WalkState state) {
    return state.isFinished() ? "finished" : Sentence.of("open at {}", state.currentId());
  }

  /** Tells whether a walk's journal is there and does not read to its end, or holds no record. */
  public boolean isDamaged(WalkName name) {
    Optional<Recovered> read = store.peek(name).journal();
    return read.isPresent() && (read.get().isDamaged() || read.get().records().isEmpty());
  }

  /** Returns why a walk cannot be read, in one sentence; empty where it can. */
  public Optional<String> refusal(WalkName name) {
    return store.peek(name).refusal();
  }

  /**
   * A walk as it was read, held by nobody.
   *
   * @param state its state
   * @param soundness how far its records are all that was kept
   */
  public record Peeked(WalkState state, Soundness soundness) {}

  /** Returns a walk without holding it; empty where it cannot be read. */
  public Optional<Peeked> peek(WalkName name) {
    return store.peek(name).journal().flatMap(WalkFolder::told);
  }

  private static Optional<Peeked> told(Recovered read) {
    if (read.records().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(peeked(read));
    } catch (UnreadableFact foreign) {
      return Optional.empty();
    }
  }

  /** Returns the walk that a journal tells, or why it cannot be told. */
  public static Peeked peeked(Recovered read) {
    WalkState state = state(read);
    return new Peeked(state, soundness(read, state));
  }
}
