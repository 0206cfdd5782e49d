package loadwalk.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

/** A ratio to something small has a range of its own shape. */
class RatioTest {
  /** 4 Ω / 21.85 mΩ = 183; 4/0.0404 = 99 and 4/0.0033 = 1215, where ± would say 183 ± 155. */
  @Test
  void range_isThatOfTheDivisorTurnedOver() {
    Ratio resolved = Ratio.of(4, Quantity.of(0.02185, Unit.OHM, "u", 0.00928));
    assertEquals(4 / (0.02185 + 0.01856), resolved.low(), 1e-9);
    assertEquals(4 / (0.02185 - 0.01856), resolved.high().orElseThrow(), 1e-6);
    assertEquals("from 99 to 1200", resolved.range());
  }

  @Test
  void divisorThatMayBeNothing_leavesTheUpperEndOpen() {
    Ratio ratio = Ratio.of(4, Quantity.of(0.01, Unit.OHM, "u", 0.01));
    assertEquals(OptionalDouble.empty(), ratio.high());
    assertEquals("at least 130", ratio.range());
  }

  @Test
  void valueOutsideItsRange_isRefused() {
    for (double value : new double[] {1, 5, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> new Ratio(value, 2, OptionalDouble.of(4)));
    }
  }

  /** 100 W of 140 W ± 58 W is no number with ±: 14 V and 10 A ± (1 % + 40 of 0.1 A). */
  @Test
  void inputNearItsUncertainty_givesARangeOfTheEfficiency_andNoNumber() {
    StepResult step =
        Readings.step(
            Readings.bench(
                List.of(
                    Readings.meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01),
                    Readings.meter(ReadingId.SUPPLY_AMPS, 1, 40, 0.1)),
                List.of(Readings.load(4, 1))),
            Readings.bridged(
                4,
                Readings.volts(20),
                Readings.of(ReadingId.SUPPLY_VOLTS, 14),
                Readings.of(ReadingId.SUPPLY_AMPS, 10)));
    assertTrue(step.efficiency().isEmpty());
    double u = step.inputWatts().orElseThrow().expanded();
    assertEquals(14 * 4 / Math.sqrt(3) * 1.67, u, 1.5);
    String said =
        step.remarks().stream()
            .filter(r -> r.code().equals("efficiency-not-resolved"))
            .map(Remark::text)
            .findFirst()
            .orElseThrow();
    assertTrue(said.endsWith("too little for an efficiency: it would be from 0.52 to 1.2"), said);
  }
}
