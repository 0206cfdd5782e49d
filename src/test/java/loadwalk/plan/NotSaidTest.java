package loadwalk.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import org.junit.jupiter.api.Test;

/** What was not said is told once, with what is presumed instead. */
class NotSaidTest {
  private static final Wire WIRE = new Wire(Tables.stock());

  private static LoadResistor resistor(String label) {
    return new LoadResistor(label, 4, 5, 100, 2, OptionalDouble.empty());
  }

  private static Meter meter(ReadingId id) {
    return new Meter(id.label() + " meter", id, 1, 0, 0, Optional.empty());
  }

  private static List<String> told(Bench bench) {
    return NotSaid.sentences(BareAmplifier.rated(), bench, WIRE).stream()
        .filter(sentence -> !sentence.startsWith("The amplifier's own fuses"))
        .toList();
  }

  @Test
  void everythingUnknown_isOneLineEach() {
    assertEquals(
        List.of(
            "Supplies: not entered, so not checked. Check their rating yourself.",
            "Fuse at the source: not entered, taken as none.",
            "Supply leads: not entered, taken to lose nothing. They are not checked.",
            "Load resistors: not entered. What you connect is not checked.",
            "Meters for output volts, supply volts, supply amps: not entered. No step counts on"
                + " them to show when to stop."),
        told(Bench.unknown()));
  }

  @Test
  void benchThatSaysAll_isToldNothing_andAMountMissingIsNamed() {
    List<Meter> meters =
        List.of(
            meter(ReadingId.OUTPUT_VOLTS),
            meter(ReadingId.SUPPLY_VOLTS),
            meter(ReadingId.SUPPLY_AMPS));
    List<Lead> leads = List.of(new Lead("plus", new Lead.Awg(4), 1, 1).insulatedFor(105));
    List<Supply> supplies = List.of(new Supply(13.8, 100));
    LoadResistor mounted = resistor("sink").on(Mount.heatsink(0.5));
    OptionalDouble fuse = OptionalDouble.of(100);
    assertEquals(
        List.of(), told(new Bench("b", supplies, leads, fuse, List.of(mounted), meters, 0.9)));
    assertEquals(
        List.of("Mount of load resistors 4R: not said, taken as in free air."),
        told(new Bench("b", supplies, leads, fuse, List.of(mounted, resistor("4R")), meters, 0.9)));
  }
}
