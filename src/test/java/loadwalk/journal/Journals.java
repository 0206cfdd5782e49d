package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Small journals for tests. */
final class Journals {
  static final String HEAD = "{\"format\":\"loadwalk-journal/2\",\"sequence\":\"full-walk\"}";
  static final String OLD_HEAD = HEAD.replace("/2", "/1");

  private Journals() {}

  /** Returns a first body and then {@code count - 1} others, some of them not ASCII. */
  static List<String> bodies(int count) {
    List<String> bodies = new ArrayList<>();
    bodies.add(HEAD);
    for (int i = 2; i <= count; i++) {
      bodies.add("{\"typed\":\"" + i + ".4 V\",\"note\":\"Ω µ " + "x".repeat(i % 7) + "\"}");
    }
    return bodies.subList(0, count);
  }

  /** Returns the same in the old format, whose records do not name the one before. */
  static List<String> oldBodies(int count) {
    List<String> bodies = new ArrayList<>(bodies(count));
    bodies.set(0, OLD_HEAD);
    return bodies;
  }

  static byte[] of(List<String> bodies) {
    return join(lines(bodies).toArray(byte[][]::new));
  }

  /** Returns each line of the journal of some bodies. */
  static List<byte[]> lines(List<String> bodies) {
    List<byte[]> lines = new ArrayList<>();
    String after = "";
    for (String body : bodies) {
      byte[] line = Framing.line(lines.size() + 1L, after, body);
      lines.add(line);
      after = bodies.get(0).contains("/1\"") ? "" : record(line).sum();
    }
    return lines;
  }

  static JournalRecord record(byte[] line) {
    return Framing.read(Arrays.copyOf(line, line.length - 1)).orElseThrow();
  }

  /** Returns the witness of the end of a journal. */
  static Witness witness(List<String> bodies) {
    return Witness.of(Recovery.read(of(bodies)).records());
  }

  static byte[] join(byte[]... parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      bytes.writeBytes(part);
    }
    return bytes.toByteArray();
  }

  static byte[] text(String text) {
    return text.getBytes(UTF_8);
  }

  static List<String> bodiesOf(Recovered recovered) {
    return recovered.bodies();
  }
}
