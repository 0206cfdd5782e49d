package loadwalk.forecast.doubt;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Mixture;
import loadwalk.forecast.model.StepOutlook;
import loadwalk.forecast.model.WalkModel;
import loadwalk.forecast.model.WalkReadings;

/**
 * Judges the output and the supply current of a loaded step together.
 *
 * <p>The volts have a predictive density of their own, and the current has one given the volts. A
 * slip in the volts leaves the current right, and the reverse; a load wired wrong moves both as
 * another load would. Comparing these joint densities makes the current a second witness of the
 * load.
 */
final class LoadedJudge {
  private static final double LOG_TWO = Math.log(2);

  /**
   * ln of how often the amplifier is still wired in stereo, relative to one channel read instead of
   * the bridge. Chosen by hand; checked by the experiment.
   */
  private static final double LOG_STILL_STEREO = Math.log(0.3);

  /**
   * The same for an output, but no current, copied from the stereo step into the same load. Chosen
   * by hand; checked by the experiment.
   */
  private static final double LOG_SAME_OHMS = Math.log(0.1);

  /** Largest ratio of output to input that still counts as that slip. Chosen by hand. */
  private static final double MOST_ABOVE_INPUT = 3;

  /** Smallest entry used in calculations, in its unit: keeps the logarithm finite. */
  private static final double LEAST_ENTRY = 1e-6;

  /** ln of the range of ln volts in which the output exceeds the input by up to that ratio. */
  private static final double LOG_RANGE_ABOVE_INPUT = Math.log(0.5 * Math.log(MOST_ABOVE_INPUT));

  private final WalkModel model;
  private final Target target;
  private final boolean bridged;
  private final double loadOhms;
  private final double supplyVolts;
  private Side here;

  LoadedJudge(WalkModel model, Target target, double loadOhms, double supplyVolts) {
    this.model = model;
    this.target = target;
    this.loadOhms = loadOhms;
    this.supplyVolts = supplyVolts;
    bridged = target.mode() == Mode.BRIDGED;
  }

  private Side here() {
    if (here == null) {
      here = new Side(target, loadOhms);
    }
    return here;
  }

  /** Returns whether the supply volts were measured, not merely expected. */
  boolean knowsSupply() {
    return !Double.isNaN(supplyVolts);
  }

  /** Returns ln of the density of the entries if nothing is off; either may be null. */
  double honest(ReadingId outputId, Double output, Double amps) {
    return here().joint(log(outputId, output), amps);
  }

  /**
   * Returns how far ln of the density of the entries is below its peak: about half the square of
   * the distance in standard deviations.
   */
  double surprise(ReadingId outputId, Double output, Double amps) {
    return here().surprise(log(outputId, output), amps);
  }

  /** Weighs an output entry (volts or watts) and a current; either may be null. */
  Hypotheses weigh(ReadingId outputId, Double output, Double amps, Before before) {
    Hypotheses hypotheses = new Hypotheses();
    Side here = here();
    hypotheses.honest(here.joint(log(outputId, output), amps));
    if (output != null) {
      weighOutput(hypotheses, here, outputId, output, amps, before);
      for (Slip slip : List.of(Slip.LOAD_DOUBLE, Slip.LOAD_HALF)) {
        Side wrong = new Side(target, loadOhms * (slip == Slip.LOAD_DOUBLE ? 2 : 0.5));
        hypotheses.add(
            faulty(outputId, amps),
            slip,
            Double.NaN,
            SlipPriors.log(slip) + wrong.joint(log(outputId, output), amps));
      }
      if (bridged) {
        weighStereo(hypotheses, outputId, output, amps);
      }
    }
    if (amps != null) {
      weighAmps(hypotheses, here, log(outputId, output), amps, before);
    }
    if (output != null && amps != null) {
      weighBoth(hypotheses, outputId, output, amps, before);
    }
    return hypotheses;
  }

  /**
   * The readings of the previous step, and how readings were typed.
   *
   * @param output the output entry of the same kind, null if none
   * @param amps the supply amperes, null if none
   * @param newUnit whether all earlier outputs of the walk were typed in the other unit
   * @param outputDecimals the number of decimals with which outputs have been typed
   * @param ampsDecimals the number of decimals with which amperes have been typed
   */
  record Before(
      Double output, Double amps, boolean newUnit, int outputDecimals, int ampsDecimals) {}

  private void weighOutput(
      Hypotheses hypotheses,
      Side here,
      ReadingId outputId,
      double output,
      Double amps,
      Before before) {
    hypotheses.add(
        outputId,
        SlipCandidate.output(
            target, outputId, output, before.output(), before.outputDecimals(), before.newUnit()),
        here.ampsAlone(amps),
        meant -> here.joint(log(outputId, meant), amps));
    if (amps != null) {
      weighAboveInput(hypotheses, here, outputId, output, amps);
    }
  }

  private static Set<ReadingId> faulty(ReadingId outputId, Double amps) {
    return amps == null ? Set.of(outputId) : Set.of(outputId, ReadingId.SUPPLY_AMPS);
  }

  /**
   * Adds readings of the amplifier in stereo, each channel into the load of this bridged step. If
   * it is still wired in stereo, both readings come from there; otherwise only the output was
   * copied.
   */
  private void weighStereo(Hypotheses hypotheses, ReadingId outputId, double output, Double amps) {
    Slip slip = Slip.STEREO_READING_IN_BRIDGED;
    Side stereo = new Side(target.in(Mode.STEREO), loadOhms);
    double volts = log(outputId, output);
    hypotheses.add(
        faulty(outputId, amps),
        slip,
        Double.NaN,
        SlipPriors.log(slip) + LOG_STILL_STEREO + stereo.joint(volts, amps));
    hypotheses.add(
        Set.of(outputId),
        slip,
        Double.NaN,
        SlipPriors.log(slip) + LOG_SAME_OHMS + stereo.outputAlone(volts) + here().ampsAlone(amps));
  }

  /** Adds any slip that makes the output exceed the input, up to three times. */
  private void weighAboveInput(
      Hypotheses hypotheses, Side here, ReadingId outputId, double output, double amps) {
    double ratio = outputOverInput(Map.of(outputId, output, ReadingId.SUPPLY_AMPS, amps));
    if (ratio > 1 && ratio < MOST_ABOVE_INPUT) {
      hypotheses.add(
          Set.of(outputId),
          Slip.OUTPUT_ABOVE_INPUT,
          Double.NaN,
          SlipPriors.log(Slip.OUTPUT_ABOVE_INPUT) - LOG_RANGE_ABOVE_INPUT + here.ampsAlone(amps));
    }
  }

  private void weighAmps(
      Hypotheses hypotheses, Side here, double logOutput, double amps, Before before) {
    hypotheses.add(
        ReadingId.SUPPLY_AMPS,
        SlipCandidate.supplyAmps(amps, before.amps(), before.ampsDecimals()),
        here.outputAlone(logOutput),
        meant -> here.joint(logOutput, meant));
  }

  private void weighBoth(
      Hypotheses hypotheses, ReadingId outputId, double output, double amps, Before before) {
    Set<ReadingId> faulty = EnumSet.of(outputId, ReadingId.SUPPLY_AMPS);
    double unnamed = SlipPriors.log(Slip.UNNAMED) + SlipPriors.UNNAMED_LOG_DENSITY;
    hypotheses.add(faulty, Slip.UNNAMED, Double.NaN, 2 * unnamed);
    boolean copied =
        before.output() != null
            && before.amps() != null
            && before.output() == output
            && before.amps() == amps;
    if (copied) {
      double cells =
          Math.log(output * Math.pow(10, before.outputDecimals()))
              + Math.log(amps * Math.pow(10, before.ampsDecimals()));
      hypotheses.add(
          faulty,
          Slip.COPIED_FROM_BEFORE,
          Double.NaN,
          SlipPriors.log(Slip.COPIED_FROM_BEFORE) + cells);
    }
  }

  /** Returns ln of the volts across the load from an entry in volts or watts. */
  private double log(ReadingId outputId, Double entry) {
    if (entry == null) {
      return Double.NaN;
    }
    double value = Math.max(entry, LEAST_ENTRY);
    return outputId == ReadingId.OUTPUT_WATTS
        ? 0.5 * (Math.log(value) + Math.log(loadOhms))
        : Math.log(value);
  }

  /** The densities for what is really connected: the planned step or another. */
  private final class Side {
    private final Target connected;
    private final double logLoads;
    private final StepOutlook outlook;
    private Mixture above;

    Side(Target connected, double ohms) {
      this.connected = connected;
      logLoads = connected.mode() == Mode.BRIDGED ? LOG_TWO : 0;
      outlook = StepOutlook.of(model, connected, ohms, supplyVolts);
    }

    double joint(double logLoadVolts, Double entered) {
      if (Double.isNaN(logLoadVolts)) {
        return ampsAlone(entered);
      }
      double log = logLoadVolts - logLoads;
      double density = outlook.logVolts().logDensity(log);
      return entered == null
          ? density
          : density + outlook.logAmpsDensity(model, connected, log, entered);
    }

    double outputAlone(double logLoadVolts) {
      return Double.isNaN(logLoadVolts)
          ? 0
          : outlook.logVolts().logDensity(logLoadVolts - logLoads);
    }

    double surprise(double logLoadVolts, Double entered) {
      if (Double.isNaN(logLoadVolts)) {
        return entered == null ? 0 : logAbove().highest() - ampsAlone(entered);
      }
      double log = logLoadVolts - logLoads;
      double fall = outlook.logVolts().highest() - outlook.logVolts().logDensity(log);
      if (entered == null) {
        return fall;
      }
      double usual =
          outlook
              .efficiency()
              .highest(log, outlook.channelOhms(), outlook.supplyVolts(), model.idle());
      return fall + usual - outlook.logAmpsDensity(model, connected, log, entered);
    }

    double ampsAlone(Double entered) {
      if (entered == null) {
        return 0;
      }
      return StepOutlook.logAmpsDensity(model, logAbove(), entered);
    }

    private Mixture logAbove() {
      if (above == null) {
        above = outlook.logAbove(model, connected);
      }
      return above;
    }
  }

  /** Returns watts out over watts in; above 1 more comes out than goes in. */
  double outputOverInput(Map<ReadingId, Double> entries) {
    double volts = WalkReadings.volts(entries, loadOhms);
    Double amps = entries.get(ReadingId.SUPPLY_AMPS);
    if (amps == null || !(volts > 0) || !(amps > 0)) {
      return Double.NaN;
    }
    return target.mode().loads() * volts * volts / loadOhms / (inputVolts() * amps);
  }

  private double inputVolts() {
    return Double.isNaN(supplyVolts) ? model.outlook(target).supplyVolts() : supplyVolts;
  }
}
