package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** The journal of a kept walk, or the file that says where it ends, changed while nobody looks. */
final class Spoiled {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int OF_EACH = 60;

  private Spoiled() {}

  /** Changes the bytes of a file; the length of the piece is drawn. */
  private interface Change {
    byte[] of(byte[] bytes, int at, int length);
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (int i = 0; i < OF_EACH; i++) {
      for (boolean journal : List.of(true, false)) {
        all.add(changed(learned, journal, "a bit turned", random, Spoiled::turned));
        all.add(changed(learned, journal, "zeros written", random, Spoiled::zeros));
        all.add(changed(learned, journal, "bytes taken out", random, Spoiled::without));
        all.add(changed(learned, journal, "bytes doubled", random, Spoiled::doubled));
      }
    }
    for (int left = 1; left < learned.records(); left++) {
      all.add(cut(learned, left, true));
      all.add(cut(learned, left, false));
    }
    return all;
  }

  private static byte[] turned(byte[] bytes, int at, int length) {
    byte[] turned = bytes.clone();
    turned[at] ^= (byte) (1 << length % 8);
    return turned;
  }

  private static byte[] zeros(byte[] bytes, int at, int length) {
    byte[] zeros = bytes.clone();
    Arrays.fill(zeros, at, at + length, (byte) 0);
    return zeros;
  }

  private static byte[] without(byte[] bytes, int at, int length) {
    byte[] without = Arrays.copyOf(bytes, bytes.length - length);
    System.arraycopy(bytes, at + length, without, at, bytes.length - at - length);
    return without;
  }

  private static byte[] doubled(byte[] bytes, int at, int length) {
    byte[] doubled = Arrays.copyOf(bytes, bytes.length + length);
    System.arraycopy(bytes, at, doubled, at + length, bytes.length - at);
    return doubled;
  }

  private static Fault changed(
      Learned learned, boolean journal, String what, Random random, Change change) {
    double place = random.nextDouble();
    double reach = random.nextDouble();
    String name = (journal ? "journal: " : "its end: ") + what + " at " + place;
    return new Fault(
        name,
        folder -> {
          Path home = kept(learned, folder);
          JsonNode due = loads(learned, home);
          Path file = journal ? Journal.only(home).file() : end(home);
          byte[] before = Files.readAllBytes(file);
          int at = (int) (place * before.length);
          byte[] after = change.of(before, at, 1 + (int) (reach * (before.length - at - 1)));
          Files.write(file, after);
          Ran sheet = sheet(learned, home).isPlain();
          boolean same =
              sheet.out().startsWith("{") && JSON.readTree(sheet.out()).get("loads").equals(due);
          assertTrue(same || sheet.code() == 2 || sheet.code() == 4, sheet::said);
          if (journal && !Arrays.equals(before, after)) {
            assertNotEquals(0, sheet.code(), sheet::said);
            byte[] left = Files.readAllBytes(file);
            learned.program().run("", TinyWalk.resume(home)).isPlain();
            assertArrayEquals(left, Files.readAllBytes(file), "it was written on");
          }
        });
  }

  /** With the file that says where a journal ends a cut is seen; without it, it may be one. */
  private static Fault cut(Learned learned, int left, boolean witnessed) {
    return new Fault(
        "journal cut after record " + left + (witnessed ? "" : ", its end not told"),
        folder -> {
          Path home = kept(learned, folder);
          Path journal = Journal.only(home).file();
          List<String> lines = Files.readAllLines(journal);
          Files.writeString(journal, String.join("\n", lines.subList(0, left)) + "\n");
          if (!witnessed) {
            Files.delete(end(home));
          }
          String told = witnessed ? "missing at its end" : "cannot be known";
          String word = witnessed ? "damaged" : "end-unknown";
          Ran sheet = sheet(learned, home).ends(witnessed ? 4 : 0).says(told);
          assertEquals(word, JSON.readTree(sheet.out()).get("journal").asText());
          learned
              .program()
              .run("", "ledger", "--json", "-", "--home", home.toString())
              .ends(witnessed ? 4 : 0)
              .says("\"" + word + "\"");
        });
  }

  private static Path kept(Learned learned, Path folder) throws IOException, InterruptedException {
    Path home = TinyWalk.home(folder);
    learned.program().run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
    return home;
  }

  private static Path end(Path home) throws IOException {
    String journal = Journal.only(home).file().getFileName().toString();
    return home.resolve("sessions").resolve("." + journal.replace(".jsonl", ".end"));
  }

  private static Ran sheet(Learned learned, Path home) throws IOException, InterruptedException {
    return learned.program().run("", "sheet", "--json", "-", "--home", home.toString());
  }

  private static JsonNode loads(Learned learned, Path home)
      throws IOException, InterruptedException {
    return JSON.readTree(sheet(learned, home).ends(0).out()).get("loads");
  }
}
