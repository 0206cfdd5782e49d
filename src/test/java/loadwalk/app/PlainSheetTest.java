package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import loadwalk.cli.SheetCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet in its plain form, printed from what was kept and anew. */
class PlainSheetTest {
  private static final Optional<String> MAKER = Optional.of("this build");
  private static final byte[] MARK = "from what was kept\n".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  private Path journal;
  private Path kept;

  /** What a command came to. */
  private record Printed(int code, String out, String err) {}

  @BeforeEach
  void furnish() throws IOException {
    Path sessions = Files.createDirectories(folder.resolve("sessions"));
    journal = sessions.resolve("one.jsonl");
    kept = sessions.resolve(".one.sheet");
    try (var shipped = Files.list(Path.of("sessions"))) {
      Path walk = shipped.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
      Files.copy(walk, journal);
    }
  }

  private Printed print(Optional<String> maker, Optional<String> walk) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    int code =
        new PlainSheet(new DataHome(folder), maker).print(walk, out, new PrintWriter(err, true));
    return new Printed(code, out.toString(StandardCharsets.UTF_8), err.toString());
  }

  private Printed print() {
    return print(MAKER, Optional.empty());
  }

  /** What the command prints that keeps nothing. */
  private Printed anew(Optional<String> walk) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        SheetCommand.print(
            new SessionShelf(new DataHome(folder)),
            walk,
            new PrintWriter(out),
            new PrintWriter(err));
    return new Printed(code, out.toString(), err.toString());
  }

  /** Puts a text in the place of the sheet of the journal as it is now. */
  private void mark() throws IOException {
    new KeptSheet(kept, MAKER.orElseThrow()).keep(Files.readAllBytes(journal), MARK);
  }

  private boolean isMarked(Printed printed) {
    return printed.out().equals(new String(MARK, StandardCharsets.UTF_8));
  }

  @Test
  void firstTime_printsAsTheCommandDoes_andKeepsIt() {
    Printed due = anew(Optional.empty());
    assertEquals(due, print());
    assertTrue(due.out().contains("What it makes"), due.out());
    assertTrue(Files.exists(kept));
    assertEquals(due, print());
    assertEquals(due, print(MAKER, Optional.of("one")));
  }

  @Test
  void secondTime_printsWhatWasKept() throws IOException {
    mark();
    assertTrue(isMarked(print()));
    assertTrue(isMarked(print(MAKER, Optional.of("one"))));
    assertEquals(0, print().code());
  }

  @Test
  void anotherBuild_orNone_makesItAnew() throws IOException {
    mark();
    Printed due = anew(Optional.empty());
    assertEquals(due, print(Optional.empty(), Optional.empty()));
    assertTrue(isMarked(print()));
    assertEquals(due, print(Optional.of("next build"), Optional.empty()));
    assertEquals(due, print());
  }

  @Test
  void journalChangedByOneByte_isPrintedOrRefusedAsItIsNow() throws IOException {
    byte[] sound = Files.readAllBytes(journal);
    for (int at : new int[] {0, 40, sound.length / 2, sound.length - 2, sound.length - 1}) {
      Files.write(journal, sound);
      mark();
      byte[] changed = sound.clone();
      changed[at] ^= 1;
      Files.write(journal, changed);
      Printed due = anew(Optional.of("one"));
      assertEquals(due, print(MAKER, Optional.of("one")), "byte " + at);
      assertEquals(due, print(MAKER, Optional.of("one")), "byte " + at + ", again");
    }
  }

  @Test
  void damagedJournal_keepsItsCodeAndSentence_andNothingIsKept() throws IOException {
    byte[] sound = Files.readAllBytes(journal);
    sound[sound.length / 2] ^= 1;
    Files.write(journal, sound);
    Printed damaged = print();
    assertEquals(4, damaged.code());
    assertTrue(damaged.err().contains("damaged"), damaged.err());
    assertFalse(Files.exists(kept));
    assertEquals(damaged, print());
  }

  @Test
  void tornLastLine_isPrintedWithoutAComplaint_bothTimes() throws IOException {
    byte[] sound = Files.readAllBytes(journal);
    Files.write(journal, Arrays.copyOf(sound, sound.length - 5));
    Printed due = anew(Optional.empty());
    assertEquals(0, due.code());
    assertEquals(due, print());
    assertEquals(due, print());
  }

  @Test
  void walkThatGrows_isPrintedAsFarAsItIs() throws IOException {
    byte[] whole = Files.readAllBytes(journal);
    int half = whole.length / 2;
    while (whole[half - 1] != '\n') {
      half++;
    }
    Files.write(journal, Arrays.copyOf(whole, half));
    Files.writeString(journal.resolveSibling("one.lock"), "held");
    Printed open = print();
    assertTrue(open.out().contains("not finished"), open.out());
    assertEquals(open, print());
    Files.write(journal, Arrays.copyOfRange(whole, half, whole.length), StandardOpenOption.APPEND);
    assertEquals(anew(Optional.empty()), print());
    assertFalse(print().out().equals(open.out()));
  }

  @Test
  void spoiledCopy_isMadeAnew() throws IOException {
    Printed due = print();
    byte[] sound = Files.readAllBytes(kept);
    for (int at : new int[] {0, 30, 150, sound.length - 1}) {
      byte[] spoiled = sound.clone();
      spoiled[at] ^= 1;
      Files.write(kept, spoiled);
      assertEquals(due, print(), "byte " + at);
      assertTrue(Arrays.equals(sound, Files.readAllBytes(kept)), "mended, byte " + at);
    }
  }

  @Test
  void copyThatCannotBeKept_doesNoHarm() throws IOException {
    Files.createDirectories(kept.resolve("in the way"));
    Printed due = anew(Optional.empty());
    assertEquals(due, print());
    assertEquals(due, print());
    try (var files = Files.list(journal.getParent())) {
      assertEquals(2, files.count(), "a draft was left behind");
    }
  }

  @Test
  void folderThatMayNotBeWrittenIn_doesNoHarm() {
    assertTrue(journal.getParent().toFile().setWritable(false));
    try {
      assertEquals(anew(Optional.empty()), print());
    } finally {
      assertTrue(journal.getParent().toFile().setWritable(true));
    }
  }

  @Test
  void newestWalk_isTheOneChangedLast() throws IOException {
    Path other = Files.copy(journal, journal.resolveSibling("other.jsonl"));
    mark();
    Files.setLastModifiedTime(journal, FileTime.fromMillis(1_000_000));
    Files.setLastModifiedTime(other, FileTime.fromMillis(2_000_000));
    assertFalse(isMarked(print()));
    Files.setLastModifiedTime(journal, FileTime.fromMillis(3_000_000));
    assertTrue(isMarked(print()));
  }

  @Test
  void whatIsRefused_isRefusedAsBefore() throws IOException {
    for (String name : new String[] {"none", "../one", "", "a b"}) {
      Printed refused = print(MAKER, Optional.of(name));
      assertEquals(2, refused.code(), name);
      assertEquals(anew(Optional.of(name)), refused);
    }
    Files.createSymbolicLink(journal.resolveSibling("link.jsonl"), journal);
    Printed link = print(MAKER, Optional.of("link"));
    assertEquals(2, link.code());
    assertEquals(anew(Optional.of("link")), link);
    Files.delete(journal);
    assertEquals(anew(Optional.empty()), print());
  }

  @Test
  void sessionsThatLeadOutByALink_areRefusedThoughASheetIsKeptThere() throws IOException {
    mark();
    Path elsewhere = folder.resolveSibling(folder.getFileName() + "-elsewhere");
    Files.move(folder.resolve("sessions"), elsewhere);
    Files.createSymbolicLink(folder.resolve("sessions"), elsewhere);
    assertEquals(anew(Optional.of("one")), print(MAKER, Optional.of("one")));
    assertEquals(2, print(MAKER, Optional.of("one")).code());
  }

  @Test
  void localeAndTimeZone_changeNothing() {
    Printed due = anew(Optional.empty());
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : new String[] {"ar-EG-u-nu-arab", "tr", "de", "th-TH-u-ca-buddhist"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertEquals(due, anew(Optional.empty()), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
