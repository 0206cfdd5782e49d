package loadwalk.cautions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import org.junit.jupiter.api.Test;

/**
 * Sweeps situations of every mixture: no caution is given at a level that {@code codes.md} lacks.
 */
class CautionSweepPropertyTest {
  private static final long SEED = 17;
  private static final int ROUNDS = 1500;

  /** What only a whole walk can bring about; the tables hold it. */
  private static final Set<String> OF_A_WALK =
      Set.of(
          "heed doubt-open",
          "heed cooled",
          "heed protected-before",
          "halt protected-before",
          "heed fuse-opened-before",
          "halt fuse-opened-before",
          "halt gave-out-before",
          "heed supply-ended-before");

  private static final List<String> STEREO = List.of("–", "0.25 Ω", "2 Ω", "4 Ω");
  private static final List<String> BRIDGED = List.of("–", "0.5 Ω", "4 Ω");
  private static final List<String> OWN_FUSES = List.of("–", "10 A", "3 × 30 A", "2 × 150 A");
  private static final List<String> SUPPLIES =
      List.of(
          "–",
          "13.8 V 20 A",
          "2 × 13.8 V 100 A",
          "16.5 V 100 A",
          "12.5 V 100 A",
          "13.8 V 50 A + 13.3 V 50 A");
  private static final List<String> LEADS =
      List.of(
          "–",
          "plus 0.5 m AWG 2/0 + minus 0.5 m AWG 2/0",
          "plus 4 m AWG 8 + minus 4 m AWG 8",
          "plus 1 m 3 × 6 mm² + minus 1 m 16 mm²");
  private static final List<String> FUSES = List.of("–", "20 A", "60 A", "125 A", "300 A");
  private static final List<String> RESISTORS =
      List.of("–", "2 × 4 Ω 100 W", "1 × 4 Ω 50 W", "8 × 4 Ω 300 W ±10 %");
  private static final List<String> METERS = List.of("–", "output volts 50–1000 Hz");
  private static final List<String> STEPS =
      List.of(
          "idle",
          "measure stereo 4 Ω",
          "measure stereo 2 Ω",
          "measure bridged 2 Ω",
          "warm-up stereo 4 Ω",
          "open-load stereo 4 Ω",
          "music",
          "note");
  private static final List<String> COLD = List.of("–", "here: 4.1 Ω", "here: 2 Ω");

  private final Situations situations = Situations.kept();
  private final Random random = new Random(SEED);

  private String any(List<String> cells) {
    return cells.get(random.nextInt(cells.size()));
  }

  /** A forecast from small to absurd, of some of its readings. */
  private String forecast() {
    List<String> bands = new ArrayList<>();
    for (String unit : List.of("A", "V", "W", "°C")) {
      double likely = Math.rint(5 * Math.exp(5 * random.nextDouble()));
      if (random.nextInt(4) > 0) {
        bands.add(likely + "–" + Math.rint(likely * (1 + random.nextDouble())) + " " + unit);
      }
    }
    return bands.isEmpty() ? "unknown" : String.join(", ", bands);
  }

  private Situations.Situation situation() {
    String step = any(STEPS);
    String amplifier =
        "Strong; least stereo: %s; least bridged: %s; own fuses: %s"
            .formatted(any(STEREO), any(BRIDGED), any(OWN_FUSES));
    String bench =
        "Sound; supplies: %s; leads: %s; bench fuse: %s; load resistors: %s; meters: %s"
            .formatted(any(SUPPLIES), any(LEADS), any(FUSES), any(RESISTORS), any(METERS));
    String far = step.startsWith("measure") ? any(COLD) : "–";
    List<String> cells =
        List.of("swept", amplifier, bench, far, step, forecast(), "–", "clear", "–");
    String table =
        "| %s |\n%s|\n| %s |"
            .formatted(
                String.join(" | ", Situations.COLUMNS),
                "| --- ".repeat(cells.size()),
                String.join(" | ", cells));
    return situations.read("sweep of seed " + SEED, table).get(0);
  }

  @Test
  void everyCautionSwept_isOneOfTheTable_andTheVerdictItsGravest() {
    System.out.println("seed " + SEED);
    Set<String> seen = new TreeSet<>();
    for (int round = 0; round < ROUNDS; round++) {
      Situations.Situation swept = situation();
      Forecast brief = situations.brief(swept);
      Verdict gravest = Verdict.CLEAR;
      double last = Double.POSITIVE_INFINITY;
      for (var caution : brief.cautions()) {
        seen.add(Situations.words(caution));
        gravest = gravest.graver(caution.gravity());
        double rank = 1000.0 * caution.gravity().ordinal() + Math.min(caution.severity(), 999);
        assertEquals(Math.min(last, rank), rank, () -> "not worst first: " + swept.row().text());
        last = rank;
      }
      if (gravest != brief.verdict()) {
        assertEquals(Verdict.HEED, brief.verdict(), swept.row().text());
        assertTrue(brief.givesFirst().isPresent(), () -> "no reason: " + swept.row().text());
      }
    }
    Set<String> told = new TreeSet<>(situations.codes().all());
    told.removeAll(OF_A_WALK);
    assertEquals(told, seen);
  }
}
