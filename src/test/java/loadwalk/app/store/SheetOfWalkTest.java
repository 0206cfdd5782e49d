package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import loadwalk.cli.SheetCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The sheet printed from journals in a data home: it goes by their bytes and by nothing else. */
class SheetOfWalkTest {
  @TempDir Path folder;

  private Path journal;

  /** What a command came to. */
  private record Printed(int code, String out, String err) {}

  @BeforeEach
  void furnish() throws IOException {
    Path sessions = Files.createDirectories(folder.resolve("sessions"));
    journal = sessions.resolve("one.jsonl");
    try (var shipped = Files.list(Path.of("sessions"))) {
      Path walk = shipped.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
      Files.copy(walk, journal);
    }
  }

  private Printed print(String... walk) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    List<String> words = new ArrayList<>(List.of("--home", folder.toString()));
    words.addAll(List.of(walk));
    int code =
        new CommandLine(new SheetCommand(KeptWalksOnDisk::at))
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(words.toArray(String[]::new));
    return new Printed(code, out.toString(), err.toString());
  }

  private List<String> files() throws IOException {
    try (var files = Files.list(journal.getParent())) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void walk_isPrintedByItsName_orAsTheOneChangedLast_andNothingIsWritten() throws IOException {
    Printed sheet = print();
    assertEquals(0, sheet.code(), sheet.err());
    assertTrue(sheet.out().contains("Power at each load"), sheet.out());
    assertEquals(sheet, print("one"));
    assertEquals(List.of("one.jsonl"), files());
  }

  @Test
  void sheetKeptByAnOlderProgram_isIgnored() throws IOException {
    Printed due = print();
    Files.writeString(journal.resolveSibling(".one.sheet"), "loadwalk-kept-sheet/1 x\nold\n");
    assertEquals(due, print());
    assertEquals(due, print("one"));
    assertEquals(List.of(".one.sheet", "one.jsonl"), files());
  }

  @Test
  void newestWalk_isTheOneChangedLast() throws IOException {
    byte[] whole = Files.readAllBytes(journal);
    Path other = journal.resolveSibling("other.jsonl");
    Files.write(other, Arrays.copyOf(whole, endOfALine(whole)));
    Files.setLastModifiedTime(journal, FileTime.fromMillis(1_000_000));
    Files.setLastModifiedTime(other, FileTime.fromMillis(2_000_000));
    assertEquals(print("other"), print());
    Files.setLastModifiedTime(journal, FileTime.fromMillis(3_000_000));
    assertEquals(print("one"), print());
    assertNotEquals(print("one"), print("other"));
  }

  private static int endOfALine(byte[] whole) {
    int half = whole.length / 2;
    while (whole[half - 1] != '\n') {
      half++;
    }
    return half;
  }

  @Test
  void openWalk_isPrintedAsFarAsItIs() throws IOException {
    byte[] whole = Files.readAllBytes(journal);
    Files.write(journal, Arrays.copyOf(whole, endOfALine(whole)));
    Printed open = print();
    assertEquals(0, open.code());
    assertTrue(open.out().contains("not finished"), open.out());
    Files.write(journal, whole);
    assertNotEquals(open, print());
  }

  @Test
  void damagedJournal_keepsItsCodeAndSentence() throws IOException {
    byte[] sound = Files.readAllBytes(journal);
    sound[sound.length / 2] ^= 1;
    Files.write(journal, sound);
    Printed damaged = print();
    assertEquals(4, damaged.code());
    assertTrue(damaged.err().contains("damaged"), damaged.err());
  }

  @Test
  void tornLastLine_isSaidAndNoFault() throws IOException {
    byte[] sound = Files.readAllBytes(journal);
    Files.write(journal, Arrays.copyOf(sound, sound.length - 5));
    Printed torn = print();
    assertEquals(0, torn.code());
    assertTrue(torn.err().startsWith("The last line of the journal was cut off."), torn.err());
    assertTrue(torn.out().contains("The last line of the journal was cut off."), torn.out());
  }

  @Test
  void folderThatMayNotBeWrittenIn_doesNoHarm() {
    Printed due = print();
    assertTrue(journal.getParent().toFile().setWritable(false));
    try {
      assertEquals(due, print());
    } finally {
      assertTrue(journal.getParent().toFile().setWritable(true));
    }
  }

  @Test
  void whatIsNoWalk_isRefusedInASentence() throws IOException {
    Files.createSymbolicLink(journal.resolveSibling("link.jsonl"), journal);
    for (String name : new String[] {"none", "../one", "", "a b", "link"}) {
      Printed refused = print(name);
      assertEquals(2, refused.code(), name);
      assertEquals("", refused.out(), name);
      assertTrue(refused.err().endsWith("." + System.lineSeparator()), refused.err());
    }
    Files.delete(journal);
    assertEquals(new Printed(2, "", "There are no walks yet." + System.lineSeparator()), print());
  }

  @Test
  void sessionsThatLeadOutByALink_areRefused() throws IOException {
    Path elsewhere = folder.resolveSibling(folder.getFileName() + "-elsewhere");
    Files.move(folder.resolve("sessions"), elsewhere);
    Files.createSymbolicLink(folder.resolve("sessions"), elsewhere);
    assertEquals(2, print("one").code());
  }

  @Test
  void localeAndTimeZone_changeNothing() {
    Printed due = print();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : new String[] {"ar-EG-u-nu-arab", "tr", "de", "th-TH-u-ca-buddhist"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertEquals(due, print(), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
