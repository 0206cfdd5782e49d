package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.app.store.Walks.HEAD;
import static loadwalk.app.store.Walks.NAME;
import static loadwalk.app.store.Walks.bodies;
import static loadwalk.app.store.Walks.keep;
import static loadwalk.app.store.Walks.refused;
import static loadwalk.app.store.Walks.watching;
import static loadwalk.app.store.Walks.writing;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.app.FailingDisk;
import loadwalk.journal.FaultKind;
import loadwalk.journal.KeepResult.NotKept;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovered.Damaged;
import loadwalk.journal.Recovered.Damaged.Kind;
import loadwalk.journal.Recovered.Whole;
import loadwalk.journal.StorageFault;
import loadwalk.journal.TornLine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalFolderTest {
  @TempDir Path folder;
  private JournalFolder store;
  private Path journal;

  @BeforeEach
  void openStore() {
    store = new JournalFolder(new DataHome(folder));
    journal = folder.resolve("sessions").resolve(NAME.journalFile());
  }

  private Path inSessions(String file) {
    return folder.resolve("sessions").resolve(file);
  }

  private void makeWalk(String... bodies) throws IOException {
    OpeningOutcome.Writing made = writing(store.create(NAME, HEAD));
    for (String body : bodies) {
      keep(made, body);
    }
    made.walk().close();
  }

  private Process appending() throws IOException {
    return AppendingChild.start(folder, NAME, 1);
  }

  @Test
  void create_thenAppendThenOpen_givesEveryRecord() throws IOException {
    makeWalk("{\"a\":1}", "{\"b\":2}");
    OpeningOutcome.Writing again = writing(store.open(NAME));
    assertEquals(List.of(HEAD, "{\"a\":1}", "{\"b\":2}"), bodies(again.read()));
    assertEquals(Optional.empty(), again.aside());
    assertEquals(Recovered.Ending.KNOWN, again.read().ending());
    keep(again, "{\"c\":3}");
    again.walk().close();
    assertEquals(
        4, store.open(NAME) instanceof OpeningOutcome.Writing w ? w.read().records().size() : 0);
  }

  @Test
  void create_ofANameThatIsThere_isRefusedAndChangesNothing() throws IOException {
    makeWalk("{\"a\":1}");
    byte[] before = Files.readAllBytes(journal);
    assertEquals(
        "There is already a walk named brightmoor-900.", refused(store.create(NAME, HEAD)));
    assertArrayEquals(before, Files.readAllBytes(journal));
    writing(store.open(NAME)).walk().close();
  }

  @Test
  void create_withAFirstBodyOfNoFormat_isAMistakeOfTheCaller() {
    assertThrows(IllegalArgumentException.class, () -> store.create(NAME, "{}"));
    assertFalse(Files.exists(journal));
  }

  @Test
  void open_ofNoSuchWalk_isRefused() {
    assertEquals("There is no walk named brightmoor-900.", refused(store.open(NAME)));
  }

  /** What a killed program wrote may not be on the disk yet, so opening forces it first. */
  @Test
  void open_onADiskThatTakesNothing_watches_asNothingReadIsSure() throws IOException {
    makeWalk("{\"a\":1}");
    FailingDisk disk = new FailingDisk();
    disk.fill();
    OpeningOutcome.Watching watching =
        watching(new JournalFolder(new DataHome(folder), disk::before).open(NAME));
    assertEquals("The disk is full: make room, then try again.", watching.why());
    assertEquals(List.of(HEAD, "{\"a\":1}"), bodies(watching.read()));
  }

  @Test
  void open_whileItIsOpen_isSaidAndWatches_untilItIsClosed() throws IOException {
    OpeningOutcome.Writing first = writing(store.create(NAME, HEAD));
    keep(first, "{\"a\":1}");
    for (int times = 0; times < 2; times++) {
      OpeningOutcome.Watching watching =
          watching(new JournalFolder(new DataHome(folder)).open(NAME));
      assertEquals("Another Loadwalk has this walk open.", watching.why());
      assertEquals(List.of(HEAD, "{\"a\":1}"), bodies(watching.read()));
    }
    assertTrue(store.create(NAME, HEAD).isNameTaken(), "a new walk takes another name");
    keep(first, "{\"b\":2}");
    first.walk().close();
    writing(store.open(NAME)).walk().close();
  }

  @Test
  void open_whileAnotherProcessHoldsTheWalk_watches_untilThatIsKilled() throws Exception {
    Process child = appending();
    try {
      assertEquals('k', child.getInputStream().read(), "it keeps records");
      for (int times = 0; times < 2; times++) {
        OpeningOutcome.Watching watching = watching(store.open(NAME));
        assertEquals("Another Loadwalk has this walk open.", watching.why());
        assertFalse(bodies(watching.read()).isEmpty());
      }
    } finally {
      child.destroyForcibly().waitFor();
    }
    writing(store.open(NAME)).walk().close();
  }

  @Test
  void open_afterTheJournalWasReadHere_isStillHeldAgainstAnotherProcess() throws Exception {
    OpeningOutcome.Writing first = writing(store.create(NAME, HEAD));
    watching(store.open(NAME));
    store.watch(NAME, "");
    String said = new String(appending().getInputStream().readAllBytes(), UTF_8);
    assertTrue(said.startsWith("cannot write: Watching"), said);
    assertTrue(said.contains("Another Loadwalk has this walk open."), said);
    keep(first, "{\"a\":1}");
    first.walk().close();
  }

  @Test
  void open_ofATornJournal_keepsTheTailAsideAndTells() throws IOException {
    makeWalk("{\"a\":1}", "{\"b\":2}");
    byte[] all = Files.readAllBytes(journal);
    byte[] first = TornLine.after(all, 50);
    Files.write(journal, first, StandardOpenOption.APPEND);
    OpeningOutcome.Writing opened = writing(store.open(NAME));
    assertEquals(List.of(HEAD, "{\"a\":1}", "{\"b\":2}"), bodies(opened.read()));
    assertEquals(
        Optional.of(
            "The bytes that are not used are kept aside in sessions/brightmoor-900.torn-1."),
        opened.aside());
    assertArrayEquals(first, Files.readAllBytes(inSessions(NAME.tornFile(1))));
    keep(opened, "{\"c\":3}");
    opened.walk().close();
    byte[] second = TornLine.after(Files.readAllBytes(journal), 10);
    Files.write(journal, second, StandardOpenOption.APPEND);
    OpeningOutcome.Writing again = writing(store.open(NAME));
    assertEquals(List.of(HEAD, "{\"a\":1}", "{\"b\":2}", "{\"c\":3}"), bodies(again.read()));
    assertArrayEquals(second, Files.readAllBytes(inSessions(NAME.tornFile(2))));
    again.walk().close();
  }

  @Test
  void open_ofAJournalWhoseLastRecordsAreCutOff_watchesAndChangesNothing() throws IOException {
    makeWalk("{\"a\":1}", "{\"b\":2}");
    byte[] all = Files.readAllBytes(journal);
    for (int cut = all.length - 1; cut > 0; cut--) {
      byte[] shorter = Arrays.copyOf(all, cut);
      Files.write(journal, shorter);
      OpeningOutcome opening = store.open(NAME);
      assertTrue(opening.journal().orElseThrow().isDamaged(), "cut at " + cut);
      assertTrue(watching(opening).why().startsWith("The journal is damaged: "), opening::toString);
      assertArrayEquals(shorter, Files.readAllBytes(journal), "cut at " + cut);
    }
  }

  @Test
  void open_ofADamagedJournal_watchesAndChangesNothing() throws IOException {
    makeWalk("{\"a\":1}", "{\"b\":2}");
    byte[] bytes = Files.readAllBytes(journal);
    bytes[bytes.length / 2] ^= 1;
    Files.write(journal, bytes);
    OpeningOutcome.Watching watching = watching(store.open(NAME));
    assertInstanceOf(Damaged.class, watching.read());
    assertTrue(watching.why().startsWith("The journal is damaged"), watching.why());
    assertArrayEquals(bytes, Files.readAllBytes(journal));
  }

  @Test
  void open_ofANewerJournalOrNone_isRefusedAndChangesNothing() throws IOException {
    makeWalk();
    Files.writeString(journal, "something else\n");
    assertEquals("This file is not a Loadwalk journal.", refused(store.open(NAME)));
    assertEquals("something else\n", Files.readString(journal));
  }

  @Test
  void open_ofAnEmptyFile_watches() throws IOException {
    makeWalk();
    Files.write(journal, new byte[0]);
    assertEquals(
        Kind.MISSING, assertInstanceOf(Damaged.class, watching(store.open(NAME)).read()).kind());
    Files.delete(inSessions(NAME.endFile()));
    assertInstanceOf(Whole.class, watching(store.open(NAME)).read());
  }

  @Test
  void append_afterTheFolderWasRemoved_isNotKept() throws IOException {
    OpeningOutcome.Writing opened = writing(store.create(NAME, HEAD));
    Path away = Files.move(folder.resolve("sessions"), folder.resolve("away"));
    NotKept refused = assertInstanceOf(NotKept.class, opened.walk().append("{\"a\":1}"));
    assertEquals(FaultKind.GONE, refused.kind());
    Files.move(away, folder.resolve("sessions"));
    keep(opened, "{\"a\":1}");
    assertEquals(List.of(HEAD, "{\"a\":1}"), bodies(watching(store.watch(NAME, "")).read()));
  }

  @Test
  void open_throughALinkOutOfTheHome_isRefused() throws IOException {
    makeWalk();
    Path out = Files.move(folder.resolve("sessions"), folder.resolve("out"));
    Path root = Files.createDirectories(folder.resolve("inner"));
    Files.createSymbolicLink(root.resolve("sessions"), out);
    JournalFolder linked = new JournalFolder(new DataHome(root));
    assertTrue(refused(linked.open(NAME)).contains("leads out of the data home"));
    assertTrue(refused(linked.watch(NAME, "")).contains("leads out of the data home"));
    assertTrue(refused(linked.create(new WalkName("new"), HEAD)).contains("is a link"));
    assertEquals(
        "sessions is a link that leads out of the data home.",
        assertThrows(StorageFault.class, linked::list).getMessage());
  }

  @Test
  void open_ofAJournalThatIsALink_isRefused() throws IOException {
    makeWalk();
    Files.move(journal, folder.resolve("elsewhere"));
    Files.createSymbolicLink(journal, folder.resolve("elsewhere"));
    assertEquals(
        "brightmoor-900.jsonl is a link, folder or pipe, not a file.", refused(store.open(NAME)));
    assertEquals(
        new JournalFolder.Listing(
            List.of(), List.of("brightmoor-900.jsonl is left out: it is a link.")),
        store.list());
  }

  @Test
  void list_givesTheLastChangedFirst_andNamesWhatItLeavesOut() throws IOException {
    assertEquals(new JournalFolder.Listing(List.of(), List.of()), store.list());
    for (String name : new String[] {"old", "new", "middle"}) {
      writing(store.create(new WalkName(name), HEAD)).walk().close();
    }
    for (String name : new String[] {"old", "middle", "new"}) {
      FileTime changed =
          FileTime.from(
              Instant.parse("2026-01-01T00:00:00Z")
                  .plusSeconds(List.of("old", "middle", "new").indexOf(name)));
      Files.setLastModifiedTime(inSessions(name + ".jsonl"), changed);
    }
    Files.createFile(inSessions(" bad name.jsonl"));
    Files.createFile(inSessions("old.torn-1"));
    Files.createDirectory(inSessions("folder.jsonl"));
    assertEquals(
        List.of("new", "middle", "old"),
        store.list().walks().stream().map(w -> w.name().text()).toList());
    assertEquals(Files.size(inSessions("old.jsonl")), store.list().walks().get(2).bytes());
    assertEquals(
        List.of(
            " bad name.jsonl is left out: no walk can have that name.",
            "folder.jsonl is left out: it is no plain file."),
        store.list().leftOut());
  }
}
