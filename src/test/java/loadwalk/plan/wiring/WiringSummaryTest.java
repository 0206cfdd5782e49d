package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.Mount;
import loadwalk.bench.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wiring found, in the words in which it is read at the bench. */
class WiringSummaryTest {
  private static Network.Part part(String label, int number, double ohms, double watts) {
    Network.Part part = Parts.part(label, number, ohms, 5, watts);
    return new Network.Part(part.name(), part.kind().on(Mount.heatsink(1e-6)));
  }

  private static WiringSummary summary(Mode mode, double watts, Network... loads) {
    WiringRequest request = new WiringRequest(4, watts, loads.length, 5, 0.75);
    WiringAnswer.Found found = new WiringAnswer.Found(List.of(loads), request, true);
    return WiringSummary.of(mode, watts, found, Tables.stock());
  }

  @Test
  void terminals_areThoseOfTheAmplifier() {
    Network.Part four = part("4 ohm", 1, 4, 100);
    Network.Part other = part("4 ohm", 2, 4, 100);
    WiringSummary stereo = summary(Mode.STEREO, 50, four, other);
    assertEquals("stereo 4 Ω", stereo.title());
    assertEquals(
        List.of("left+ left- 4 ohm #1", "right+ right- 4 ohm #2"),
        stereo.loads().stream()
            .map(l -> l.plus() + " " + l.minus() + " " + l.network().formula())
            .toList());
    WiringSummary bridged = summary(Mode.BRIDGED, 50, four);
    assertEquals("bridged 4 Ω", bridged.title());
    assertEquals("bridge+", bridged.loads().get(0).plus());
    assertEquals("bridge-", bridged.loads().get(0).minus());
  }

  /** By hand: 8 Ω and 24 Ω in parallel take 90 and 30 of 120 W; u = 6 · 0.05/√3 for k = 1. */
  @Test
  void words_nameTheHottestResistor() {
    Network load =
        new Network.Parallel(List.of(part("8 ohm", 1, 8, 200), part("24 ohm", 1, 24, 50)));
    WiringSummary summary = summary(Mode.BRIDGED, 120, load);
    assertEquals(
        "bridge+ to bridge-: 6.00 ± 0.27 Ω (k = 2); at worst 120 W in all, 30 of 50 W in 24 ohm"
            + " #1",
        summary.words(summary.loads().get(0)));
  }

  /**
   * By hand, of 100 W on a heatsink that stays cold: 100 W for ever; 125 W for ln 5 / ln 1.25 · 5 =
   * 36.1 s; 500 W for 5 s; then not.
   */
  @ParameterizedTest
  @CsvSource({
    "75, no time limit",
    "99.9, no time limit",
    "1250, overloaded: no known burst allows it",
    "125, for a burst of 36.1 s from cold (an estimate)",
    "500, for a burst of 5 s from cold (an estimate)",
    "501, overloaded: no known burst allows it"
  })
  void burst_isThatOfTheHottestOfBothLoads(double watts, String words) {
    WiringSummary summary =
        summary(Mode.STEREO, watts, part("big", 1, 4, 1000), part("small", 1, 4, 100));
    assertEquals(words, summary.burstWords());
    WiringSummary turned =
        summary(Mode.STEREO, watts, part("small", 1, 4, 100), part("big", 1, 4, 1000));
    assertEquals(words, turned.burstWords());
  }
}
