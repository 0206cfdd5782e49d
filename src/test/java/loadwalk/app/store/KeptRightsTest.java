package loadwalk.app.store;

import static loadwalk.app.store.Walks.HEAD;
import static loadwalk.app.store.Walks.NAME;
import static loadwalk.app.store.Walks.writing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import loadwalk.Needs;
import loadwalk.plan.Rules;
import loadwalk.report.Photos;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept names owners and serial numbers: it is for who measured alone. */
class KeptRightsTest {
  private static final String WALK = NAME.text();

  @TempDir Path folder;

  private Map<String, String> rights(Path root) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.filter(p -> !p.equals(root)).toList()) {
        found.put(
            root.relativize(path).toString(),
            PosixFilePermissions.toString(Files.getPosixFilePermissions(path)));
      }
    }
    return found;
  }

  @Test
  void everythingThatIsKept_isForItsOwnerAlone() throws IOException {
    Needs.that(Ownership.isKnown(), "files have no POSIX owners here");
    DataHome home = new DataHome(folder.resolve("a").resolve("home"));
    JournalFolder store = new JournalFolder(home);
    writing(store.create(NAME, HEAD)).walk().close();
    Path journal = home.sessions().resolve(NAME.journalFile());
    Files.writeString(journal, "{\"seq\":2,\"cr", StandardOpenOption.APPEND);
    writing(store.open(NAME)).walk().close();
    new KeptWalksOnDisk(home, Rules.of(Map.of())).keepLedgerIndex(new byte[1]);
    Path photo = Files.write(folder.resolve("bench.png"), Photos.png());
    assertInstanceOf(
        Event.PhotoKept.class,
        new PhotoBox(home).keep(new Effect.KeepPhoto(WALK, photo.toString(), "bench")));
    Map<String, String> expected = new TreeMap<>();
    for (String made : List.of("a", "a/home", "a/home/sessions")) {
      expected.put(made, "rwx------");
    }
    expected.put("a/home/sessions/" + WALK + ".photos", "rwx------");
    for (String kept :
        List.of(
            NAME.journalFile(),
            NAME.lockFile(),
            NAME.endFile(),
            NAME.tornFile(1),
            KeptWalksOnDisk.INDEX,
            WALK + ".photos/bench.png")) {
      expected.put("a/home/sessions/" + kept, "rw-------");
    }
    Files.delete(photo);
    assertEquals(expected, rights(folder));
  }
}
