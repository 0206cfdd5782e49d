package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts kept beside the tests, to be read and compared; {@code -Dsnapshots.update=true} takes them
 * anew.
 */
public final class Snapshots {
  private static final boolean UPDATE = Boolean.getBoolean("snapshots.update");
  private static final Path TAKEN = Path.of("src", "test", "resources", "snapshots");

  private Snapshots() {}

  /** Checks a text against the one kept under a name. */
  public static void holds(String name, String text) throws IOException {
    Path file = TAKEN.resolve(name + ".txt");
    if (UPDATE) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
      return;
    }
    assertEquals(
        kept(name), text, name + " changed; look, then take it with -Dsnapshots.update=true");
  }

  private static String kept(String name) throws IOException {
    try (InputStream in = Snapshots.class.getResourceAsStream("/snapshots/" + name + ".txt")) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
