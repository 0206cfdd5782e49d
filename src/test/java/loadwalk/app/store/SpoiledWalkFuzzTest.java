package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import loadwalk.report.Journals;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Changes the journal of a kept walk, or the witness of its end, and cuts it: no sheet and no
 * ledger prints another number without a word, and the exit code tells.
 */
class SpoiledWalkFuzzTest {
  private static final long SEED = 20_261_201;
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> FINISHED = Journals.practice(3, "stereo-only");
  private static final List<String> OPEN = FINISHED.subList(0, FINISHED.size() - 30);

  /** The old format, in which no record names another and none is counted. */
  private static final List<String> OLD =
      FINISHED.stream()
          .map(body -> body.replace("journal/2", "journal/1").replaceAll("\"records\":\\d+,", ""))
          .toList();

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private final Map<String, Integer> outcomes = new TreeMap<>();

  @Test
  void someChanges_printNoOtherNumberWithoutAWord() throws IOException {
    change(60, 60);
  }

  @Test
  @Tag("long")
  void fourThousandChanges_printNoOtherNumberWithoutAWord() throws IOException {
    change(2000, 2000);
  }

  @Test
  void someCutsAtRecords_areSeen_orToldToBeUnknowable() throws IOException {
    cut(40);
  }

  @Test
  @Tag("long")
  void thousandCutsAtRecords_areSeen_orToldToBeUnknowable() throws IOException {
    cut(1000);
  }

  private void change(int bits, int longer) throws IOException {
    for (List<String> bodies : List.of(FINISHED, OPEN)) {
      Trial trial = new Trial(new KeptHome(folder.resolve("home" + bodies.size())).keep(bodies));
      for (int i = 0; i < bits / 2; i++) {
        trial.spoil(this::bitTurned, "bit " + i);
      }
      for (int i = 0; i < longer / 2; i++) {
        trial.spoil(this::changedAtLength, "longer " + i);
      }
    }
    System.out.printf(
        "changes of a kept journal and its witness: %d of a bit, %d longer, seed %d, %s%n",
        bits, longer, SEED, outcomes);
    assertTrue(outcomes.size() > 2, outcomes::toString);
  }

  /** A walk, with what is printed of it while all is well. */
  private final class Trial {
    private final KeptHome home;
    private final byte[] journal;
    private final byte[] witness;
    private final JsonNode sheet;
    private final JsonNode ledger;

    Trial(KeptHome home) throws IOException {
      this.home = home;
      journal = Files.readAllBytes(home.journal());
      witness = Files.readAllBytes(home.witness());
      sheet = numbers(home.sheet("--json", "-"));
      ledger = numbers(home.ledger("--json", "-"));
    }

    void spoil(Change change, String what) throws IOException {
      boolean ofJournal = random.nextInt(4) > 0;
      Path file = ofJournal ? home.journal() : home.witness();
      byte[] before = ofJournal ? journal : witness;
      byte[] after = change.of(before);
      while (Arrays.equals(before, after)) {
        after = change.of(before);
      }
      Files.write(file, after);
      String where = what + " of " + file.getFileName() + ", seed " + SEED;
      KeptHome.Printed shown = home.sheet("--json", "-");
      judge(shown, sheet, "sheet", where);
      judge(home.ledger("--json", "-"), ledger, "ledger", where);
      if (ofJournal) {
        assertNotEquals(0, shown.code(), where + shown);
        assertNotEquals("", shown.err(), where);
      }
      Files.write(home.journal(), journal);
      Files.write(home.witness(), witness);
    }

    /** Another number comes with an exit code and a word, or there is none at all. */
    private void judge(KeptHome.Printed shown, JsonNode due, String what, String where)
        throws IOException {
      boolean same = shown.out().startsWith("{") && numbers(shown).equals(due);
      outcomes.merge(
          what + (same ? " same, " : " other, ") + "code " + shown.code(), 1, Integer::sum);
      if (!same) {
        assertTrue(shown.code() == 4 || shown.code() == 2, where + shown);
        assertNotEquals("", shown.err(), where);
      }
    }
  }

  /** Takes what is said of the journal off, so that numbers and results are left. */
  private static JsonNode numbers(KeptHome.Printed printed) throws IOException {
    JsonNode tree = JSON.readTree(printed.out());
    List<JsonNode> parts = new ArrayList<>(List.of(tree));
    if (tree.has("walks")) {
      tree.get("walks").forEach(parts::add);
    }
    parts.forEach(part -> ((ObjectNode) part).remove(List.of("journal", "told", "warnings")));
    return tree;
  }

  private interface Change {
    byte[] of(byte[] bytes);
  }

  private byte[] bitTurned(byte[] bytes) {
    byte[] turned = bytes.clone();
    turned[random.nextInt(turned.length)] ^= (byte) (1 << random.nextInt(8));
    return turned;
  }

  private byte[] changedAtLength(byte[] bytes) {
    int at = random.nextInt(bytes.length);
    int to = at + 1 + random.nextInt(Math.min(bytes.length - at, 1 + random.nextInt(bytes.length)));
    byte[] piece = Arrays.copyOfRange(bytes, at, to);
    byte[] end = Arrays.copyOfRange(bytes, to, bytes.length);
    return switch (random.nextInt(7)) {
      case 0 -> Arrays.copyOf(bytes, at);
      case 1 -> join(Arrays.copyOf(bytes, at), end);
      case 2 -> join(Arrays.copyOf(bytes, to), piece, end);
      case 3 -> join(Arrays.copyOf(bytes, at), new byte[piece.length], end);
      case 4 -> join(Arrays.copyOf(bytes, at), new byte[bytes.length - at]);
      case 5 -> {
        random.nextBytes(piece);
        yield join(Arrays.copyOf(bytes, at), piece, end);
      }
      default -> lineMoved(bytes);
    };
  }

  /** One line stands where another stood, and may be missing there. */
  private byte[] lineMoved(byte[] bytes) {
    List<byte[]> lines = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        lines.add(Arrays.copyOfRange(bytes, from, i + 1));
        from = i + 1;
      }
    }
    byte[] line = lines.get(random.nextInt(lines.size()));
    if (random.nextBoolean()) {
      lines.remove(line);
    }
    lines.add(random.nextInt(lines.size() + 1), line);
    return join(lines.toArray(byte[][]::new));
  }

  private static byte[] join(byte[]... parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      bytes.writeBytes(part);
    }
    return bytes.toByteArray();
  }

  private void cut(int cuts) throws IOException {
    int seen = 0;
    int unknowable = 0;
    for (List<String> bodies : List.of(FINISHED, OPEN, OLD)) {
      KeptHome home = new KeptHome(folder.resolve("cut" + seen + "-" + unknowable));
      home.keep(bodies);
      byte[] whole = Files.readAllBytes(home.journal());
      boolean old = bodies == OLD;
      if (old) {
        Files.delete(home.witness());
      }
      for (int i = 0; i < cuts; i++) {
        int left = 1 + random.nextInt(bodies.size() - 1);
        home.cutAfter(whole, left);
        String where = "cut after " + left + " of " + bodies.size() + ", seed " + SEED;
        String missing = (bodies.size() - left) + " record";
        String told = old ? "cannot be known" : missing;
        for (KeptHome.Printed shown : List.of(home.sheet(), home.ledger("--json", "-"))) {
          assertEquals(old ? 0 : 4, shown.code(), where + shown);
          String said = (shown.out() + shown.err()).replaceAll("\\s+", " ");
          assertTrue(said.contains(told), where + shown);
        }
        seen += old ? 0 : 1;
        unknowable += old ? 1 : 0;
      }
    }
    System.out.printf(
        "cuts at records, seed %d: %d of walks of the new format, all seen; %d of old walks, all"
            + " told to be unknowable%n",
        SEED, seen, unknowable);
  }
}
