package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loadwalk.journal.StorageFault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A walk is named by its name, the start of it if only one fits, or the path of its journal. */
class WalkFinderTest {
  @TempDir Path folder;
  private JournalFolder store;

  @BeforeEach
  void makeWalks() throws IOException {
    store = new JournalFolder(new DataHome(folder));
    for (String name : new String[] {"brightmoor", "brightmoor-2", "verrin"}) {
      Walks.writing(store.create(new WalkName(name), Walks.HEAD)).walk().close();
    }
  }

  private String found(String typed) throws StorageFault {
    return new WalkFinder(store).find(typed).text();
  }

  private String refused(String typed) {
    return assertThrows(StorageFault.class, () -> found(typed), typed).getMessage();
  }

  @Test
  void name_isTakenWhole_beforeItCountsAsTheStartOfOthers() throws StorageFault {
    assertEquals("brightmoor", found("brightmoor"));
    assertEquals("brightmoor-2", found("brightmoor-2"));
    assertEquals("brightmoor", found("brightmoor.jsonl"));
  }

  @Test
  void start_isEnoughWhereOneFits() throws StorageFault {
    assertEquals("verrin", found("v"));
    assertEquals("brightmoor-2", found("brightmoor-"));
    assertEquals(
        "2 walks are named bright or begin so: brightmoor, brightmoor-2. Name one of them.",
        refused("bright").replace("brightmoor-2, brightmoor.", "brightmoor, brightmoor-2."));
  }

  @Test
  void startThatManyHave_namesFiveOfThem() {
    for (int i = 0; i < 6; i++) {
      store.create(new WalkName("z-" + i), Walks.HEAD);
    }
    String told = refused("z");
    assertEquals("6 walks are named z or begin so: ", told.substring(0, told.indexOf("z-")));
    assertEquals(5, told.split("z-", -1).length - 1, told);
    assertTrue(told.endsWith(", …. Name one of them."), told);
    assertTrue(!refused("b").contains("…"), refused("b"));
  }

  @Test
  void nameOfNoWalk_isToldAsIs() {
    assertEquals("There is no walk named tessaly.", refused("tessaly"));
    assertEquals(
        "The name of a walk is made of letters a to z, digits, dots, hyphens and underscores,"
            + " and starts with a letter or digit.",
        refused("no walk"));
  }

  @Test
  void path_leadsToTheWalk_throughLinksAndRoundabout() throws IOException {
    Path journal = folder.resolve("sessions/verrin.jsonl");
    assertEquals("verrin", found(journal.toString()));
    assertEquals("verrin", found(folder.resolve("sessions/../sessions/verrin.jsonl").toString()));
    Path link = Files.createSymbolicLink(folder.resolve("way"), journal);
    assertEquals("verrin", found(link.toString()));
  }

  @Test
  void pathThatIsNoneOfThisHome_saysHowItIsReached() throws IOException {
    Path out = Files.copy(folder.resolve("sessions/verrin.jsonl"), folder.resolve("out.jsonl"));
    assertEquals(
        out
            + " is no journal in "
            + folder.resolve("sessions")
            + ". For a walk kept elsewhere name its data home with --home.",
        refused(out.toString()));
    Path torn = Files.copy(out, folder.resolve("sessions/verrin.torn-1"));
    assertTrue(
        refused(torn.toString()).startsWith(torn + " is no journal in "), refused(torn.toString()));
    assertEquals(
        "none.jsonl cannot be read: it is not there.",
        refused(folder.resolve("sessions/none.jsonl").toString()));
  }
}
