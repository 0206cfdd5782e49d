package loadwalk.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the published check values in src/test/resources/reference. */
final class ReferenceTable {
  private ReferenceTable() {}

  static List<Csv.Row> rows(String name) {
    try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String header = text.substring(0, text.indexOf('\n')).strip();
      return Csv.rows(name, text, List.of(header.split(",")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
