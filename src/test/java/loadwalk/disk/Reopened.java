package loadwalk.disk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.JournalFolder;
import loadwalk.app.store.OpeningOutcome;
import loadwalk.app.store.WalkFolder;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.KeepResult;
import loadwalk.journal.Recovered;
import loadwalk.text.Sha256;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;

/** The disk that a power cut left, opened by the program's own recovery. */
final class Reopened {
  private static final String NEXT = "{\"next\":true}";

  private final JournalFolder store;
  private final Path home;
  private Optional<String> walk = Optional.empty();
  private String where = "";

  private Reopened(Path disk) {
    this.home = disk.resolve("home");
    this.store = new JournalFolder(new DataHome(home));
  }

  static Reopened from(Platter.Image image, Disks disks) throws IOException {
    disks.lay(image);
    return new Reopened(disks.folder());
  }

  /** Nothing called kept is lost, nothing is invented, and the walk goes on. */
  Reopened holds(JournalLines lines, Tally tally, String at) throws IOException {
    where = at;
    List<JournalFolder.Listed> walks = store.list().walks();
    if (walks.isEmpty()) {
      assertEquals(List.of(), lines.kept(), () -> where + ": the journal is gone");
      tally.image(false, false, 0, 0);
      return this;
    }
    walk = Optional.of(walks.get(0).name().text());
    Recovered read = open(walks.get(0));
    List<String> found = lines(read);
    int kept = lines.kept().size();
    assertTrue(found.size() >= kept, () -> where + ": " + found.size() + " of " + kept);
    assertEquals(lines.kept(), found.subList(0, kept), where);
    for (int i = kept; i < found.size(); i++) {
      assertTrue(lines.mayStand(i, found.get(i)), where + ": invented " + found.get(i));
    }
    photosAreThere(read);
    tally.image(true, read.torn().isPresent(), kept, found.size());
    return this;
  }

  private Recovered open(JournalFolder.Listed listed) throws IOException {
    OpeningOutcome.Writing opened = writing(listed);
    WalkFolder.state(opened.read());
    KeepResult kept = opened.walk().append(NEXT);
    assertTrue(kept.failure().isEmpty(), () -> where + ": " + kept);
    opened.walk().close();
    OpeningOutcome.Writing again = writing(listed);
    again.walk().close();
    int records = again.read().records().size();
    assertEquals(opened.read().records().size() + 1, records, where);
    assertEquals(NEXT, again.read().records().get(records - 1).body(), where);
    return opened.read();
  }

  private OpeningOutcome.Writing writing(JournalFolder.Listed listed) {
    OpeningOutcome opening = store.open(listed.name());
    if (opening instanceof OpeningOutcome.Writing writing) {
      return writing;
    }
    throw new AssertionError(where + ": " + opening);
  }

  private static List<String> lines(Recovered read) {
    return read.records().stream().map(record -> new String(record.line(), UTF_8).strip()).toList();
  }

  private void photosAreThere(Recovered read) throws IOException {
    for (JournalRecord record : read.records()) {
      for (var stamped : FactText.read(record.body())) {
        if (stamped.fact() instanceof Fact.Attached photo) {
          Path file = home.resolve(photo.path());
          assertTrue(Files.exists(file), () -> where + ": no photo");
          assertEquals(photo.sha256(), Sha256.of(Files.readAllBytes(file)), where);
        }
      }
    }
  }

  /** Torn bytes at the end of the journal are put aside before they are cut off. */
  Reopened keepsTornBytes(String torn) throws IOException {
    if (torn.isEmpty()) {
      return this;
    }
    assertTrue(
        torn.equals(aside(1)) || aside(2).startsWith(torn), () -> where + ": torn bytes are lost");
    return this;
  }

  /** A first piece that a power cut left in part stays as it is; the whole is the next. */
  private String aside(int number) throws IOException {
    Path file = home.resolve("sessions/" + walk.orElseThrow() + ".torn-" + number);
    return Files.exists(file) ? Files.readString(file) : "";
  }
}
