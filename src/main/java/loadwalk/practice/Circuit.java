package loadwalk.practice;

import loadwalk.bench.Mode;
import loadwalk.practice.OperatingPoint.Limit;

/**
 * Solves supply, rails and output together for one load.
 *
 * <p>Everything follows from the rail volts v: the clip level, the load and rail currents, and what
 * the supply has to deliver. The slack of each constraint (supply line, converter regulation,
 * converter power, supply current) is continuous in v; at v = saturation no current flows and all
 * slacks are positive, at the unloaded rail the least is not. So the least slack changes sign
 * inside the bracket, and bisection converges for every circuit, to a double's precision in about
 * 50 steps; no step can diverge.
 *
 * @param amplifier the amplifier
 * @param source supplies and leads
 * @param mode how the load is connected
 * @param ohms the true value of the load; in stereo, of each of the two
 * @param celsius the heatsink temperature
 */
public record Circuit(
    PracticeAmplifier amplifier, SourceLine source, Mode mode, double ohms, double celsius) {
  private static final int MOST_HALVINGS = 200;

  /** The sharpness of the onset of current limiting: a higher value limits later and harder. */
  private static final double LIMIT_KNEE = 10;

  /** Checks the numbers. */
  public Circuit {
    PracticeAmplifier.positive(ohms, "ohms");
  }

  /** Returns the operating point for an output wave of the given shape. */
  public OperatingPoint at(Clipper.Shape shape) {
    double low = amplifier.stage().saturationVolts();
    double high = unloadedRail();
    for (int i = 0; i < MOST_HALVINGS && high - low > 1e-13 * high; i++) {
      double middle = (low + high) / 2;
      if (state(middle, shape).slack() >= 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return point(state(low, shape), shape);
  }

  private double unloadedRail() {
    PracticeAmplifier.Rails rails = amplifier.rails();
    double most = rails.ratio() * source.volts();
    return rails.regulated() ? Math.min(most, rails.regulatedVolts()) : most;
  }

  /** Everything that follows from the rail volts; slack is the least slack of all constraints. */
  private record State(
      double railVolts,
      double clipVolts,
      double railAmps,
      double supplyVolts,
      double supplyAmps,
      double slack,
      Limit limit) {}

  private State state(double rail, Clipper.Shape shape) {
    double clip = clipVolts(rail);
    double railAmps = railAmps(rail, clip, shape);
    return amplifier.rails().regulated()
        ? regulated(rail, clip, railAmps)
        : unregulated(rail, clip, railAmps);
  }

  /** Blends rail and current limit smoothly: limiting never sets in at a sharp corner. */
  private double clipVolts(double rail) {
    PracticeAmplifier.Stage stage = amplifier.stage();
    double byRail = Math.max(0, rail - stage.saturationVolts());
    double byCurrent = stage.peakAmps() * loopOhms();
    double over = byRail / byCurrent;
    return byRail / Math.pow(1 + Math.pow(over, LIMIT_KNEE), 1 / LIMIT_KNEE);
  }

  /** Class B: rail power is rail volts times the mean magnitude of the load current. */
  private double railAmps(double rail, double clip, Clipper.Shape shape) {
    PracticeAmplifier.Stage stage = amplifier.stage();
    if (stage.outputClass().pushPull()) {
      return clip * shape.meanMagnitude() / loopOhms() * (1 + stage.otherChannel());
    }
    double amps = clip * shape.rms() / loopOhms();
    double watts = amps * amps * loopOhms() * squaredShares() / stage.efficiency();
    return rail > 0 ? watts / rail : 0;
  }

  /**
   * An ideal step-up with series resistance: supply current is ratio times rail current. Where the
   * converter limits, the power lost between line and rail counts as its loss; where the supplies
   * limit, their volts are those the rail still needs.
   */
  private State unregulated(double rail, double clip, double railAmps) {
    PracticeAmplifier.Rails rails = amplifier.rails();
    double volts = (rail + rails.ohms() * railAmps) / rails.ratio();
    double amps = rails.ratio() * railAmps / rails.efficiency() + rails.idleAmps();
    double line = lineVolts(amps) - volts;
    return least(new State(rail, clip, railAmps, volts, amps, line, Limit.RAILS));
  }

  /** A constant-power load on the supply line; the upper root is the working one. */
  private State regulated(double rail, double clip, double railAmps) {
    PracticeAmplifier.Rails rails = amplifier.rails();
    double watts = rail * railAmps / rails.efficiency();
    double open = source.volts() - source.ohms() * rails.idleAmps();
    double inside = open * open - 4 * source.ohms() * watts;
    double volts = (open + Math.sqrt(Math.max(0, inside))) / 2;
    double amps = watts / volts + rails.idleAmps();
    double fall = rails.ohms() * railAmps;
    double held = rails.regulatedVolts() - fall - rail;
    double reach = rails.ratio() * volts - fall - rail;
    double slack = Math.min(inside, Math.min(held, reach));
    return least(new State(rail, clip, railAmps, volts, amps, slack, Limit.RAILS));
  }

  private State least(State state) {
    double converter = amplifier.rails().watts() - state.railVolts * state.railAmps;
    double supply = source.amps() - state.supplyAmps;
    double slack = Math.min(state.slack, Math.min(converter, supply));
    Limit limit = state.limit;
    if (slack == converter) {
      limit = Limit.CONVERTER;
    } else if (slack == supply) {
      limit = Limit.SUPPLY;
    } else if (currentLimited(state)) {
      limit = Limit.CHANNEL_CURRENT;
    }
    return new State(
        state.railVolts,
        state.clipVolts,
        state.railAmps,
        limit == Limit.SUPPLY ? state.supplyVolts : lineVolts(state.supplyAmps),
        state.supplyAmps,
        slack,
        limit);
  }

  /** Returns the volts at the terminals while the supplies hold their setting. */
  private double lineVolts(double supplyAmps) {
    return source.volts() - source.ohms() * supplyAmps;
  }

  private boolean currentLimited(State state) {
    double byRail = state.railVolts - amplifier.stage().saturationVolts();
    return state.clipVolts < 0.97 * byRail;
  }

  private OperatingPoint point(State state, Clipper.Shape shape) {
    double other = amplifier.stage().otherChannel();
    double amps = state.clipVolts * shape.rms() / loopOhms();
    double channelOhms = mode.channelOhms(ohms);
    double output = amps * amps * channelOhms * squaredShares();
    double volts = amps * channelOhms;
    double bridged = volts * (1 + other);
    double open = shape.drive() * state.clipVolts / Math.sqrt(2);
    boolean bridge = mode == Mode.BRIDGED;
    double fromRails = state.railVolts * state.railAmps;
    double idleWatts = state.supplyVolts * amplifier.rails().idleAmps();
    double converterInput = state.supplyVolts * state.supplyAmps - idleWatts;
    return new OperatingPoint(
        state.railVolts,
        bridge ? bridged : volts,
        bridge ? bridged : volts * other,
        bridge ? open * (1 + other) : open,
        state.supplyVolts,
        state.supplyAmps,
        output,
        fromRails - output,
        converterInput - fromRails,
        idleWatts,
        state.limit);
  }

  private double loopOhms() {
    return mode.channelOhms(ohms) + amplifier.stage().ohmsAt(celsius);
  }

  /** Returns the ratio of both channels' summed squared currents to this channel's. */
  private double squaredShares() {
    double other = amplifier.stage().otherChannel();
    double bridged = (1 + other) / 2;
    return mode == Mode.BRIDGED ? 2 * bridged * bridged : 1 + other * other;
  }
}
