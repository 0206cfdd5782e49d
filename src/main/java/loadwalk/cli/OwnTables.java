package loadwalk.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.bench.Tables;
import loadwalk.journal.StorageFault;
import loadwalk.plan.Rules;

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
    Map<String, String> texts = new LinkedHashMap<>();
    // Few homes have tables; the first screen waits for nothing of them where there are none.
    if (!Files.exists(home.resolve("data"), LinkOption.NOFOLLOW_LINKS)) {
      return texts;
    }
    try {
      for (String name : Tables.FILE_NAMES) {
        // Passed over in silence, a table would leave the operator with limits that are not his.
        HomeFiles.read(home, "data/" + name, LARGEST)
            .ifPresent(bytes -> texts.put(name, new String(bytes, StandardCharsets.UTF_8)));
      }
    } catch (StorageFault unreadable) {
      throw new BadInput(unreadable.getMessage());
    }
    return texts;
  }
}
