package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.Needs;
import loadwalk.app.KeptSequencesOnDisk;
import loadwalk.bench.Tables;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own sequences and tables: what has the name of one and cannot be read is never passed over. */
class OwnFilesTest {
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
  void sequence_behindALinkOutOfTheHome_isRefused() throws IOException {
    Path link = home.resolve("sequences/mine.json");
    Files.createSymbolicLink(link, elsewhere.resolve("mine.json"));
    KeptSequences keptSequences = new KeptSequencesOnDisk();
    assertEquals("sequences/mine.json is a link that leads out of the data home.", toldOf("mine"));
    Files.delete(link);
    Files.copy(elsewhere.resolve("mine.json"), link);
    assertEquals(
        "mine", keptSequences.sequence(Optional.of(home), "mine").found().orElseThrow().name());
  }

  @Test
  void sequence_isFoundByNameBeforeItsFile_andByItsFileWhereNoneHasTheName() throws IOException {
    KeptSequences keptSequences = new KeptSequencesOnDisk();
    String file = elsewhere.resolve("mine.json").toString();
    assertEquals(
        "mine", keptSequences.sequence(Optional.of(home), file).found().orElseThrow().name());
    Path own = home.resolve("sequences/full-walk.json");
    Files.writeString(own, SEQUENCE.replace("\"mine\"", "\"full-walk\""));
    Read<Sequence> found = keptSequences.sequence(Optional.of(home), "full-walk");
    assertEquals("Mine", found.found().orElseThrow().title());
  }

  private String toldOf(String sequence) {
    Read<Sequence> read =
        new KeptSequencesOnDisk().named(Optional.of(home), sequence).orElseThrow();
    assertEquals(Optional.empty(), read.found(), "another one was taken in its place");
    return read.faults().get(0).sentence();
  }

  /** Each has the name of a stock sequence, which is not what the operator wrote. */
  @Test
  void whatHasTheNameOfAStockSequenceAndCannotBeRead_isToldWithItsPlace() throws Exception {
    Path own = home.resolve("sequences/full-walk.json");
    Files.createDirectory(own);
    String noFile = " is a folder, a pipe or a device; it must be a plain file.";
    assertEquals("sequences/full-walk.json" + noFile, toldOf("full-walk"));
    Files.delete(own);
    Needs.tool("mkfifo");
    assertEquals(0, new ProcessBuilder("mkfifo", own.toString()).start().waitFor());
    assertEquals("sequences/full-walk.json" + noFile, toldOf("full-walk"));
    Files.delete(own);
    Files.createSymbolicLink(own, home.resolve("gone.json"));
    assertEquals("sequences/full-walk.json is a link that leads nowhere.", toldOf("full-walk"));
    Files.delete(own);
    Files.write(own, new byte[1 << 20]);
    assertNotEquals(
        "sequences/full-walk.json is larger than 1 MiB and was not read.", toldOf("full-walk"));
    Files.write(own, new byte[(1 << 20) + 1]);
    assertEquals(
        "sequences/full-walk.json is larger than 1 MiB and was not read.", toldOf("full-walk"));
    Files.delete(own);
    Files.delete(home.resolve("sequences"));
    Files.createFile(home.resolve("sequences"));
    assertEquals("sequences is not a folder, and must be one.", toldOf("full-walk"));
    Files.delete(home.resolve("sequences"));
    Files.createSymbolicLink(home.resolve("sequences"), elsewhere);
    assertEquals("sequences is a link that leads out of the data home.", toldOf("full-walk"));
  }

  /** A link that stays in the home is followed, as is one that the home itself lies behind. */
  @Test
  void linksThatStayInTheHome_areFollowed() throws IOException {
    Files.copy(elsewhere.resolve("mine.json"), home.resolve("kept.json"));
    Files.createSymbolicLink(home.resolve("sequences/mine.json"), home.resolve("kept.json"));
    Path way = Files.createSymbolicLink(folder.resolve("way"), home);
    for (Path there : List.of(home, way)) {
      Read<Sequence> read =
          new KeptSequencesOnDisk().named(Optional.of(there), "mine").orElseThrow();
      assertEquals("mine", read.found().orElseThrow().name());
    }
  }

  @Test
  void table_behindALinkOutOfTheHome_isRefusedUnread() throws IOException {
    String name = Tables.FILE_NAMES.iterator().next();
    Path table = Files.writeString(elsewhere.resolve(name), "no table at all");
    Path link = Files.createSymbolicLink(home.resolve("data").resolve(name), table);
    String told = assertThrows(BadInput.class, () -> OwnTables.rules(home)).getMessage();
    assertEquals("data/" + name + " is a link that leads out of the data home.", told);
    Files.delete(link);
    assertEquals(Tables.stock(), OwnTables.rules(home).tables());
    Files.copy(table, link);
    assertThrows(BadInput.class, () -> OwnTables.rules(home));
    Files.delete(link);
    Files.createDirectory(link);
    told = assertThrows(BadInput.class, () -> OwnTables.rules(home)).getMessage();
    assertEquals(
        "data/" + name + " is a folder, a pipe or a device; it must be a plain file.", told);
    Files.delete(link);
    Files.delete(home.resolve("data"));
    Files.createFile(home.resolve("data"));
    told = assertThrows(BadInput.class, () -> OwnTables.rules(home)).getMessage();
    assertEquals("data is not a folder, and must be one.", told);
  }
}
