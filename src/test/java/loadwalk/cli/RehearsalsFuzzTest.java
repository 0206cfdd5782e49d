package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loadwalk.fuzz.Mutator;
import loadwalk.json.JsonText;
import loadwalk.plan.StockRules;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RehearsalsFuzzTest {
  private static final long SEED = Long.getLong("fuzz.seed", 3_000_003L);
  private static final String SEQUENCE =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"mine\",\"title\":\"Mine\","
          + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1.0},\"supplyVolts\":13.8,"
          + "\"steps\":[{\"do\":\"idle\"},{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4},"
          + "{\"do\":\"note\",\"text\":\"read this\"},{\"do\":\"open-load\"},"
          + "{\"do\":\"recheck\",\"of\":[\"heaviest\"],\"afterWarmMinutes\":15}]}";
  private static final String LINE =
      "{\"name\":\"one\",\"amp\":{\"maker\":\"Brightmoor\",\"model\":\"B2\",\"class\":\"AB\","
          + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":50}],\"fuses\":[30,30]},"
          + "\"bench\":{\"supplies\":[{\"volts\":13.8,\"amps\":100}],"
          + "\"loads\":[{\"ohms\":4,\"watts\":300,\"count\":2}]},"
          + "\"answers\":{\"idle\":{\"supplyAmps\":\"1.9 A\"},\"stereo-4\":{\"loadOhms\":4,"
          + "\"outputVolts\":\"13.4 V\",\"supplyVolts\":13.7,\"supplyAmps\":\"10 A\","
          + "\"thdPercent\":\"1 %\",\"sinkCelsius\":40},\"open-load\":{\"outputVolts\":\"13.4\","
          + "\"openVolts\":\"13.9\"},\"recheck\":{\"outputWatts\":\"45 W\"}}}";

  /** Answers alone are changed here, so that every line is walked, whatever it says. */
  private static final List<String> ENTRIES =
      List.of("13.4 V", "0", "1e12", "1e-9 V", "45 W", "1e11 W", "999999 A", "0.001", "4R7", "-1");

  @Test
  void rehearsals_ofHostileLines_neverFail() {
    run(3_000);
  }

  @Test
  @Tag("long")
  void rehearsals_ofAMillionHostileLines_neverFail() {
    run(1_000_000);
  }

  private static void run(int lines) {
    Sequence sequence =
        SequenceReader.read(SEQUENCE.getBytes(StandardCharsets.UTF_8), "s").found().orElseThrow();
    Rehearsals rehearsals = new Rehearsals(sequence, "1", StockRules.RULES);
    Mutator mutator = new Mutator(SEED, Mutator.JSON_TOKENS);
    Mutator entries = new Mutator(SEED + 1, ENTRIES);
    Map<Integer, Integer> codes = new TreeMap<>();
    for (int i = 0; i < lines; i++) {
      String good = LINE.replace("13.4 V", entry(entries)).replace("\"10 A\"", quoted(entries));
      String text = i % 2 == 0 ? good : mutator.mutant(List.of(good)).replace('\n', ' ');
      Rehearsals.Answer answer =
          rehearsals.answer(new LineReader.Line(i + 1, mutator.bytes(text)), "in");
      String where = "line " + i + ", seed " + SEED + ": " + text + " " + answer.complaints();
      assertNotEquals(ExitCode.FAULT, answer.code(), where);
      answer
          .text()
          .ifPresent(
              out -> {
                assertTrue(JsonText.strict("out").read(out).found().isPresent(), where);
                boolean typed = text.contains("NaN") || text.contains("Infinity");
                assertFalse(!typed && (out.contains("NaN") || out.contains("Infinity")), where);
              });
      codes.merge(answer.text().isPresent() ? 1 : 0, 1, Integer::sum);
    }
    assertTrue(codes.get(1) > lines / 4, "lines walked and refused: " + codes);
    assertTrue(codes.get(0) > lines / 10, "lines walked and refused: " + codes);
  }

  private static String entry(Mutator entries) {
    return entries.mutant(ENTRIES).replaceAll("[^0-9A-Za-z. -]", "");
  }

  private static String quoted(Mutator entries) {
    return "\"" + entry(entries) + "\"";
  }
}
