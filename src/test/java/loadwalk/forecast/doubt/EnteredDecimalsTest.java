package loadwalk.forecast.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.model.Amplifiers;
import org.junit.jupiter.api.Test;

/** A hand that types 14.92 V types 9.10 V too, of which only 9.1 is left to see. */
class EnteredDecimalsTest {
  @Test
  void entryAlone_isTakenAsThreeDigits() {
    assertEquals(1, decimals(14, new double[0]));
    assertEquals(2, decimals(1.4, new double[0]));
    assertEquals(0, decimals(140, new double[0]));
    assertEquals(0, decimals(1400, new double[0]));
  }

  @Test
  void entryBesideFinerOnes_isTakenToBeAsFine() {
    assertEquals(2, decimals(14, 14.92));
    assertEquals(3, decimals(9.1, 14.92, 15.1));
    assertEquals(3, decimals(14, 14.921));
  }

  @Test
  void entryItself_tellsItsOwnDigits() {
    assertEquals(3, decimals(14.921, 15));
  }

  @Test
  void noMoreThanFiveDigits_andFourDecimals_areSupposed() {
    assertEquals(3, decimals(14, 14.92134));
    assertEquals(4, decimals(0.0012, new double[0]));
    assertEquals(5, decimals(0.00125, new double[0]));
  }

  @Test
  void entryOfNothing_hasOneDecimal() {
    assertEquals(1, decimals(0, 14.92));
    assertEquals(1, decimals(-3, 14.92));
    assertEquals(1, decimals(Double.NaN, 14.92));
  }

  private static int decimals(double entered, double... before) {
    List<Observation> walk =
        IntStream.range(0, before.length)
            .mapToObj(
                i ->
                    new Observation(
                        Target.loaded("stereo-" + i, Mode.STEREO, 4),
                        Map.of(ReadingId.OUTPUT_VOLTS, before[i], ReadingId.SUPPLY_AMPS, 1.23456)))
            .toList();
    Evidence evidence = Amplifiers.evidence(Amplifiers.rated(50), walk);
    return EnteredDecimals.of(evidence, ReadingId.OUTPUT_VOLTS, entered);
  }
}
