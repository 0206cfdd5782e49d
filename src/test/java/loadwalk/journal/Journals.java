package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/** Small journals for tests. */
final class Journals {
  static final String HEAD = "{\"format\":\"loadwalk-journal/1\",\"sequence\":\"full-walk\"}";

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

  static byte[] of(List<String> bodies) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (int i = 0; i < bodies.size(); i++) {
      bytes.writeBytes(Framing.line(i + 1L, bodies.get(i)));
    }
    return bytes.toByteArray();
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
    return recovered.records().stream().map(JournalRecord::body).toList();
  }
}
