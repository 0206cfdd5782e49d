package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.ReadingId;
import loadwalk.numeric.ThermalFit;
import loadwalk.numeric.WarmCurve;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;

/**
 * The heatsink temperatures of a warm-up since its clock last started from zero, at most one for
 * each moment; one with an open doubt is left out.
 *
 * @param temperatures the temperatures, in the order they were read
 * @param rested how many of them were read before the warm-up last rested
 */
public record WarmRun(List<Temperature> temperatures, int rested) {
  /**
   * How far a thermometer that is held to a heatsink strays from one reading to the next, K; common
   * practice, no source.
   */
  static final double THERMOMETER_U = 0.15;

  /**
   * One temperature.
   *
   * @param minutes the warm-up clock, minutes
   * @param celsius what was read
   * @param u its standard uncertainty as far as it does not repeat, K: a digit is a rectangle one
   *     step wide, and the thermometer strays
   */
  public record Temperature(double minutes, double celsius, double u) {
    /** Makes the temperature of a reading with the given step of its last digit, K. */
    public static Temperature read(double minutes, double celsius, double resolution) {
      return new Temperature(
          minutes, celsius, Math.hypot(resolution / Math.sqrt(12), THERMOMETER_U));
    }
  }

  /** Copies the list. */
  public WarmRun {
    temperatures = List.copyOf(temperatures);
  }

  /** Returns the temperatures of a warm-up as it stands. */
  public static WarmRun of(StepState step) {
    List<Temperature> run = new ArrayList<>();
    int before = 0;
    for (Entry e : entries(step)) {
      before += e.order() <= step.restedAt() ? 1 : 0;
      run.add(Temperature.read(e.warmSeconds() / 60, e.value(), e.resolution()));
    }
    return new WarmRun(run, before);
  }

  /** Makes a run that never rested. */
  public WarmRun(List<Temperature> temperatures) {
    this(temperatures, 0);
  }

  /** Returns the entries that the temperatures of a warm-up are. */
  public static List<Entry> entries(StepState step) {
    List<Entry> run = new ArrayList<>();
    for (Entry e : step.entries().getOrDefault(ReadingId.SINK_CELSIUS, List.of())) {
      boolean counts = e.order() > step.coldAt() && !e.isOpen();
      if (counts) {
        run.removeIf(earlier -> earlier.warmSeconds() >= e.warmSeconds());
        run.add(e);
      }
    }
    return run;
  }

  /** Parts the temperatures where they leave the curve that they began. */
  public WarmCurve curve() {
    return WarmCurve.of(
        column(Temperature::minutes), column(Temperature::celsius), column(Temperature::u));
  }

  /** Returns the curve that they settle by; empty where they show no end or left their curve. */
  public Optional<ThermalFit.Settling> settling() {
    if (temperatures.isEmpty()) {
      return Optional.empty();
    }
    WarmCurve curve = curve();
    return curve.hasBreak() ? Optional.empty() : curve.fit().settling();
  }

  /** Returns the temperatures from the one with the given index on. */
  WarmRun since(int first) {
    return new WarmRun(temperatures.subList(first, temperatures.size()));
  }

  /** Returns the temperatures read since the warm-up last rested. */
  public WarmRun sinceRest() {
    return new WarmRun(temperatures.subList(rested, temperatures.size()), rested);
  }

  /** Tells whether some were read before a rest. */
  boolean isRested() {
    return rested > 0;
  }

  double[] column(ToDoubleFunction<Temperature> of) {
    return temperatures.stream().mapToDouble(of).toArray();
  }
}
