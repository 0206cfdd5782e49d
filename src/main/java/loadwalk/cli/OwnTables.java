package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.bench.Tables;
import loadwalk.plan.Rules;
import loadwalk.text.Sentence;

/** Reads the operator's own data tables, {@code data/*.csv} of the data home. */
public final class OwnTables {
  private static final int LARGEST = 1 << 20;

  private OwnTables() {}

  /**
   * Makes the rules of a data home: its own tables before the stock ones.
   *
   * @throws BadInput with one sentence if a table is wrong
   */
  public static Rules rules(Path home) {
    try {
      return Rules.of(texts(home));
    } catch (IllegalArgumentException wrongTable) {
      throw new BadInput(wrongTable.getMessage());
    }
  }

  private static Map<String, String> texts(Path home) {
    Path folder = home.resolve("data");
    if (!Files.isDirectory(folder)) {
      return Map.of();
    }
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : Tables.FILE_NAMES) {
      Path file = folder.resolve(name);
      if (isOwn(home, file)) {
        texts.put(name, text(name, file));
      } else if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        // Passed over in silence, it would leave the operator with limits that are not his.
        throw new BadInput(
            Sentence.of("data/{} must be a file inside the data home, no link.", name));
      }
    }
    return texts;
  }

  /** Tells whether a file is there and no link leads to it from outside the data home. */
  static boolean isOwn(Path home, Path file) {
    try {
      return Files.isRegularFile(file) && file.toRealPath().startsWith(home.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  private static String text(String name, Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw new BadInput(Sentence.of("{}: the table is larger than 1 MiB.", name));
      }
      return new String(bytes, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new BadInput(Sentence.of("{}: the table cannot be read.", name));
    }
  }
}
