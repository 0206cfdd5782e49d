package loadwalk.experiment;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Slip;

/**
 * Weighs the slips of a step as somebody who knows the population and how the experiment makes
 * slips: the odds of each against none, from the densities of a crowd.
 *
 * <p>Where readings are shared by several slips nobody can do better on average, but for what 300
 * neighbours leave unseen.
 *
 * @param density the densities of the readings of the step
 * @param step the index of the step
 * @param honestBefore what was typed at the step before
 */
record CrowdRule(CrowdDensity density, int step, Map<ReadingId, Double> honestBefore) {
  private static final double CENT = 0.01;
  private static final double TELLING = 0.2;

  /**
   * What is made of the entries of a step.
   *
   * @param logOdds ln of the odds of any slip against none
   * @param slip the likeliest
   */
  record Verdict(double logOdds, Slip slip) {}

  /** Weighs the entries of a step. */
  Verdict weigh(Map<ReadingId, Double> typed) {
    boolean watts = typed.containsKey(ReadingId.OUTPUT_WATTS);
    Map<ReadingId, Double> entries = inVolts(typed);
    boolean amps = entries.containsKey(ReadingId.SUPPLY_AMPS);
    Map<Slip, Double> odds = new EnumMap<>(Slip.class);
    boolean bridged = target().mode() == Mode.BRIDGED;
    if (watts) {
      volts(odds, Slip.BOTH_CHANNELS_FOR_ONE, entries, Math.sqrt(2), bridged ? 0 : 0.5);
      volts(odds, Slip.ONE_CHANNEL_FOR_BOTH, entries, Math.sqrt(0.5), bridged ? 1 : 0.5);
    } else {
      volts(odds, Slip.DECIMAL_POINT, entries, 10, 0.5);
      volts(odds, Slip.DECIMAL_POINT, entries, 0.1, 0.5);
      volts(odds, Slip.PEAK_FOR_RMS, entries, Math.sqrt(2), 1);
      volts(odds, Slip.PEAK_TO_PEAK_FOR_RMS, entries, 2 * Math.sqrt(2), 1);
      volts(odds, Slip.BOTH_CHANNELS_FOR_ONE, entries, 2, bridged ? 0 : 0.5);
      volts(odds, Slip.ONE_CHANNEL_FOR_BOTH, entries, 0.5, bridged ? 0 : 0.5);
      volts(odds, Slip.STEREO_READING_IN_BRIDGED, entries, 0.5, bridged ? 1 : 0);
      swapped(odds, entries, ReadingId.OUTPUT_VOLTS, amps ? 2.0 / 3 : 1);
      copied(odds, entries);
      wired(odds, entries, Slip.LOAD_DOUBLE, 1);
      wired(odds, entries, Slip.LOAD_HALF, 2);
      if (amps) {
        amps(odds, entries, 10);
        amps(odds, entries, 0.1);
        swapped(odds, entries, ReadingId.SUPPLY_AMPS, 1.0 / 3);
        aboveInput(odds, entries);
      }
    }
    double honest = density.of(look(entries), 0);
    double sum = 1e-12;
    Slip likeliest = Slip.UNNAMED;
    for (Map.Entry<Slip, Double> e : odds.entrySet()) {
      double value = e.getValue() / SlipMaker.stepsFor(e.getKey(), Arrangement.AMPS).size();
      sum += value;
      boolean more =
          likeliest == Slip.UNNAMED
              || value
                  > odds.get(likeliest) / SlipMaker.stepsFor(likeliest, Arrangement.AMPS).size();
      likeliest = more ? e.getKey() : likeliest;
    }
    return new Verdict(Math.log(sum / honest), likeliest);
  }

  private Target target() {
    return Ladder.STEPS.get(step);
  }

  private Map<ReadingId, Double> inVolts(Map<ReadingId, Double> typed) {
    Map<ReadingId, Double> entries = new LinkedHashMap<>(typed);
    Double watts = entries.remove(ReadingId.OUTPUT_WATTS);
    if (watts != null) {
      entries.put(ReadingId.OUTPUT_VOLTS, Math.sqrt(watts * target().ohms()));
    }
    return entries;
  }

  private Crowd.Look look(Map<ReadingId, Double> entries) {
    return Crowd.Look.of(entries, step);
  }

  private static void add(Map<Slip, Double> odds, Slip slip, double value) {
    odds.merge(slip, value, Double::sum);
  }

  private void volts(
      Map<Slip, Double> odds, Slip slip, Map<ReadingId, Double> entries, double by, double share) {
    if (share > 0) {
      double meant = entries.get(ReadingId.OUTPUT_VOLTS) / by;
      add(odds, slip, share * density.of(look(with(entries, ReadingId.OUTPUT_VOLTS, meant)), 0));
    }
  }

  private void amps(Map<Slip, Double> odds, Map<ReadingId, Double> entries, double by) {
    double meant = entries.get(ReadingId.SUPPLY_AMPS) / by;
    Crowd.Look look = look(with(entries, ReadingId.SUPPLY_AMPS, meant));
    add(odds, Slip.SUPPLY_AMPS_TEN_TIMES, 0.5 * density.of(look, 0));
  }

  private void wired(Map<Slip, Double> odds, Map<ReadingId, Double> entries, Slip slip, int way) {
    add(odds, slip, density.of(look(entries), way));
  }

  private void swapped(
      Map<Slip, Double> odds, Map<ReadingId, Double> entries, ReadingId id, double share) {
    double typed = entries.get(id);
    String shown = BigDecimal.valueOf(typed).setScale(2, java.math.RoundingMode.HALF_UP).toString();
    for (int i = 0; i + 1 < shown.length(); i++) {
      double meant = SlipMaker.swapped(shown, i, shown.charAt(i + 1) == '.' ? i + 2 : i + 1);
      if (meant > 0 && Math.abs(typed / meant - 1) > TELLING) {
        double mass = density.of(look(with(entries, id, meant)), 0) * typed / meant;
        add(odds, Slip.DIGITS_SWAPPED, share / 2 * mass);
      }
    }
  }

  /** A copy has all its digits, so its density is that of one cent of volts, and of the amps. */
  private void copied(Map<Slip, Double> odds, Map<ReadingId, Double> entries) {
    Double volts = entries.get(ReadingId.OUTPUT_VOLTS);
    if (!volts.equals(honestBefore.get(ReadingId.OUTPUT_VOLTS))) {
      return;
    }
    Double amps = entries.get(ReadingId.SUPPLY_AMPS);
    add(odds, Slip.COPIED_FROM_BEFORE, 0.5 * volts / CENT * density.ofAmps(look(entries)));
    if (amps == null || amps.equals(honestBefore.get(ReadingId.SUPPLY_AMPS))) {
      add(
          odds,
          Slip.COPIED_FROM_BEFORE,
          0.5 * volts / CENT * (amps == null ? 1 : amps / (10 * CENT)));
    }
  }

  private void aboveInput(Map<Slip, Double> odds, Map<ReadingId, Double> entries) {
    double volts = entries.get(ReadingId.OUTPUT_VOLTS);
    double output = target().mode().loads() * volts * volts / target().ohms();
    double ratio =
        output / entries.get(ReadingId.SUPPLY_VOLTS) / entries.get(ReadingId.SUPPLY_AMPS);
    if (ratio > 1.1 && ratio < 2) {
      add(odds, Slip.OUTPUT_ABOVE_INPUT, 2 * ratio / 0.9 * density.ofAmps(look(entries)));
    }
  }

  private static Map<ReadingId, Double> with(
      Map<ReadingId, Double> entries, ReadingId id, double value) {
    Map<ReadingId, Double> changed = new LinkedHashMap<>(entries);
    changed.put(id, value);
    return changed;
  }
}
