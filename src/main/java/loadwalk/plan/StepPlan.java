package loadwalk.plan;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Hold;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.caution.Stress;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.plan.wiring.WiringSummary;

/**
 * The demands of one step on the bench.
 *
 * @param target the step
 * @param forecast its forecast with cautions and verdict
 * @param shares the current from each supply, in the order of the bench
 * @param leads the loss in each run, in the order of the bench
 * @param terminalVolts volts at the amplifier's terminals with the supplies as set
 * @param fuses when each fuse blows
 * @param wiring how the load is wired, if one is connected and the stock is known
 * @param stresses the stressed parts, worst first
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

  /** Returns the supply current, if it can be forecast. */
  public Optional<Band> amps() {
    return forecast.band(ReadingId.SUPPLY_AMPS);
  }

  /** Returns the output volts; the unloaded volts if no load is connected. */
  public Optional<Band> output() {
    Optional<Band> open = forecast.band(ReadingId.OPEN_VOLTS);
    return open.isPresent() ? open : forecast.band(ReadingId.OUTPUT_VOLTS);
  }

  /** Returns how the load is wired, at its worst-case watts, if a wiring was found. */
  Optional<WiringSummary> wired(Tables tables) {
    double watts = Math.max(0, forecast.demand().loadWatts().map(Band::high).orElse(0.0));
    return wiring
        .flatMap(WiringAnswer::wired)
        .map(
            found ->
                WiringSummary.of(
                    target.mode(), watts, Hold.of(target.kind(), tables), found, tables));
  }

  /** Returns why the load cannot be wired; empty if it can. */
  public Optional<WiringAnswer.None> unwired() {
    return wiring.flatMap(WiringAnswer::lacking);
  }

  /** Returns the part that would fail first: the one most stressed relative to its limit. */
  public Optional<Stress> givesFirst() {
    return stresses.stream().findFirst();
  }

  /**
   * The current of one of the paralleled supplies.
   *
   * @param number which supply, from 1
   * @param ratedAmps the most it delivers, amperes
   * @param amps its share in proportion to its rating, amperes
   * @param worstAmps its share if it alone reaches its limit before the others contribute, amperes
   */
  public record SupplyShare(int number, double ratedAmps, double amps, double worstAmps) {}

  /**
   * The loss in one run.
   *
   * @param label the run
   * @param volts the volts lost, expected and worst case
   * @param watts the watts lost, expected and worst case
   */
  public record LeadLoss(String label, Band volts, Band watts) {}

  /**
   * When a fuse blows.
   *
   * @param label "amplifier" or "bench"
   * @param type the kind of fuse assumed from its rating
   * @param expected the shortest and longest time to blow at the expected current
   * @param worst the shortest and longest time to blow at the worst-case current
   */
  public record FuseTime(
      String label, String type, FuseCurve.Opening expected, FuseCurve.Opening worst) {}
}
