package loadwalk.walk;

import java.util.Arrays;
import java.util.Optional;
import loadwalk.numeric.NewestSlope;
import loadwalk.numeric.ThermalFit;
import loadwalk.numeric.WarmCurve;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.WarmUp;
import loadwalk.walk.WarmRun.Temperature;
import loadwalk.walk.fact.WalkState;

/**
 * How steady a warm-up is, by its clock and by the temperatures read since it began or last rested.
 *
 * <p>It is steady where its time is up and the slope, with all that the digits of the temperatures
 * leave open, is within the limit either way. Without a temperature the clock alone decides.
 *
 * @param clockDone whether the least time has passed
 * @param told what the temperatures tell
 * @param slope the slope now, where there are enough of them
 * @param limit the slope that counts as steady, K/min
 * @param left how the temperatures left the curve that they began, if they did
 * @param readAtSeconds when the next temperature is wanted, seconds of the warm-up clock
 */
public record Steadiness(
    boolean clockDone,
    Told told,
    Optional<ThermalFit.Slope> slope,
    double limit,
    Optional<Left> left,
    double readAtSeconds) {
  /** How long the newest temperature tells what the heatsink does now, minutes. Chosen by hand. */
  private static final double FRESH_MINUTES = 3;

  /** How often the heatsink is read towards the end of a warm-up, minutes. Chosen by hand. */
  private static final double EVERY_MINUTES = 2.5;

  /** The minutes before the end of the clock from which on it is read so. Chosen by hand. */
  private static final double LAST_MINUTES = 2 * EVERY_MINUTES;

  /** The part of the limit that the uncertainty of a slope may take. Chosen by hand. */
  private static final double PART_OF_LIMIT = 0.2;

  /** The fewest readings since a break that tell a slope. Set on the experiment. */
  private static final int SINCE_BREAK = 5;

  /** Standard uncertainties above the slope of a fit that count. Set on the experiment. */
  private static final double COVERAGE_OF_FIT = 3;

  /** The step in which a time to read is told, seconds. */
  private static final double HALF_MINUTE = 30;

  /** What the temperatures tell. */
  public enum Told {
    /** No temperature was read. */
    NOTHING,
    /** Fewer than three within twelve minutes, or too few since the curve broke. */
    TOO_FEW,
    /** The newest is too old. */
    TOO_OLD,
    /** The slope may be above the limit. */
    MOVING,
    STEADY
  }

  /**
   * A curve that the temperatures left.
   *
   * @param kelvin how far the worst of them lies from one curve, K
   * @param sinceMinutes the first of those that count, minutes of the warm-up clock
   */
  public record Left(double kelvin, double sinceMinutes) {}

  /** Returns how steady a warm-up is. */
  public static Steadiness of(WalkState state, PlannedStep planned, double warmSeconds) {
    WarmUp step = planned.step().warmUp().orElseThrow();
    return of(step, WarmRun.of(state.step(planned.id())).sinceRest(), warmSeconds);
  }

  /** Returns how steady a warm-up is by the temperatures since it last rested. */
  public static Steadiness of(WarmUp step, WarmRun run, double warmSeconds) {
    boolean done = warmSeconds >= step.minutes() * 60;
    double limit = step.steadyCelsiusPerMinute();
    int count = run.temperatures().size();
    if (count == 0) {
      return run.isRested()
          ? new Steadiness(
              done, Told.TOO_FEW, Optional.empty(), limit, Optional.empty(), warmSeconds)
          : new Steadiness(done, Told.NOTHING, Optional.empty(), limit, Optional.empty(), 0);
    }
    WarmCurve curve = run.curve();
    Optional<NewestSlope> line = line(run.since(curve.since()), curve.scatter(), limit);
    Optional<ThermalFit.Slope> fitted =
        curve.hasBreak() ? Optional.empty() : curve.fit().settling().map(ThermalFit.Settling::now);
    boolean few =
        line.isEmpty()
            || curve.turnsAgain()
            || curve.hasBreak() && count - curve.since() < SINCE_BREAK;
    double last = run.temperatures().get(count - 1).minutes();
    Told told = few ? Told.TOO_FEW : told(line.get(), fitted, limit, warmSeconds / 60 - last);
    return new Steadiness(
        done,
        told,
        line.map(slope -> sharper(slope, fitted)),
        limit,
        left(curve, run),
        next(step, last, warmSeconds));
  }

  private static Optional<NewestSlope> line(WarmRun newest, double scatter, double limit) {
    double[] u = newest.column(Temperature::u);
    return NewestSlope.of(
        newest.column(Temperature::minutes),
        newest.column(Temperature::celsius),
        Arrays.stream(u).map(one -> one * scatter).toArray(),
        PART_OF_LIMIT * limit);
  }

  private static Told told(
      NewestSlope line, Optional<ThermalFit.Slope> fitted, double limit, double ageMinutes) {
    boolean within =
        line.most() <= limit || fitted.filter(slope -> most(slope) <= limit).isPresent();
    if (!within) {
      return Told.MOVING;
    }
    return ageMinutes <= FRESH_MINUTES ? Told.STEADY : Told.TOO_OLD;
  }

  private static double most(ThermalFit.Slope slope) {
    return Math.abs(slope.celsiusPerMinute()) + COVERAGE_OF_FIT * slope.u();
  }

  private static ThermalFit.Slope sharper(NewestSlope line, Optional<ThermalFit.Slope> fitted) {
    return fitted
        .filter(slope -> most(slope) < line.most())
        .orElseGet(() -> new ThermalFit.Slope(line.perMinute(), line.u()));
  }

  private static Optional<Left> left(WarmCurve curve, WarmRun run) {
    return curve.hasBreak()
        ? Optional.of(
            new Left(curve.misfitKelvin(), run.temperatures().get(curve.since()).minutes()))
        : Optional.empty();
  }

  private static double next(WarmUp step, double lastMinutes, double warmSeconds) {
    double due = Math.max(lastMinutes + EVERY_MINUTES, step.minutes() - LAST_MINUTES);
    double whole = HALF_MINUTE * Math.ceil(60 * due / HALF_MINUTE - 1e-6);
    return Math.max(whole, warmSeconds);
  }

  /** Tells whether the warm-up may end without a reason. */
  public boolean isSteady() {
    return clockDone && (told == Told.NOTHING || told == Told.STEADY);
  }
}
