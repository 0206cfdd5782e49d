package loadwalk.walk.fact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.json.Shape;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;
import loadwalk.walk.fact.StepState.Status;

/** The facts of one step; code names each as a member of {@link Fact}, which inherits them. */
public interface FactsOfStep {
  /** A brief was shown. */
  record Briefed(String step, Forecast forecast) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.briefed(forecast);
    }

    @Override
    public void showTo(StepReviewer reviewer) {
      reviewer.briefed(this);
    }

    @Override
    public Fact shape(Shape in) {
      String id = in.text("step", step);
      return new Briefed(id, in.part("forecast", forecast).of(id));
    }
  }

  /** The operator typed the load that is really connected. */
  record Armed(String step, String text, double ohms) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.armed(ohms);
    }

    @Override
    public Fact shape(Shape in) {
      return new Armed(in.text("step", step), in.text("text", text), in.number("ohms", ohms));
    }
  }

  /** A halt was lifted with a reason. */
  record HaltLifted(String step, List<String> codes, String reason) implements Fact.OfStep {
    /** Copies the codes. */
    public HaltLifted {
      codes = List.copyOf(codes);
    }

    @Override
    public StepState change(StepState before) {
      return before.lifted(reason);
    }

    @Override
    public Fact shape(Shape in) {
      return new HaltLifted(
          in.text("step", step), in.texts("codes", codes), in.text("reason", reason));
    }
  }

  /** The step was started. */
  record Begun(String step) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.with(Status.RUNNING);
    }

    @Override
    public boolean startsStep() {
      return true;
    }

    @Override
    public Fact shape(Shape in) {
      return new Begun(in.text("step", step));
    }
  }

  /** The warm-up clock reached a time, seconds. */
  record Warmed(String step, double seconds) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.warmed(seconds);
    }

    @Override
    public Fact shape(Shape in) {
      return new Warmed(in.text("step", step), in.number("seconds", seconds));
    }
  }

  /**
   * A value was entered; a second value for the same reading amends the first.
   *
   * @param instrument what it was read from, if it came from a meter directly
   * @param heldSeconds how long the step had run when it was read, seconds; empty where no clock
   *     ran
   */
  public record Entered(
      String step,
      ReadingId reading,
      String text,
      double value,
      double resolution,
      List<Doubt> doubts,
      double warmSeconds,
      Optional<Instrument> instrument,
      OptionalDouble heldSeconds)
      implements Fact.OfReading {
    /** Copies the doubts. */
    public Entered {
      doubts = List.copyOf(doubts);
    }

    @Override
    public StepState change(StepState before) {
      return change(before, false);
    }

    @Override
    public WalkState applyTo(WalkState state, long wallMillis) {
      boolean cooled = state.cooled().isPresent();
      return state.step(step, before -> change(before, cooled)).at(wallMillis);
    }

    /** What is typed after the step has ended corrects a reading that was taken while it ran. */
    private StepState change(StepState before, boolean cooledNow) {
      Optional<Entry> corrected =
          before.latestInAnyUnit(reading).filter(e -> before.status().isOver());
      return before.entered(
          reading,
          new Entry(
              text,
              value,
              resolution,
              doubts,
              Optional.empty(),
              Optional.empty(),
              before.entryCount() + 1,
              warmSeconds,
              instrument,
              corrected.map(Entry::heldSeconds).orElse(heldSeconds),
              corrected.map(Entry::cooled).orElse(cooledNow)));
    }

    @Override
    public Optional<Entered> entered() {
      return Optional.of(this);
    }

    @Override
    public Fact shape(Shape in) {
      String id = in.text("step", step);
      ReadingId its = in.word("reading", reading, BenchFiles.READINGS);
      String typed = in.text("text", text);
      double read = in.number("value", value);
      double digit = in.number("resolution", resolution);
      double warm = in.number("warmSeconds", warmSeconds);
      List<Doubt> doubted = in.list("doubts", doubts, Doubt.blank());
      Optional<Instrument> by = in.part("instrument", instrument, Instrument.blank());
      OptionalDouble held = in.number("heldSeconds", heldSeconds);
      return new Entered(id, its, typed, read, digit, doubted, warm, by, held);
    }
  }

  /** A value kept earlier was contradicted by a later one of its step. */
  record Doubted(String step, ReadingId reading, List<Doubt> doubts) implements Fact.OfReading {
    /** Copies the doubts. */
    public Doubted {
      doubts = List.copyOf(doubts);
    }

    @Override
    public StepState change(StepState before) {
      return before.doubted(reading, doubts);
    }

    @Override
    public Optional<Entered> entered() {
      return Optional.empty();
    }

    @Override
    public Fact shape(Shape in) {
      return new Doubted(
          in.text("step", step),
          in.word("reading", reading, BenchFiles.READINGS),
          in.list("doubts", doubts, Doubt.blank()));
    }
  }

  /** The operator stood by a doubted value. */
  record StoodBy(String step, ReadingId reading, String reason) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.stoodBy(reading, reason);
    }

    @Override
    public boolean changesEvidence() {
      return true;
    }

    @Override
    public Fact shape(Shape in) {
      return new StoodBy(
          in.text("step", step),
          in.word("reading", reading, BenchFiles.READINGS),
          in.text("reason", reason));
    }
  }

  /** The operator said at which criterion the output was read. */
  record CriterionSet(String step, Criterion criterion) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.at(criterion);
    }

    @Override
    public boolean changesEvidence() {
      return true;
    }

    @Override
    public Fact shape(Shape in) {
      return new CriterionSet(
          in.text("step", step), in.word("criterion", criterion, FactKinds.CRITERIA));
    }
  }

  /** Volts and THD were read together near the limit. */
  record PairAdded(String step, LimitPair pair) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.paired(pair);
    }

    @Override
    public Fact shape(Shape in) {
      String id = in.text("step", step);
      double volts = in.number("volts", pair.volts());
      return new PairAdded(id, new LimitPair(volts, in.number("thdPercent", pair.thdPercent())));
    }
  }

  /** A captured wave was taken for the readings entered with it. */
  record Captured(String step, Capture capture) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.captured(capture);
    }

    @Override
    public Fact shape(Shape in) {
      return new Captured(in.text("step", step), capture.shape(in));
    }
  }

  /** A warm-up was ended before its time. */
  record EndedEarly(String step, String reason) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.because(reason);
    }

    @Override
    public Fact shape(Shape in) {
      return new EndedEarly(in.text("step", step), in.text("reason", reason));
    }
  }

  /**
   * The step drove a load and ended before it could be measured. What was read so far is kept.
   *
   * @param text what the operator saw, as typed; may be empty
   */
  record Ended(String step, Outcome outcome, String text) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.ended(outcome, text);
    }

    @Override
    public boolean changesEvidence() {
      return true;
    }

    @Override
    public Fact shape(Shape in) {
      return new Ended(
          in.text("step", step),
          in.word("outcome", outcome, FactKinds.OUTCOMES),
          in.text("text", text));
    }
  }

  /** The step was skipped. */
  record Skipped(String step, String reason) implements Fact.OfStep {
    @Override
    public StepState change(StepState before) {
      return before.because(reason).with(Status.SKIPPED);
    }

    @Override
    public Fact shape(Shape in) {
      return new Skipped(in.text("step", step), in.text("reason", reason));
    }
  }
}
