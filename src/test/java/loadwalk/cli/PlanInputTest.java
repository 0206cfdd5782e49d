package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loadwalk.bench.Tables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own sequences and tables: a link out of the data home is as if nothing were there. */
class PlanInputTest {
  private static final String SEQUENCE =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"mine\",\"title\":\"Mine\","
          + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,"
          + "\"steps\":[{\"do\":\"idle\"}]}";

  @TempDir Path folder;
  private Path home;
  private Path elsewhere;

  @BeforeEach
  void make() throws IOException {
    home = Files.createDirectories(folder.resolve("home"));
    elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    Files.createDirectories(home.resolve("sequences"));
    Files.createDirectories(home.resolve("data"));
    Files.writeString(elsewhere.resolve("mine.json"), SEQUENCE);
  }

  @Test
  void sequence_behindALinkOutOfTheHome_isNotThere() throws IOException {
    Path link = home.resolve("sequences/mine.json");
    Files.createSymbolicLink(link, elsewhere.resolve("mine.json"));
    PlanInput input = new PlanInput(home);
    assertFalse(input.sequence("mine").found().isPresent());
    Files.delete(link);
    Files.copy(elsewhere.resolve("mine.json"), link);
    assertEquals("mine", input.sequence("mine").found().orElseThrow().name());
  }

  @Test
  void table_behindALinkOutOfTheHome_isNotRead() throws IOException {
    String name = Tables.FILE_NAMES.iterator().next();
    Path table = Files.writeString(elsewhere.resolve(name), "no table at all");
    Path link = Files.createSymbolicLink(home.resolve("data").resolve(name), table);
    assertEquals(Tables.stock(), OwnTables.rules(home).tables());
    Files.delete(link);
    Files.copy(table, link);
    assertThrows(BadInput.class, () -> OwnTables.rules(home));
  }
}
