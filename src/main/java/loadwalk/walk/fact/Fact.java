package loadwalk.walk.fact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.json.Read;
import loadwalk.json.Shape;
import loadwalk.result.Repeatability;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState.Hold;

/** A fact: something that happened in a walk, as its journal keeps it. */
public sealed interface Fact extends FactsOfStep {

  /**
   * Goes through the fields of the fact as its journal keeps them, see {@link
   * loadwalk.json.Shaped}. A fact does not implement that type: facts are loaded before the first
   * frame, and no JSON class should be.
   */
  Fact shape(Shape in);

  /** Returns the state after this fact; {@link Opened} is the only one that needs no state. */
  WalkState applyTo(WalkState state, long wallMillis);

  /**
   * Tells whether later briefs rest on this fact, so that a brief already shown must be made again.
   */
  default boolean changesEvidence() {
    return false;
  }

  /** Tells whether a step starts to run with this fact. */
  default boolean startsStep() {
    return false;
  }

  /** Tells whether the running warm-up clock restarts from the value in the state. */
  default boolean resetsWarmClock() {
    return false;
  }

  /** Returns the message for the operator once this fact is on disk, if no screen shows it. */
  default Optional<String> toldOnceKept() {
    return Optional.empty();
  }

  /** Returns the fact that opens a walk, if this is one; only the first fact of a journal is. */
  default Optional<Opened> opening() {
    return Optional.empty();
  }

  /** Returns this fact as a judgement of a reading, if it is one. */
  default Optional<OfReading> judgement() {
    return Optional.empty();
  }

  /** Calls the reviewer if this fact concerns a whole step; most facts do not. */
  default void showTo(StepReviewer reviewer) {}

  /** A fact about one step. */
  sealed interface OfStep extends Fact
      permits OfReading,
          Briefed,
          Armed,
          HaltLifted,
          Begun,
          Warmed,
          StoodBy,
          CriterionSet,
          PairAdded,
          Captured,
          EndedEarly,
          Ended,
          Skipped {
    /** Returns the id of the step. */
    String step();

    /** Returns the step's state after this fact. */
    StepState change(StepState before);

    @Override
    default WalkState applyTo(WalkState state, long wallMillis) {
      return state.step(step(), this::change).at(wallMillis);
    }
  }

  /** A fact that judges one reading of a step. */
  sealed interface OfReading extends OfStep permits Entered, Doubted {
    /** Returns the reading. */
    ReadingId reading();

    /** Returns the doubts; empty if there are none. */
    List<Doubt> doubts();

    /** Returns the value entered with this fact; empty if it judges an earlier value. */
    Optional<Entered> entered();

    @Override
    default boolean changesEvidence() {
      return true;
    }

    @Override
    default Optional<OfReading> judgement() {
      return Optional.of(this);
    }
  }

  /**
   * The walk began.
   *
   * @param walk the walk's name
   * @param version the version of Loadwalk that began it
   * @param sequence the sequence, as read
   * @param sequenceText the sequence file's text, kept so that the walk needs no other file
   * @param amplifier the amplifier
   * @param bench the bench
   * @param practiceSeed the seed of the practice amplifier, if it is one
   * @param learned how well the bench repeated a reading before, where enough is known
   */
  record Opened(
      String walk,
      String version,
      Sequence sequence,
      String sequenceText,
      Amplifier amplifier,
      Bench bench,
      OptionalLong practiceSeed,
      Optional<Learned> learned)
      implements Fact {
    /** The largest seed that every reader of a journal reads exactly; numbers there are doubles. */
    public static final long LARGEST_SEED = 1L << 53;

    /** Checks the seed. */
    public Opened {
      if (practiceSeed.isPresent() && Math.abs(practiceSeed.getAsLong()) > LARGEST_SEED) {
        throw new IllegalArgumentException("the seed of a practice amplifier is at most 2^53");
      }
    }

    /** Begins a walk on a bench of which too little is known. */
    public Opened(
        String walk,
        String version,
        Sequence sequence,
        String sequenceText,
        Amplifier amplifier,
        Bench bench,
        OptionalLong practiceSeed) {
      this(walk, version, sequence, sequenceText, amplifier, bench, practiceSeed, Optional.empty());
    }

    /** Returns the same walk under another name. */
    public Opened named(String name) {
      return new Opened(
          name, version, sequence, sequenceText, amplifier, bench, practiceSeed, learned);
    }

    /** Returns how well its bench repeats a reading: what was learned, or the default. */
    public Repeatability repeatability() {
      return learned.map(Learned::repeatability).orElse(Repeatability.DEFAULT);
    }

    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return WalkState.begin(this, wallMillis);
    }

    @Override
    public Optional<Opened> opening() {
      return Optional.of(this);
    }

    @Override
    public Fact shape(Shape in) {
      String name = in.text("walk", walk);
      String by = in.text("version", version);
      String text = in.text("sequenceText", sequenceText);
      Optional<Sequence> read = Optional.ofNullable(sequence);
      return new Opened(
          name,
          by,
          read.isPresent() ? read.get() : sequence(in, text),
          text,
          in.embedded("amplifier", amplifier, BenchFiles.AMPLIFIER),
          in.embedded("bench", bench, BenchFiles.BENCH),
          in.whole("practiceSeed", practiceSeed, -LARGEST_SEED, LARGEST_SEED),
          in.part("repeatability", learned, Learned.blank()));
    }

    private static Sequence sequence(Shape in, String text) {
      Read<Sequence> read = SequenceReader.read(text, "sequence");
      read.faults().stream().limit(1).forEach(f -> in.refuse("sequenceText", f.sentence()));
      return read.found().orElse(null);
    }
  }

  /** The step was finished; its readings are in. */
  record Done(String step) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      WalkState done = state.step(step, before -> before.with(Status.DONE)).at(wallMillis);
      boolean warm = state.planned(step).filter(p -> p.step().warmUp().isPresent()).isPresent();
      return warm ? done.cooledBecause(Optional.empty()) : done;
    }

    @Override
    public boolean changesEvidence() {
      return true;
    }

    @Override
    public void showTo(StepReviewer reviewer) {
      reviewer.ended(step);
    }

    @Override
    public Fact shape(Shape in) {
      return new Done(in.text("step", step));
    }
  }

  /** A note was written. */
  record Noted(String step, String text) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state.noted(new WalkState.Note(step, text, wallMillis)).at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return new Noted(in.text("step", step), in.text("text", text));
    }
  }

  /**
   * The operator said how the amplifier's gain and controls are set.
   *
   * @param text as typed
   */
  record ControlsSet(String text) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state.controlled(text).at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return new ControlsSet(in.text("text", text));
    }
  }

  /**
   * The journal could not be written any more, and the whole walk was written anew.
   *
   * @param why why it could not, in one sentence
   */
  record WrittenAnew(String step, String why) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      String told = Sentence.of("Loadwalk wrote the whole walk anew. {}", why);
      return state.noted(new WalkState.Note(step, told, wallMillis)).at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return new WrittenAnew(in.text("step", step), in.text("reason", why));
    }
  }

  /**
   * A photo was attached.
   *
   * @param path where it is kept, relative to the data home
   * @param caption what it shows, as typed
   * @param sha256 the SHA-256 of its bytes, in hexadecimal
   * @param mediaType {@code image/png} or {@code image/jpeg}
   */
  record Attached(String step, String path, String caption, String sha256, String mediaType)
      implements Fact {
    /** Checks the hash and the type. */
    public Attached {
      if (!sha256.matches("[0-9a-f]{64}")) {
        throw new IllegalArgumentException("the «sha256» of a photo has 64 hexadecimal digits");
      }
      if (!mediaType.equals("image/png") && !mediaType.equals("image/jpeg")) {
        throw new IllegalArgumentException("a photo is an image/png or an image/jpeg");
      }
    }

    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state
          .attached(new WalkState.Attachment(step, path, caption, sha256, mediaType, wallMillis))
          .at(wallMillis);
    }

    @Override
    public Optional<String> toldOnceKept() {
      return Optional.of(Sentence.of("The photo is kept as {}.", path));
    }

    @Override
    public Fact shape(Shape in) {
      return new Attached(
          in.text("step", step),
          in.text("path", path),
          in.text("caption", caption),
          in.text("sha256", sha256),
          in.text("mediaType", mediaType));
    }
  }

  /** The operator stopped at once; a running step must be briefed and armed again. */
  record Stopped(String step) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state
          .step(step, Fact::backToAhead)
          .stopped(new WalkState.Stop(step, wallMillis, Optional.empty()))
          .holding(Hold.STOPPED)
          .at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return new Stopped(in.text("step", step));
    }
  }

  /** The operator said why the walk was stopped. */
  record StopExplained(String reason) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state.stoppedBecause(reason).holding(Hold.PAUSED).at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return new StopExplained(in.text("reason", reason));
    }
  }

  /** The walk was paused. */
  record Paused() implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state.holding(Hold.PAUSED).at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return this;
    }
  }

  /** The walk was resumed. */
  record Resumed() implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state.step(state.currentId(), StepState::rested).holding(Hold.RUNNING).at(wallMillis);
    }

    @Override
    public Fact shape(Shape in) {
      return this;
    }
  }

  /** The amplifier counts as cold; an unfinished warm-up starts again from zero. */
  record Cooled(String step, String why) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      UnaryOperator<StepState> restart =
          before ->
              before.status().isOver()
                  ? before
                  : before.status() == Status.RUNNING ? backToAhead(before.cold()) : before.cold();
      return state.step(step, restart).cooledBecause(Optional.of(why)).at(wallMillis);
    }

    @Override
    public boolean changesEvidence() {
      return true;
    }

    @Override
    public boolean resetsWarmClock() {
      return true;
    }

    @Override
    public Optional<String> toldOnceKept() {
      return Optional.of(why);
    }

    @Override
    public Fact shape(Shape in) {
      return new Cooled(in.text("step", step), in.text("reason", why));
    }
  }

  /** A warm-up must be repeated; the step that needs it must be briefed and armed again. */
  record WarmAgain(String step) implements Fact {
    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      return state
          .step(state.currentId(), Fact::backToAhead)
          .step(step, StepState::again)
          .at(wallMillis);
    }

    @Override
    public boolean resetsWarmClock() {
      return true;
    }

    @Override
    public Fact shape(Shape in) {
      return new WarmAgain(in.text("step", step));
    }
  }

  private static StepState backToAhead(StepState before) {
    return before.status().isOver() ? before : before.with(Status.AHEAD);
  }
}
