package loadwalk.result;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Wire;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Computes the volts lost between the supply and the amplifier.
 *
 * <p>If the bench lists its supplies, the drop is the highest supply setting minus the volts read
 * at the terminals. If it lists only its leads, or a battery, whose volts fall as it works, or if
 * more is read than is set, the drop is the current times the resistance of the copper. If it lists
 * both, a drop far above that of the copper gets a remark, because nothing else reveals a bad
 * joint.
 */
final class LeadDrop {
  /** Half-width assumed for a supply's voltage setting, percent (common practice, no source). */
  private static final double SETTING_PERCENT = 1;

  /** Half-width assumed for copper, percent: a change of 25 K is 10 % (0.393 %/K, IEC 60228). */
  private static final double COPPER_PERCENT = 10;

  private final Bench bench;
  private final Wire wire;
  private final List<Remark> remarks;

  LeadDrop(Bench bench, Wire wire, List<Remark> remarks) {
    this.bench = bench;
    this.wire = wire;
    this.remarks = remarks;
  }

  /** Returns the drop at a current; empty if the bench lists neither supplies nor leads. */
  Optional<Quantity> of(Quantity terminalVolts, Quantity amps) {
    Optional<Quantity> copper = copper(amps);
    Optional<Quantity> measured =
        bench.setVolts().stream()
            .mapToObj(setting -> setting(setting).minus(terminalVolts))
            .findFirst();
    if (measured.isPresent() && !(measured.get().value() > 0)) {
      remarks.add(
          new Remark(
              "supply-above-setting",
              Sentence.of(
                  "{} were read at the terminals, no less than the supply is set to: what the leads"
                      + " lose cannot be told from it",
                  Printer.UTF8.value(terminalVolts.value(), Unit.VOLT, 3))));
      return copper;
    }
    if (measured.isEmpty()) {
      copper.ifPresent(
          drop ->
              remarks.add(
                  new Remark(
                      "lead-drop-computed",
                      "the lead drop is computed from the copper, not measured")));
      return copper;
    }
    remarks.add(
        new Remark(
            "supply-setting-assumed",
            "the lead drop counts from the supply's setting, taken as good to ±1 %"));
    copper.ifPresent(expected -> sayExcess(measured.get(), expected, amps));
    return measured;
  }

  private static Quantity setting(double volts) {
    return Quantity.exact(volts, Unit.VOLT)
        .withRectangular("supply setting", volts * SETTING_PERCENT / 100);
  }

  private Optional<Quantity> copper(Quantity amps) {
    OptionalDouble known = wire.ohms(bench);
    if (known.isEmpty()) {
      return Optional.empty();
    }
    double ohms = known.getAsDouble();
    Quantity copper =
        Quantity.exact(ohms, Unit.OHM).withRectangular("lead copper", ohms * COPPER_PERCENT / 100);
    return Optional.of(amps.times(copper, Unit.VOLT));
  }

  private void sayExcess(Quantity measured, Quantity copper, Quantity amps) {
    Quantity excess = measured.minus(copper);
    if (excess.value() <= excess.expanded()) {
      return;
    }
    Printer print = Printer.UTF8;
    remarks.add(
        new Remark(
            "lead-drop-excess",
            Sentence.of(
                "{} is lost between supply and amplifier, and the copper explains only {}: look for"
                    + " the other {} in a joint, a fuse or the supply's own sag",
                print.value(measured.value(), Unit.VOLT, 2),
                print.value(copper.value(), Unit.VOLT, 2),
                print.value(excess.value() * amps.value(), Unit.WATT, 2))));
  }
}
