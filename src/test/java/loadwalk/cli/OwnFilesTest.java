package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loadwalk.app.KeptSequencesOnDisk;
import loadwalk.bench.Tables;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own sequences and tables: a link out of the data home is as if nothing were there. */
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
  void sequence_behindALinkOutOfTheHome_isNotThere() throws IOException {
    Path link = home.resolve("sequences/mine.json");
    Files.createSymbolicLink(link, elsewhere.resolve("mine.json"));
    KeptSequences keptSequences = new KeptSequencesOnDisk();
    assertEquals(Optional.empty(), keptSequences.named(Optional.of(home), "mine"));
    assertThrows(BadInput.class, () -> keptSequences.sequence(Optional.of(home), "mine"));
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

  @Test
  void table_behindALinkOutOfTheHome_isRefusedUnread() throws IOException {
    String name = Tables.FILE_NAMES.iterator().next();
    Path table = Files.writeString(elsewhere.resolve(name), "no table at all");
    Path link = Files.createSymbolicLink(home.resolve("data").resolve(name), table);
    String told = assertThrows(BadInput.class, () -> OwnTables.rules(home)).getMessage();
    assertEquals("data/" + name + " must be a file inside the data home, no link.", told);
    Files.delete(link);
    assertEquals(Tables.stock(), OwnTables.rules(home).tables());
    Files.copy(table, link);
    assertThrows(BadInput.class, () -> OwnTables.rules(home));
  }
}
