package loadwalk.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/**
 * A practice amplifier on the practice bench at one moment.
 *
 * <p>A reading depends on the seed, the moment and what is read: reading twice at one moment gives
 * the same number, and a moment later the scatter differs.
 *
 * @param amplifier the amplifier
 * @param bench the bench
 * @param limit the shape of the output at 1 % THD; it is kept because it takes the longest to
 *     compute
 * @param sinkCelsius the heatsink temperature
 * @param elapsedSeconds the time since switch-on
 */
public record PracticeRig(
    PracticeAmplifier amplifier,
    PracticeBench bench,
    Clipper.Shape limit,
    double sinkCelsius,
    double elapsedSeconds) {
  private static final double LIMIT_THD_PERCENT = 1;
  private static final double WARM_UP_OHMS = 4;
  private static final double VOLTS_SCATTER = 0.002;
  private static final double AMPS_SCATTER = 0.004;

  /** Returns a cold amplifier just switched on, with everything drawn from one seed. */
  public static PracticeRig ofSeed(long seed) {
    PracticeBench bench = PracticeBench.ofSeed(seed);
    return cold(PracticeAmplifier.ofSeed(seed), bench);
  }

  /** Returns a cold amplifier just switched on. */
  static PracticeRig cold(PracticeAmplifier amplifier, PracticeBench bench) {
    Clipper.Shape limit = amplifier.stage().clipper().atThd(LIMIT_THD_PERCENT);
    return new PracticeRig(amplifier, bench, limit, bench.roomCelsius(), 0);
  }

  /**
   * Runs into 4 Ω on each channel.
   *
   * @param seconds how long
   * @param powerFraction the part of the power at the limit; 0 runs without a tone
   */
  public PracticeRig warm(double seconds, double powerFraction) {
    return run(seconds, Mode.STEREO, WARM_UP_OHMS, powerFraction);
  }

  /**
   * Runs into a load; the heatsink follows T∞ − (T∞ − T₀)e^(−t/τ) with the heat at the start.
   *
   * @param seconds how long
   * @param mode how the load is connected
   * @param ohms the nominal load
   * @param powerFraction the part of the power at the limit
   */
  public PracticeRig run(double seconds, Mode mode, double ohms, double powerFraction) {
    PracticeAmplifier.zeroOrMore(seconds, "seconds");
    PracticeAmplifier.Sink sink = amplifier.sink();
    double heat = point(mode, ohms, powerFraction).heatWatts();
    double end = bench.roomCelsius() + sink.kelvinPerWatt() * heat;
    double left = Math.exp(-seconds / sink.timeConstantSeconds());
    double celsius = end - (end - sinkCelsius) * left;
    return at(celsius, elapsedSeconds + seconds);
  }

  /** Returns the same amplifier at another moment. */
  PracticeRig at(double celsius, double seconds) {
    return new PracticeRig(amplifier, bench, limit, celsius, seconds);
  }

  /**
   * Returns the true operating point, not the meters' readings, at a part of the power at the
   * limit.
   */
  OperatingPoint point(Mode mode, double ohms, double powerFraction) {
    Circuit circuit =
        new Circuit(amplifier, bench.source(), mode, bench.trueOhms(ohms), sinkCelsius);
    return circuit.at(limit.atPowerFraction(powerFraction));
  }

  /** Returns the output of a tone that is turned up through the limit. */
  public PracticeTone tone(Mode mode, double ohms, double hertz) {
    Clipper clipper = amplifier.stage().clipper();
    return new PracticeTone(clipper, limit, point(mode, ohms, 1).outputVolts(), hertz);
  }

  /**
   * Reads the meters.
   *
   * @param mode how the load is connected
   * @param ohms the nominal load; ignored when idle
   * @param kind what the operator does; a loaded reading is taken at the limit of 1 % THD
   * @return every reading that such a step may need, in the order they are taken
   */
  public Map<ReadingId, Double> read(Mode mode, double ohms, Target.Kind kind) {
    Map<ReadingId, Double> readings = new EnumMap<>(ReadingId.class);
    switch (kind) {
      case WARM_UP -> sink(readings, kind, mode, ohms);
      case IDLE -> idle(readings, mode, ohms);
      case LOADED -> loaded(readings, mode, ohms);
      case OPEN_LOAD -> openLoad(readings, mode, ohms);
    }
    return Collections.unmodifiableMap(readings);
  }

  private void idle(Map<ReadingId, Double> readings, Mode mode, double ohms) {
    OperatingPoint idle = point(Mode.STEREO, WARM_UP_OHMS, 0);
    supply(readings, idle, Target.Kind.IDLE, mode, ohms);
    sink(readings, Target.Kind.IDLE, mode, ohms);
    put(readings, ReadingId.AMBIENT_CELSIUS, bench.roomCelsius(), 0, Target.Kind.IDLE, mode, ohms);
  }

  private void loaded(Map<ReadingId, Double> readings, Mode mode, double ohms) {
    OperatingPoint point = point(mode, ohms, 1);
    load(readings, ReadingId.LOAD_OHMS, mode, ohms);
    if (mode == Mode.STEREO) {
      load(readings, ReadingId.OTHER_LOAD_OHMS, mode, ohms);
    }
    volts(readings, point, Target.Kind.LOADED, mode, ohms);
    if (mode == Mode.STEREO) {
      double other = point.otherOutputVolts();
      put(
          readings,
          ReadingId.OTHER_OUTPUT_VOLTS,
          other,
          VOLTS_SCATTER,
          Target.Kind.LOADED,
          mode,
          ohms);
    }
    supply(readings, point, Target.Kind.LOADED, mode, ohms);
    put(readings, ReadingId.THD_PERCENT, LIMIT_THD_PERCENT, 0.03, Target.Kind.LOADED, mode, ohms);
    sink(readings, Target.Kind.LOADED, mode, ohms);
  }

  private void load(Map<ReadingId, Double> readings, ReadingId id, Mode mode, double ohms) {
    put(readings, id, bench.trueOhms(ohms), 0.0005, Target.Kind.LOADED, mode, ohms);
  }

  private void openLoad(Map<ReadingId, Double> readings, Mode mode, double ohms) {
    OperatingPoint point = point(mode, ohms, 1);
    volts(readings, point, Target.Kind.OPEN_LOAD, mode, ohms);
    double open = point.openVolts();
    put(readings, ReadingId.OPEN_VOLTS, open, VOLTS_SCATTER, Target.Kind.OPEN_LOAD, mode, ohms);
  }

  private void volts(
      Map<ReadingId, Double> readings,
      OperatingPoint point,
      Target.Kind kind,
      Mode mode,
      double ohms) {
    put(readings, ReadingId.OUTPUT_VOLTS, point.outputVolts(), VOLTS_SCATTER, kind, mode, ohms);
  }

  private void supply(
      Map<ReadingId, Double> readings,
      OperatingPoint point,
      Target.Kind kind,
      Mode mode,
      double ohms) {
    put(readings, ReadingId.SUPPLY_VOLTS, point.supplyVolts(), 0.0005, kind, mode, ohms);
    put(readings, ReadingId.SUPPLY_AMPS, point.supplyAmps(), AMPS_SCATTER, kind, mode, ohms);
  }

  private void sink(Map<ReadingId, Double> readings, Target.Kind kind, Mode mode, double ohms) {
    put(readings, ReadingId.SINK_CELSIUS, sinkCelsius, 0.002, kind, mode, ohms);
  }

  private void put(
      Map<ReadingId, Double> readings,
      ReadingId id,
      double value,
      double scatter,
      Target.Kind kind,
      Mode mode,
      double ohms) {
    Object[] occasion = {kind, mode, ohms, Math.round(elapsedSeconds)};
    readings.put(id, bench.shown(id, value, scatter, occasion));
  }
}
