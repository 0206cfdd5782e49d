package loadwalk.experiment;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Reads a text kept among the tests. */
final class TestText {
  private TestText() {}

  static String of(String name) throws IOException {
    try (InputStream file = TestText.class.getResourceAsStream(name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
