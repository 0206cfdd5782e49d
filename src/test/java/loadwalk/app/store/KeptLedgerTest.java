package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.cli.ExitCode;
import loadwalk.cli.LedgerCommand;
import loadwalk.cli.ReplayCommand;
import loadwalk.cli.SheetCommand;
import loadwalk.plan.Rules;
import loadwalk.plan.StockRules;
import loadwalk.report.Journals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The ledger and the sheets of journals on a disk: what is shown is what the files hold now. */
class KeptLedgerTest {
  private static final String NAME = Journals.NAME;

  @TempDir Path folder;
  private final StringWriter err = new StringWriter();

  /** Keeps a walk in a home and returns its journal. */
  private Path keep(String home, String name, List<String> bodies) throws IOException {
    JournalFolder store = new JournalFolder(new DataHome(folder.resolve(home)));
    OpeningOutcome.Writing opened = Walks.writing(store.create(new WalkName(name), bodies.get(0)));
    bodies.subList(1, bodies.size()).forEach(body -> Walks.keep(opened, body));
    opened.walk().close();
    return folder.resolve(home).resolve("sessions").resolve(name + ".jsonl");
  }

  private String run(int code, Object command, String... arguments) {
    StringWriter out = new StringWriter();
    err.getBuffer().setLength(0);
    int ended =
        new CommandLine(command)
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(arguments);
    assertEquals(code, ended, () -> out + err.toString());
    return out.toString();
  }

  private String ledger(int code, String home, String... more) {
    List<String> arguments = new ArrayList<>(List.of(more));
    arguments.addAll(List.of("--home", folder.resolve(home).toString()));
    return run(code, new LedgerCommand(KeptWalksOnDisk::at), arguments.toArray(String[]::new));
  }

  private String sheet(int code, String home, String walk) {
    return run(
        code,
        new SheetCommand(KeptWalksOnDisk::at),
        walk,
        "--json",
        "-",
        "--home",
        folder.resolve(home).toString());
  }

  private static List<String> bodies() {
    return Journals.practice(1, "stereo-only");
  }

  /** The same walk, in which a volt was read that is another, and written as long. */
  private static List<String> otherVolts() {
    List<String> bodies = new ArrayList<>(bodies());
    int at = 0;
    while (!bodies.get(at).matches(".*\"fact\":\"entered\".*\"reading\":\"outputVolts\".*")) {
      at++;
    }
    String changed = bodies.get(at).replaceAll("1(\\d[.,]\\d+)(?= V\"|[\",])", "2$1");
    assertNotEquals(bodies.get(at), changed, "no volts were changed");
    bodies.set(at, changed);
    return bodies;
  }

  @Test
  void journalChangedInPlace_withItsSizeAndTime_isFoldedAnew() throws IOException {
    Path journal = keep("home", NAME, bodies());
    byte[] other = Files.readAllBytes(keep("other", NAME, otherVolts()));
    String before = ledger(ExitCode.DONE, "home", "--json");
    FileTime time = Files.getLastModifiedTime(journal);
    assertEquals(Files.size(journal), other.length);
    Files.write(journal, other);
    Files.setLastModifiedTime(journal, time);
    Path end = Path.of("sessions", "." + NAME + ".end");
    Files.copy(
        folder.resolve("other").resolve(end),
        folder.resolve("home").resolve(end),
        StandardCopyOption.REPLACE_EXISTING);
    String after = ledger(ExitCode.DONE, "home", "--json");
    assertNotEquals(before, after);
    assertEquals(ledger(ExitCode.DONE, "other", "--json"), after);
  }

  @Test
  void endOfAKnownJournal_toldOtherwiseNow_isToldInTheLedger() throws IOException {
    Path journal = keep("home", NAME, bodies());
    ledger(ExitCode.DONE, "home");
    Path longer = keep("other", NAME, longer());
    Files.copy(
        longer.resolveSibling("." + NAME + ".end"),
        journal.resolveSibling("." + NAME + ".end"),
        StandardCopyOption.REPLACE_EXISTING);
    ledger(ExitCode.DAMAGED, "home");
    assertTrue(err.toString().contains("1 record is missing at its end"), err.toString());
  }

  private static List<String> longer() {
    List<String> bodies = new ArrayList<>(bodies());
    bodies.add(bodies.get(bodies.size() - 1));
    return bodies;
  }

  @Test
  void bitTurnedInAKnownJournal_isTold_withItsSizeAndTime() throws IOException {
    Path journal = keep("home", NAME, bodies());
    ledger(ExitCode.DONE, "home");
    FileTime time = Files.getLastModifiedTime(journal);
    byte[] bytes = Files.readAllBytes(journal);
    bytes[bytes.length / 2] ^= 1;
    Files.write(journal, bytes);
    Files.setLastModifiedTime(journal, time);
    ledger(ExitCode.DAMAGED, "home");
    assertTrue(err.toString().startsWith(NAME + ": The journal is damaged"), err.toString());
  }

  /** Whoever made it elsewhere cannot have it believed here: it is of another folder. */
  @Test
  void indexFromElsewhere_ofOtherTables_orOfAnotherHome_isNotBelieved() throws IOException {
    keep("home", NAME, bodies());
    keep("other", NAME, bodies());
    String limits = "key,value,unit,source,how\nlead-celsius,%s,degC,x,y\n";
    Rules own = Rules.of(Map.of("limits.csv", limits.formatted("70")));
    Rules changed = Rules.of(Map.of("limits.csv", limits.formatted("71")));
    List<String> makers = new ArrayList<>();
    for (String home : List.of("home", "other")) {
      DataHome there = new DataHome(folder.resolve(home));
      makers.add(new KeptWalksOnDisk(there, StockRules.RULES).maker());
      makers.add(new KeptWalksOnDisk(there, own).maker());
      makers.add(new KeptWalksOnDisk(there, changed).maker());
    }
    assertEquals(6, makers.stream().distinct().count(), makers::toString);
  }

  @Test
  void renamedJournal_isFoundByTheNameItIsShownUnder_andByItsOwn() throws IOException {
    Path journal = keep("home", NAME, bodies());
    String sheet = sheet(ExitCode.DONE, "home", NAME);
    Files.move(journal, journal.resolveSibling("van-left.jsonl"));
    String ledger = ledger(ExitCode.DONE, "home", "--csv");
    assertTrue(ledger.contains("\nvan-left,"), ledger);
    String path = journal.resolveSibling("van-left.jsonl").toString();
    for (String named : List.of("van-left", "van", NAME, "2026-03-14", path, "van-left.jsonl")) {
      assertEquals(sheet, sheet(ExitCode.DONE, "home", named), named);
    }
    String replayed =
        run(
            ExitCode.DONE,
            new ReplayCommand(KeptWalksOnDisk::at),
            "van",
            "--home",
            folder.resolve("home").toString());
    assertEquals("van: nothing differs\n", replayed);
  }

  @Test
  void journalAnywhere_isReadByItsPath_thoughItsNameIsNoneOfAWalk() throws IOException {
    Path journal = keep("home", NAME, bodies());
    String sheet = sheet(ExitCode.DONE, "home", NAME);
    Path copy = Files.copy(journal, folder.resolve("walk (copy).jsonl"));
    assertEquals(sheet, sheet(ExitCode.DONE, "home", copy.toString()));
    Path link = Files.createSymbolicLink(folder.resolve("way.jsonl"), journal);
    assertEquals(sheet, sheet(ExitCode.DONE, "home", link.toString()));
    sheet(ExitCode.BAD_INPUT, "home", folder.resolve("none.jsonl").toString());
    assertEquals("none.jsonl cannot be read: it is not there.\n", err.toString());
  }

  @Test
  void copies_countOnce_andAreComparedAsOne() throws IOException {
    Path journal = keep("home", NAME, bodies());
    Files.copy(journal, journal.resolveSibling("safe.jsonl"));
    String ledger = ledger(ExitCode.DONE, "home");
    assertTrue(ledger.contains("\n1 walk\n"), ledger);
    assertTrue(ledger.contains("safe is a copy of " + NAME + "; they count as one walk."), ledger);
    ledger(ExitCode.DONE, "home", "--csv");
    assertEquals("safe is a copy of " + NAME + "; they count as one walk.\n", err.toString());
    ledger(ExitCode.BAD_INPUT, "home", "--compare", "safe," + NAME);
    assertEquals(NAME + " is named twice; compare a walk with others.\n", err.toString());
  }

  @Test
  void copyWalkedFurther_takesThePlaceOfTheOther() throws IOException {
    List<String> bodies = bodies();
    Path journal = keep("home", NAME, bodies.subList(0, bodies.size() - 3));
    Path whole = keep("other", NAME, bodies);
    Files.copy(whole, journal.resolveSibling("later.jsonl"));
    for (String time : List.of("folded", "from the index")) {
      String ledger = ledger(ExitCode.DONE, "home", "--json");
      String note =
          NAME
              + " is a copy of later up to record "
              + (bodies.size() - 3)
              + "; later goes on and is the one that counts.";
      assertTrue(ledger.contains(note), time + ledger);
      assertEquals(2, ledger.split("\"amplifier\" :", -1).length, time + ledger);
    }
  }

  @Test
  void linkAndUnusableName_areNamedAsLeftOut() throws IOException {
    Path journal = keep("home", NAME, bodies());
    Path out = Files.copy(journal, folder.resolve("out.jsonl"));
    Files.createSymbolicLink(journal.resolveSibling("way.jsonl"), out);
    Files.copy(journal, journal.resolveSibling("walk (copy).jsonl"));
    String ledger = ledger(ExitCode.DONE, "home").replaceAll("\\s+", " ");
    assertTrue(ledger.contains("way.jsonl is left out: it is a link."), ledger);
    assertTrue(
        ledger.contains("walk (copy).jsonl is left out: no walk can have that name."), ledger);
  }

  @Test
  void sessionsThatIsNoFolder_isNoEmptyLedger() throws IOException {
    Path home = Files.createDirectories(folder.resolve("home"));
    Files.createFile(home.resolve("sessions"));
    ledger(ExitCode.BAD_INPUT, "home");
    assertEquals("sessions is not a folder, and must be one.\n", err.toString());
    sheet(ExitCode.BAD_INPUT, "home", NAME);
    assertEquals("sessions is not a folder, and must be one.\n", err.toString());
    Files.delete(home.resolve("sessions"));
    Files.createSymbolicLink(home.resolve("sessions"), home.resolve("unplugged"));
    ledger(ExitCode.BAD_INPUT, "home");
    assertEquals("sessions is a link that leads nowhere.\n", err.toString());
    assertEquals(Optional.empty(), new DataHome(home).inside("sessions").inside());
  }
}
