package loadwalk;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.StringJoiner;

/**
 * Texts kept beside the tests, to be read and compared; {@code -Dsnapshots.update=true} takes them
 * anew.
 */
public final class KeptText {
  /** Tells whether this run takes them anew. */
  public static final boolean UPDATE = Boolean.getBoolean("snapshots.update");

  private static final Path RESOURCES = Path.of("src", "test", "resources");
  private static final int AROUND = 2;

  private KeptText() {}

  /** Returns the place of a kept text, by its names below the resources of the tests. */
  public static Path place(String... names) {
    return RESOURCES.resolve(Path.of("", names));
  }

  /** Compares a text with the one kept there; of the first lines that differ, both are shown. */
  public static void same(Path file, String text) {
    try {
      if (UPDATE) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        return;
      }
      String kept = Files.exists(file) ? Files.readString(file) : "";
      if (!kept.equals(text)) {
        Path now = Path.of("target").resolve(RESOURCES.relativize(file));
        Files.createDirectories(now.getParent());
        Files.writeString(now, text);
        fail(difference(file, kept.lines().toList(), now, text.lines().toList()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String difference(Path file, List<String> kept, Path now, List<String> lines) {
    int at = 0;
    while (at < kept.size() && at < lines.size() && kept.get(at).equals(lines.get(at))) {
      at++;
    }
    StringJoiner out = new StringJoiner("\n");
    out.add(file + " and " + now + " differ from line " + (at + 1) + ":");
    lines.subList(Math.max(0, at - AROUND), at).forEach(line -> out.add("  " + line));
    kept.subList(at, Math.min(kept.size(), at + AROUND)).forEach(line -> out.add("- " + line));
    lines.subList(at, Math.min(lines.size(), at + AROUND)).forEach(line -> out.add("+ " + line));
    return out.add("Look, then take it with -Dsnapshots.update=true.").toString();
  }
}
