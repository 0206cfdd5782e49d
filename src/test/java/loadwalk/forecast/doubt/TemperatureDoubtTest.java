package loadwalk.forecast.doubt;

import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Temperatures that no bench has, or that the walk so far contradicts. */
class TemperatureDoubtTest {
  private static final Target WARM_UP =
      new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
  private static final ReadingId SINK = ReadingId.SINK_CELSIUS;
  private static final ReadingId AIR = ReadingId.AMBIENT_CELSIUS;

  private static List<Slip> slips(
      List<Observation> walk, Target target, Map<ReadingId, Double> entries) {
    return Stock.forecaster()
        .judge(Amplifiers.evidence(Amplifiers.rated(50), walk), target, entries)
        .stream()
        .map(Doubt::slip)
        .toList();
  }

  private static List<Slip> first(Target target, ReadingId id, double celsius) {
    return slips(List.of(), target, Map.of(id, celsius));
  }

  @Test
  void firstTemperature_isDoubtedWhereNoBenchHasIt() {
    assertEquals(List.of(Slip.UNNAMED), first(WARM_UP, SINK, -5));
    assertEquals(List.of(Slip.DECIMAL_POINT), first(WARM_UP, SINK, 300));
    assertEquals(List.of(Slip.DECIMAL_POINT), first(WARM_UP, SINK, 1234));
    assertEquals(List.of(Slip.FAHRENHEIT_FOR_CELSIUS), first(WARM_UP, SINK, 131));
    assertEquals(List.of(Slip.FAHRENHEIT_FOR_CELSIUS), first(IDLE, AIR, 72));
    assertEquals(List.of(Slip.DECIMAL_POINT), first(IDLE, AIR, 215));
    assertEquals(List.of(Slip.UNNAMED), first(IDLE, AIR, -5));
  }

  @Test
  void temperaturesOfABench_areNotDoubted() {
    for (double celsius : new double[] {0, 4, 21.5, 55, 85, 110}) {
      assertEquals(List.of(), first(WARM_UP, SINK, celsius), celsius + " degrees");
    }
    for (double celsius : new double[] {0, 12, 21.5, 38, 45}) {
      assertEquals(List.of(), first(IDLE, AIR, celsius), celsius + " degrees");
    }
  }

  @Test
  void readingOfAnotherRow_isNamed() {
    Map<ReadingId, Double> entries = Map.of(SINK, 250.5, ReadingId.OUTPUT_WATTS, 250.5);
    List<Doubt> doubts =
        Stock.forecaster()
            .judge(Amplifiers.evidence(Amplifiers.rated(50), List.of()), STEREO_2, entries);
    assertTrue(
        doubts.stream().anyMatch(d -> d.reading() == SINK && d.slip() == Slip.WRONG_ROW),
        doubts.toString());
  }

  @Test
  void fahrenheit_isNamedByTheTemperatureBefore() {
    List<Observation> walk = List.of(new Observation(Amplifiers.STEREO_4, Map.of(SINK, 38.0)));
    assertEquals(List.of(Slip.FAHRENHEIT_FOR_CELSIUS), slips(walk, STEREO_2, Map.of(SINK, 102.5)));
    assertEquals(List.of(), slips(walk, STEREO_2, Map.of(SINK, 40.0)));
  }
}
