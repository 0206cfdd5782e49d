package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loadwalk.bench.Hold;
import loadwalk.bench.Mode;
import loadwalk.bench.Mount;
import loadwalk.bench.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wiring found, in the words in which it is read at the bench. */
class WiringSummaryTest {
  private static final Hold READING = new Hold(60);

  private static Network.Part part(String label, int number, double ohms, double watts) {
    Network.Part part = Parts.part(label, number, ohms, 5, watts);
    return new Network.Part(part.name(), part.kind().on(Mount.heatsink(1e-6)));
  }

  private static WiringSummary summary(Mode mode, double watts, Network... loads) {
    WiringRequest request = new WiringRequest(4, watts, loads.length, 5);
    WiringAnswer.Found found = new WiringAnswer.Found(List.of(loads), request, true);
    return WiringSummary.of(mode, watts, READING, found, Tables.stock());
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
    "125, for 36.1 s from cold (an estimate)",
    "500, for 5 s from cold (an estimate)",
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

  /** 100 W on a heatsink that stays cold bear 107 W for a minute: 225 K / 2.25 K/W / 0.931. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "99.9|60|Fewest resistors, no time limit.",
        "106|60|Fewest resistors, for 64.3 s from cold (an estimate).",
        "110|60|No wiring of these resistors bears a reading; this one lasts longest: for 53.7 s"
            + " from cold (an estimate).",
        "101|Infinity|No wiring of these resistors bears a warm-up; this one lasts longest: for"
            + " 103 s from cold (an estimate)."
      })
  void choice_saysWhetherTheWiringLastsAsLongAsTheStep(double watts, double hold, String words) {
    WiringRequest request = new WiringRequest(4, watts, 1, 5);
    WiringAnswer.Found found =
        new WiringAnswer.Found(List.of(part("four", 1, 4, 100)), request, true);
    assertEquals(
        words,
        WiringSummary.of(Mode.BRIDGED, watts, new Hold(hold), found, Tables.stock()).choice());
  }

  @Test
  void rule_isSaidInOneSentence() {
    assertEquals(
        "Each load takes the fewest resistors that bear its watts as long as its step holds them: a"
            + " warm-up without end, any other step 60 s.",
        WiringSummary.rule(Tables.stock()));
  }
}
