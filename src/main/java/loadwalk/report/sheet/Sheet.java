package loadwalk.report.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
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
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * The result of one walk, in no format yet.
 *
 * @param walk the walk's name
 * @param version the version of Loadwalk that began it
 * @param practiceSeed the seed of the practice amplifier, where it is one
 * @param lastWallMillis the wall clock of the newest record, ms since 1970
 * @param amplifier the amplifier, without its serial number where that is hidden
 * @param serialKeptBack whether there is a serial number that is not shown
 * @param bench the bench
 * @param sequence the sequence
 * @param finished whether every step is done or skipped
 * @param warnings what a reader must know first
 * @param loads what it makes at each load, in the order of the walk
 * @param steps every step
 * @param result all computed results
 * @param record what happened on the way
 * @param assumptions what the results rest on
 * @param budgetStep the step whose uncertainty budget is written out
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
    List<String> warnings,
    List<LoadLine> loads,
    List<StepLine> steps,
    WalkResult result,
    WalkRecord record,
    List<Assumption> assumptions,
    Optional<StepResult> budgetStep) {
  /** Copies the lists. */
  public Sheet {
    warnings = List.copyOf(warnings);
    loads = List.copyOf(loads);
    steps = List.copyOf(steps);
    assumptions = List.copyOf(assumptions);
  }

  /** Returns the sheet of a walk, finished or not. */
  public static Sheet of(WalkState state, SheetOptions options, Rules rules) {
    return new SheetFold(state, options, rules).sheet();
  }

  /**
   * What the amplifier makes at one load.
   *
   * @param power the published power
   * @param rating that power beside its rating, where there is one
   * @param forecast the watts in one load as forecast before the run, where they were
   */
  public record LoadLine(
      PublishedPower power, Optional<RatingComparison> rating, Optional<Band> forecast) {}

  /**
   * One step.
   *
   * @param id its id
   * @param verb what it does
   * @param instruction what it asked of the operator
   * @param status how far it came
   * @param brief its brief, where it was reached
   * @param armedOhms the load typed as connected, ohms
   * @param recheckOf the step it measured again
   * @param criterion at what point the output was read
   * @param readings the readings that count
   * @param pairs volts and THD read together near the limit
   * @param result what they amount to
   * @param wave the captured wave its output was taken from, where it was
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
      Optional<Capture> wave) {
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
   * @param forecast its forecast, where there was one
   */
  public record ReadingLine(
      ReadingId id, String typed, double value, double resolution, Optional<Band> forecast) {}

  /**
   * What happened on the way.
   *
   * @param doubts every doubt with its answer
   * @param amendments every reading entered more than once
   * @param lifts the halts that were lifted
   * @param skips the steps passed over
   * @param warmUps the warm-ups
   * @param notes the operator's notes
   * @param photos the photos attached
   * @param stops why the walk was stopped, each time
   * @param cooled why the amplifier counts as cold, where it does
   */
  public record WalkRecord(
      List<DoubtLine> doubts,
      List<Amendment> amendments,
      List<Lift> lifts,
      List<Skip> skips,
      List<WarmUp> warmUps,
      List<WalkState.Note> notes,
      List<Photo> photos,
      List<String> stops,
      Optional<String> cooled) {
    /** Copies the lists. */
    public WalkRecord {
      doubts = List.copyOf(doubts);
      amendments = List.copyOf(amendments);
      lifts = List.copyOf(lifts);
      skips = List.copyOf(skips);
      warmUps = List.copyOf(warmUps);
      notes = List.copyOf(notes);
      photos = List.copyOf(photos);
      stops = List.copyOf(stops);
    }
  }

  /**
   * A photo.
   *
   * @param attachment what the journal says of it
   * @param picture the picture itself, where it could be read
   */
  public record Photo(WalkState.Attachment attachment, Optional<Picture> picture) {}

  /** How a doubt was answered. */
  public enum Answer {
    OPEN("open"),
    KEPT("kept"),
    AMENDED("amended"),
    STOOD_BY("stood-by");

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
   * One doubt.
   *
   * @param stepId the step
   * @param reading the reading it was raised on
   * @param typed the value doubted, as typed
   * @param doubt the doubt
   * @param answer how it was answered
   * @param detail the reason for standing by it, or what it was corrected to; empty otherwise
   */
  public record DoubtLine(
      String stepId, ReadingId reading, String typed, Doubt doubt, Answer answer, String detail) {}

  /**
   * A reading entered more than once.
   *
   * @param stepId the step
   * @param reading the reading
   * @param typed every value as typed, the first first
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
   * A step passed over.
   *
   * @param stepId the step
   * @param reason why
   */
  public record Skip(String stepId, String reason) {}

  /**
   * A warm-up.
   *
   * @param stepId the step
   * @param plannedMinutes how long it was to last at least
   * @param seconds how long it lasted
   * @param status how far it came
   * @param endedEarly why it ended before its time
   * @param temperatures the heatsink temperatures of its last run
   * @param fit how the temperature settles, where that can be told
   */
  public record WarmUp(
      String stepId,
      double plannedMinutes,
      double seconds,
      StepState.Status status,
      Optional<String> endedEarly,
      List<Temperature> temperatures,
      Optional<ThermalFit.Settling> fit) {
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
   * Something the results rest on.
   *
   * @param remark what
   * @param stepIds the steps it was said of; empty where it is said of the walk
   */
  public record Assumption(Remark remark, List<String> stepIds) {
    /** Copies the list. */
    public Assumption {
      stepIds = List.copyOf(stepIds);
    }
  }
}
