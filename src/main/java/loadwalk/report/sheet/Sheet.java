package loadwalk.report.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.journal.Soundness;
import loadwalk.numeric.ThermalFit;
import loadwalk.plan.Rules;
import loadwalk.report.page.Picture;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;
import loadwalk.result.PublishedPower;
import loadwalk.result.RatingComparison;
import loadwalk.result.Remark;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.sequence.Sequence;
import loadwalk.walk.Steadiness;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * The result of one walk, in no format yet.
 *
 * @param walk the walk's name
 * @param version the version of Loadwalk that began it
 * @param practiceSeed the seed of the practice amplifier, if it is one
 * @param lastWallMillis the wall clock of the newest record, ms since 1970
 * @param amplifier the amplifier, without its serial number if that is hidden
 * @param serialKeptBack whether a serial number is hidden
 * @param bench the bench
 * @param sequence the sequence
 * @param finished whether every step is done or skipped
 * @param soundness how far its records are all that was kept
 * @param warnings what the reader must know first
 * @param loads the output at each load, in the order of the walk
 * @param steps every step
 * @param result all computed results
 * @param record what happened during the walk
 * @param assumptions what the results rest on
 * @param budgetOf the published power whose uncertainty budget is written out
 */
public record Sheet(
    String walk,
    String version,
    OptionalLong practiceSeed,
    long lastWallMillis,
    Amplifier amplifier,
    boolean serialKeptBack,
    Bench bench,
    Sequence sequence,
    boolean finished,
    Soundness soundness,
    List<String> warnings,
    List<LoadLine> loads,
    List<StepLine> steps,
    WalkResult result,
    WalkRecord record,
    List<Assumption> assumptions,
    Optional<PublishedPower> budgetOf) {
  /** Copies the lists. */
  public Sheet {
    warnings = List.copyOf(warnings);
    loads = List.copyOf(loads);
    steps = List.copyOf(steps);
    assumptions = List.copyOf(assumptions);
  }

  /** Returns the sheet of a walk of which every record is at hand, finished or not. */
  public static Sheet of(WalkState state, SheetOptions options, Rules rules) {
    return of(state, Soundness.WHOLE, options, rules);
  }

  /** Returns the sheet of a walk, as far as its records can be read. */
  public static Sheet of(WalkState state, Soundness soundness, SheetOptions options, Rules rules) {
    return new SheetFold(state, soundness, options, rules).sheet();
  }

  /**
   * The output of the amplifier at one load.
   *
   * @param power the published power
   * @param rating that power compared with its rating, if there is one
   * @param forecast the watts in one load as forecast before the run, if they were
   */
  public record LoadLine(
      PublishedPower power, Optional<RatingComparison> rating, Optional<Band> forecast) {}

  /**
   * A step of the walk.
   *
   * @param id its id
   * @param verb what the step does
   * @param instruction what it told the operator to do
   * @param status how far the step got
   * @param brief its brief, if the step was reached
   * @param armedOhms the load typed as connected, ohms
   * @param recheckOf the step that it measures again
   * @param criterion the point at which the output was read
   * @param readings the readings that count
   * @param pairs volts and THD read together near the limit
   * @param result the results computed from the readings
   * @param wave the captured wave that its output was taken from, if any
   * @param outcome how it ended, if it is over and asks something of the amplifier
   */
  public record StepLine(
      String id,
      String verb,
      String instruction,
      StepState.Status status,
      Optional<Forecast> brief,
      OptionalDouble armedOhms,
      Optional<String> recheckOf,
      Criterion criterion,
      List<ReadingLine> readings,
      List<LimitPair> pairs,
      Optional<StepResult> result,
      Optional<Capture> wave,
      Optional<Outcome> outcome) {
    /** Copies the lists. */
    public StepLine {
      readings = List.copyOf(readings);
      pairs = List.copyOf(pairs);
    }
  }

  /**
   * One reading that counts.
   *
   * @param id the reading
   * @param typed what was typed
   * @param value the value in the reading's unit
   * @param resolution one step of the last digit typed
   * @param forecast its forecast, if there was one
   */
  public record ReadingLine(
      ReadingId id, String typed, double value, double resolution, Optional<Band> forecast) {}

  /**
   * What happened during a walk.
   *
   * @param doubts every doubt with its answer
   * @param amendments every reading entered more than once
   * @param lifts the halts lifted
   * @param skips the steps skipped
   * @param ended the steps that drove a load and ended before they were measured
   * @param warmUps the warm-ups
   * @param notes the operator's notes
   * @param photos the photos attached
   * @param stops every stop, oldest first
   * @param cooled why the amplifier counts as cold, if it does
   * @param controls how gain and controls are set, as typed, if that was said
   */
  public record WalkRecord(
      List<DoubtLine> doubts,
      List<Amendment> amendments,
      List<Lift> lifts,
      List<Skip> skips,
      List<Ended> ended,
      List<WarmUp> warmUps,
      List<WalkState.Note> notes,
      List<Photo> photos,
      List<WalkState.Stop> stops,
      Optional<String> cooled,
      Optional<String> controls) {
    /** Copies the lists. */
    public WalkRecord {
      doubts = List.copyOf(doubts);
      amendments = List.copyOf(amendments);
      lifts = List.copyOf(lifts);
      skips = List.copyOf(skips);
      ended = List.copyOf(ended);
      warmUps = List.copyOf(warmUps);
      notes = List.copyOf(notes);
      photos = List.copyOf(photos);
      stops = List.copyOf(stops);
    }
  }

  /**
   * A photo attached to the walk.
   *
   * @param attachment what the journal says about it
   * @param picture the picture itself, if it could be read
   */
  public record Photo(WalkState.Attachment attachment, Optional<Picture> picture) {}

  /** How a doubt was answered. */
  public enum Answer {
    OPEN("open"),
    KEPT("kept"),
    AMENDED("amended"),
    STOOD_BY("stood-by"),
    POINT_SAID("point-said"),
    /** The step ended before the limit that the reading was held against. */
    ENDED("ended");

    private final String word;

    Answer(String word) {
      this.word = word;
    }

    /** Returns the word used in JSON output. */
    public String word() {
      return word;
    }
  }

  /**
   * A doubt with its answer.
   *
   * @param stepId the step
   * @param reading the reading it was raised on
   * @param typed the value doubted, as typed
   * @param doubt the doubt
   * @param answer how it was answered
   * @param detail the reason for standing by the value, or the corrected value; empty otherwise
   */
  public record DoubtLine(
      String stepId, ReadingId reading, String typed, Doubt doubt, Answer answer, String detail) {}

  /**
   * A reading entered more than once.
   *
   * @param stepId the step
   * @param reading the reading
   * @param typed every value as typed, oldest first
   */
  public record Amendment(String stepId, ReadingId reading, List<String> typed) {
    /** Copies the list. */
    public Amendment {
      typed = List.copyOf(typed);
    }
  }

  /**
   * A halt that was lifted.
   *
   * @param stepId the step
   * @param halts what had halted it
   * @param reason why it was lifted
   */
  public record Lift(String stepId, List<String> halts, String reason) {
    /** Copies the list. */
    public Lift {
      halts = List.copyOf(halts);
    }
  }

  /**
   * A skipped step.
   *
   * @param stepId the step
   * @param reason why
   */
  public record Skip(String stepId, String reason) {}

  /**
   * A step that drove a load and ended before it was measured.
   *
   * @param step the step with its last readings
   * @param seen what the operator saw, as typed; may be empty
   * @param ratedWatts the rating of one load, if there is one
   */
  public record Ended(EndedStep step, String seen, OptionalDouble ratedWatts) {}

  /**
   * A warm-up.
   *
   * @param stepId the step
   * @param plannedMinutes the planned minimum time
   * @param seconds how long it lasted
   * @param status how far it got
   * @param endedEarly why it ended early, if it did
   * @param temperatures the heatsink temperatures of its last run
   * @param fit how the temperature settles, if that can be worked out
   * @param atTheEnd how steady it was when it ended
   */
  public record WarmUp(
      String stepId,
      double plannedMinutes,
      double seconds,
      StepState.Status status,
      Optional<String> endedEarly,
      List<Temperature> temperatures,
      Optional<ThermalFit.Settling> fit,
      Steadiness atTheEnd) {
    /** Copies the list. */
    public WarmUp {
      temperatures = List.copyOf(temperatures);
    }
  }

  /**
   * A heatsink temperature.
   *
   * @param minutes the warm-up clock, minutes
   * @param celsius the temperature
   * @param u its standard uncertainty, kelvin
   */
  public record Temperature(double minutes, double celsius, double u) {}

  /**
   * An assumption that the results rest on.
   *
   * @param remark the assumption
   * @param stepIds the steps it applies to; empty if it applies to the whole walk
   */
  public record Assumption(Remark remark, List<String> stepIds) {
    /** Copies the list. */
    public Assumption {
      stepIds = List.copyOf(stepIds);
    }
  }
}
