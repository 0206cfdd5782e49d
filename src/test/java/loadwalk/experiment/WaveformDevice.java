package loadwalk.experiment;

import loadwalk.bench.Mode;

/**
 * Simulates one cycle in time: rails that ripple with the load current, class G rail switching,
 * current limiting that folds back at low output volts, supplies that soften instead of holding.
 *
 * <p>The mean rail volts are found by halving, as the rail that the supply can hold falls while the
 * rail current rises with the rail.
 *
 * @param line supply volts, ohms and amps
 * @param rail the converter and its rails
 * @param output the output stage
 */
record WaveformDevice(Line line, Rail rail, Output output) implements Device {
  private static final int POINTS = 40;
  private static final int HALVINGS = 45;
  private static final double OVERDRIVE = 1.029;
  private static final int MOST_FALLS = 200;

  /** The part of its volts a supply loses for each part by which its limit is exceeded. */
  private static final double SOFTNESS = 3;

  record Line(double volts, double ohms, double amps) {}

  /**
   * Rails.
   *
   * @param volts one rail without load at 13.8 V
   * @param regulated whether it follows the supply
   * @param ohms its fall per ampere
   * @param ripple the part of that fall which follows the current within the cycle
   * @param watts where the converter starts to give way
   * @param efficiency the converter's
   * @param idleAmps supply current without a tone
   * @param lowRail the lower rail of class G over the upper; 1 for one rail
   */
  record Rail(
      double volts,
      boolean regulated,
      double ohms,
      double ripple,
      double watts,
      double efficiency,
      double idleAmps,
      double lowRail) {}

  /**
   * Output stage.
   *
   * @param classD whether it switches
   * @param efficiency of class D
   * @param dropVolts what it leaves of the rail
   * @param ohms its source resistance
   * @param shortAmps the current limit into a short
   * @param peakAmps the current limit at full output volts
   * @param other the other channel's volts over this one's
   * @param driftPerKelvin the fraction lost per kelvin
   */
  record Output(
      boolean classD,
      double efficiency,
      double dropVolts,
      double ohms,
      double shortAmps,
      double peakAmps,
      double other,
      double driftPerKelvin) {}

  private record Cycle(double rms, double railAmps, double fromRails) {}

  @Override
  public Truth at(Mode mode, double ohms, double celsius) {
    return driven(mode, ohms, celsius, 1);
  }

  @Override
  public Truth atPart(Mode mode, double ohms, double celsius, double fraction) {
    return driven(mode, ohms, celsius, Math.sqrt(fraction));
  }

  /** Solves for a sine of a level, 1 at the limit. */
  private Truth driven(Mode mode, double ohms, double celsius, double level) {
    double channelOhms = mode.channelOhms(ohms);
    double low = 0;
    double high = rail.volts * 1.2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (middle <= held(cycle(middle, channelOhms, level))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Cycle cycle = cycle(low, channelOhms, level);
    double other = output.other;
    boolean bridged = mode == Mode.BRIDGED;
    double volts = bridged ? cycle.rms * (1 + other) : cycle.rms;
    double otherVolts = bridged ? volts : cycle.rms * other;
    double watts = volts * volts / ohms + (bridged ? 0 : otherVolts * otherVolts / ohms);
    double amps = supplyAmps(cycle);
    Truth truth = new Truth(volts, otherVolts, supplyVolts(amps), amps, watts);
    return truth.drifted(1 - output.driftPerKelvin * (celsius - 50), rail.idleAmps);
  }

  @Override
  public Truth idle() {
    return new Truth(0, 0, supplyVolts(rail.idleAmps), rail.idleAmps, 0);
  }

  @Override
  public Device withSupplyAmps(double amps) {
    return new WaveformDevice(new Line(line.volts, line.ohms, amps), rail, output);
  }

  private double supplyAmps(Cycle cycle) {
    double drawn = cycle.fromRails / rail.efficiency;
    double volts = line.volts;
    // The map rises with volts and starts above the working root, so it falls onto it.
    for (int i = 0; i < MOST_FALLS; i++) {
      double next = supplyVolts(drawn / volts + rail.idleAmps);
      if (volts - next < 1e-9) {
        break;
      }
      volts = next;
    }
    return drawn / volts + rail.idleAmps;
  }

  private double supplyVolts(double amps) {
    double soft = SOFTNESS * line.volts * Math.max(0, amps / line.amps - 1);
    return Math.max(0.6 * line.volts, line.volts - line.ohms * amps - soft);
  }

  /** The rail that supply and converter hold at what the cycle draws. */
  private double held(Cycle cycle) {
    double volts = supplyVolts(supplyAmps(cycle));
    double open = rail.regulated ? Math.min(1, volts / 10.5) : volts / 13.8;
    double over = Math.max(0, cycle.fromRails / rail.watts - 1);
    return rail.volts * open / (1 + 3 * over) - rail.ohms * cycle.railAmps;
  }

  private Cycle cycle(double railVolts, double channelOhms, double level) {
    double loop = channelOhms + output.ohms;
    double peak = Math.max(0, railVolts - output.dropVolts);
    double meanAmps = level * peak / loop * 2 / Math.PI;
    double squares = 0;
    double mean = 0;
    double watts = 0;
    for (int i = 0; i < POINTS; i++) {
      double sine = Math.sin(Math.PI / 2 * (i + 0.5) / POINTS);
      double wanted = level * OVERDRIVE * peak * sine / loop;
      double sag = rail.ripple * rail.ohms * (wanted - meanAmps);
      double clipped = Math.min(wanted, Math.max(0, peak - sag) / loop);
      double amps = Math.min(clipped, limitAmps(channelOhms, railVolts));
      squares += amps * amps / POINTS;
      mean += amps / POINTS;
      boolean lower = amps * loop < rail.lowRail * railVolts - output.dropVolts;
      watts += amps * railVolts * (lower ? rail.lowRail : 1) / POINTS;
    }
    double rms = Math.sqrt(squares) * channelOhms;
    double channels = 1 + output.other;
    double fromRails = watts * channels;
    if (output.classD) {
      fromRails = squares * loop * (1 + output.other * output.other) / output.efficiency;
    }
    return new Cycle(rms, mean * channels, fromRails);
  }

  /** Limits on a line from short circuit to full volts: i = i_s + (i_p - i_s) i R / V. */
  private double limitAmps(double channelOhms, double railVolts) {
    double slope = (output.peakAmps - output.shortAmps) * channelOhms / Math.max(1e-9, railVolts);
    return slope >= 1 ? output.peakAmps : Math.min(output.peakAmps, output.shortAmps / (1 - slope));
  }
}
