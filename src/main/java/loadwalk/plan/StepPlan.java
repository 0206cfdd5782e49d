package loadwalk.plan;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.caution.Stress;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.plan.wiring.WiringSummary;

/**
 * What one step will do to the bench.
 *
 * @param target the step
 * @param forecast its forecast with cautions and verdict
 * @param shares what each supply gives, in the order of the bench
 * @param leads what each run loses, in the order of the bench
 * @param terminalVolts volts left at the amplifier's terminals with the supplies as set
 * @param fuses when each fuse opens
 * @param wiring how the load is wired, where a load is connected and the stock is known
 * @param stresses what is stressed, worst first
 */
public record StepPlan(
    Target target,
    Forecast forecast,
    List<SupplyShare> shares,
    List<LeadLoss> leads,
    Optional<Band> terminalVolts,
    List<FuseTime> fuses,
    Optional<WiringAnswer> wiring,
    List<Stress> stresses) {
  /** Copies the lists. */
  public StepPlan {
    shares = List.copyOf(shares);
    leads = List.copyOf(leads);
    fuses = List.copyOf(fuses);
    stresses = List.copyOf(stresses);
  }

  /** Returns the supply current where it can be told. */
  public Optional<Band> amps() {
    return forecast.band(ReadingId.SUPPLY_AMPS);
  }

  /** Returns the output volts, those without a load where none is connected. */
  public Optional<Band> output() {
    Optional<Band> open = forecast.band(ReadingId.OPEN_VOLTS);
    return open.isPresent() ? open : forecast.band(ReadingId.OUTPUT_VOLTS);
  }

  /** Returns how the load is wired, at its worst watts, where a way was found. */
  Optional<WiringSummary> wired(Tables tables) {
    double watts = Math.max(0, forecast.demand().loadWatts().map(Band::high).orElse(0.0));
    return wiring
        .flatMap(WiringAnswer::wired)
        .map(found -> WiringSummary.of(target.mode(), watts, found, tables));
  }

  /** Returns why the load cannot be wired, where it cannot. */
  public Optional<WiringAnswer.None> unwired() {
    return wiring.flatMap(WiringAnswer::lacking);
  }

  /** Returns what gives first: what is stressed most against what it bears. */
  public Optional<Stress> givesFirst() {
    return stresses.stream().findFirst();
  }

  /**
   * The current of one of the paralleled supplies.
   *
   * @param number which supply, from 1
   * @param ratedAmps the most it delivers, amperes
   * @param amps its part by its rating, amperes
   * @param worstAmps its part where it alone goes to its limit before the others join, amperes
   */
  public record SupplyShare(int number, double ratedAmps, double amps, double worstAmps) {}

  /**
   * What one run loses.
   *
   * @param label the run
   * @param volts the volts lost, expected and at worst
   * @param watts the watts lost, expected and at worst
   */
  public record LeadLoss(String label, Band volts, Band watts) {}

  /**
   * When a fuse opens.
   *
   * @param label "amplifier" or "bench"
   * @param type the kind of fuse assumed from its rating
   * @param expected the gate of time at the expected current
   * @param worst the gate of time at the worst
   */
  public record FuseTime(
      String label, String type, FuseCurve.Opening expected, FuseCurve.Opening worst) {}
}
