package loadwalk.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32C;

/**
 * A journal as its written form says it is to be read.
 *
 * @param file where it is
 * @param facts the facts of every sound record
 * @param rest what follows the last sound record
 */
record Journal(Path file, List<JsonNode> facts, String rest) {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern LINE =
      Pattern.compile(
          "\\{\"seq\":(\\d+)(?:,\"after\":\"([0-9a-f]{8})\")?,\"crc\":\"([0-9a-f]{8})\","
              + "\"body\":(.*)\\}");

  /** Returns the journals of a data home, in order of name. */
  static List<Path> in(Path home) throws IOException {
    Path sessions = home.resolve("sessions");
    if (!Files.isDirectory(sessions)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(sessions)) {
      return files.filter(file -> file.toString().endsWith(".jsonl")).sorted().toList();
    }
  }

  /** Reads the one journal of a data home. */
  static Journal only(Path home) throws IOException {
    List<Path> all = in(home);
    assertEquals(1, all.size(), all.toString());
    return read(all.get(0));
  }

  static Journal read(Path file) throws IOException {
    String text = Files.readString(file);
    List<JsonNode> facts = new ArrayList<>();
    int from = 0;
    String before = null;
    for (int n = 1; ; n++) {
      int end = text.indexOf('\n', from);
      Matcher line = LINE.matcher(end < 0 ? "" : text.substring(from, end));
      if (!line.matches() || !isSound(line, n, before)) {
        return new Journal(file, facts, text.substring(from));
      }
      before = line.group(3);
      JSON.readTree(line.group(4)).get("facts").forEach(facts::add);
      from = end + 1;
    }
  }

  /** Tells whether a record has the number and the sum that are due, and names the one before. */
  private static boolean isSound(Matcher line, int number, String before) {
    String after = line.group(2);
    CRC32C crc = new CRC32C();
    crc.update(
        (line.group(1) + (after == null ? "" : ":" + after) + ":" + line.group(4)).getBytes(UTF_8));
    return line.group(1).equals(String.valueOf(number))
        && Objects.equals(after, before)
        && line.group(3).equals(String.format("%08x", crc.getValue()));
  }

  /** Returns how many records a file holds, sound or not; none where it is not there. */
  static int count(Path file) {
    try {
      return (int) Files.readString(file).chars().filter(c -> c == '\n').count();
    } catch (IOException notYet) {
      return 0;
    }
  }

  /** Holds that nothing follows the records. */
  Journal isWhole() {
    assertEquals("", rest, file + " holds more than sound records");
    return this;
  }

  /** Holds that every reading which the program called kept is there, once and as typed. */
  Journal holdsWhatWasCalledKept(String said) {
    List<String> entered =
        facts.stream()
            .filter(fact -> fact.get("fact").asText().equals("entered"))
            .map(fact -> fact.get("step").asText() + " " + fact.get("reading").asText())
            .toList();
    Matcher kept = Pattern.compile("(?m)^kept (\\S+ \\S+) .*\\n").matcher(said);
    while (kept.find()) {
      String reading = kept.group(1);
      long times = entered.stream().filter(reading::equals).count();
      assertEquals(1, times, reading + " was called kept and is there so often");
    }
    return this;
  }

  /** Holds that it begins with the facts of an earlier look at it. */
  Journal goesOnFrom(Journal earlier) {
    assertTrue(facts.size() >= earlier.facts().size(), "facts are lost");
    assertEquals(earlier.facts(), facts.subList(0, earlier.facts().size()), "facts were altered");
    return this;
  }
}
