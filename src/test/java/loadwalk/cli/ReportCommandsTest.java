package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import loadwalk.Needs;
import loadwalk.journal.Recovered;
import loadwalk.plan.Rules;
import loadwalk.plan.StockRules;
import loadwalk.report.Journals;
import loadwalk.report.ledger.LedgerIndex;
import loadwalk.report.page.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ReportCommandsTest {
  @TempDir Path folder;

  private final FakeKeptWalks kept = new FakeKeptWalks();
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private static Recovered damaged(String why) {
    return new Recovered.Damaged(List.of(), 0, 0, List.of(), Recovered.Damaged.Kind.GAP, why);
  }

  @Test
  void sheet_withoutOutputs_printsText() {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    assertEquals(ExitCode.DONE, run(new SheetCommand(home -> kept), "one"));
    assertTrue(out.toString().startsWith("Halvorsen & Pike HP 250\n"), out.toString());
    assertTrue(out.toString().contains("Power at each load"));
  }

  @Test
  void sheet_everyOutput_isWritten() throws IOException {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    String[] arguments = {
      "--html", file("s.html"), "--markdown", file("s.md"), "--csv", file("s.csv"), "--json", "-"
    };
    assertEquals(ExitCode.DONE, run(new SheetCommand(home -> kept), arguments));
    assertTrue(Files.readString(folder.resolve("s.html")).startsWith("<!doctype html>"));
    assertTrue(Files.readString(folder.resolve("s.md")).startsWith("# Halvorsen"));
    assertTrue(Files.readString(folder.resolve("s.csv")).startsWith("section,step,"));
    assertTrue(out.toString().startsWith("{\n  \"format\" : \"loadwalk-sheet/1\""));
  }

  @Test
  void sheet_ofNoSuchWalk_isBadInput() {
    assertEquals(ExitCode.BAD_INPUT, run(new SheetCommand(home -> kept), "none"));
    assertEquals("There is no walk named none.\n", err.toString());
  }

  @Test
  void sheet_ofDamagedJournal_isWrittenAndSaidSo() {
    List<String> bodies = Journals.practice(1, "stereo-only");
    kept.walks.put("one", bodies.subList(0, bodies.size() / 2));
    kept.read = damaged("The journal is damaged: it lacks a record.");
    assertEquals(ExitCode.DAMAGED, run(new SheetCommand(home -> kept), "one"));
    String told = "WARNING: The journal is damaged: it lacks a record.\n";
    assertTrue(out.toString().contains(told), out.toString());
    assertTrue(out.toString().contains("As far as its records can be read, this walk is at"));
    assertEquals("The journal is damaged: it lacks a record.\n", err.toString());
  }

  @Test
  void ledger_foldsOnceAndRemembers() {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    kept.walks.put("two", Journals.practice(2, "stereo-only"));
    assertEquals(ExitCode.DONE, run(new LedgerCommand(home -> kept)));
    String first = out.toString();
    assertEquals(2, kept.reads.get());
    out.getBuffer().setLength(0);
    assertEquals(ExitCode.DONE, run(new LedgerCommand(home -> kept)));
    assertEquals(2, kept.reads.get());
    assertEquals(first, out.toString());
  }

  @Test
  void ledger_ofOneWalkNamedTwice_isBadInput() {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    String name = "one";
    for (String twice : List.of(name + "," + name, name + ", " + name)) {
      err.getBuffer().setLength(0);
      assertEquals(ExitCode.BAD_INPUT, run(new LedgerCommand(home -> kept), "--compare", twice));
      assertEquals(name + " is named twice; compare a walk with others.\n", err.toString());
    }
    assertEquals("", out.toString());
  }

  @Test
  void ledger_unknownOrder_isBadInput() {
    assertEquals(ExitCode.BAD_INPUT, run(new LedgerCommand(home -> kept), "--sort", "loudness"));
    assertTrue(err.toString().startsWith("--sort takes newest, name, power,"), err.toString());
  }

  @Test
  void ledger_unreadableWalk_isToldAndTheRestShown() {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    kept.walks.put("odd", List.of("{\"at\":\"2026-03-14T09:30:00Z\",\"facts\":[]}"));
    assertEquals(ExitCode.DAMAGED, run(new LedgerCommand(home -> kept)));
    assertTrue(out.toString().contains("Halvorsen & Pike"));
    assertEquals("odd: the journal opens no walk\n", err.toString());
  }

  @Test
  void ledger_damagedWalk_isToldEachTime_andShownAsFarAsItIsSound() {
    List<String> bodies = Journals.practice(1, "stereo-only");
    kept.walks.put("one", bodies.subList(0, bodies.size() / 2));
    kept.read = damaged("The journal is damaged: it lacks a record.");
    for (int time = 0; time < 2; time++) {
      err.getBuffer().setLength(0);
      assertEquals(ExitCode.DAMAGED, run(new LedgerCommand(home -> kept)));
      assertTrue(out.toString().replaceAll("\\s+", " ").contains("damaged)"), out.toString());
      assertEquals("one: The journal is damaged: it lacks a record.\n", err.toString());
    }
  }

  @Test
  void output_intoAFolderThatIsNotThere_isToldByItsName() {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    String target = folder.resolve("none").resolve("s.csv").toString();
    assertEquals(ExitCode.BAD_INPUT, run(new SheetCommand(home -> kept), "--csv", target));
    assertEquals(
        target + " cannot be written: there is no folder " + folder.resolve("none") + ".\n",
        err.toString());
  }

  @Test
  void output_neverTakesThePlaceOfAWalk() throws IOException {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    Path journal = folder.resolve("one.jsonl");
    Files.writeString(journal, "{\"seq\":1,\"crc\":\"0\"}\n");
    assertEquals(
        ExitCode.BAD_INPUT, run(new SheetCommand(home -> kept), "--json", journal.toString()));
    assertEquals(journal + " cannot be written: that file holds a walk.\n", err.toString());
    assertEquals("{\"seq\":1,\"crc\":\"0\"}\n", Files.readString(journal));
  }

  @Test
  void output_isReadableAsAnyNewFile_andFollowsALink() throws IOException {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    Path plain = Files.createFile(folder.resolve("plain"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), plain);
    assertEquals(
        ExitCode.DONE,
        run(new SheetCommand(home -> kept), "--csv", link.toString(), "--json", file("new")));
    assertTrue(Files.isSymbolicLink(link));
    assertTrue(Files.readString(plain).startsWith("section,step,"));
    Path other = Files.createFile(folder.resolve("other"));
    assertEquals(
        Files.getPosixFilePermissions(other), Files.getPosixFilePermissions(folder.resolve("new")));
    try (var left = Files.list(folder)) {
      assertEquals(4, left.count(), "no draft is left");
    }
  }

  @Test
  void output_toADevice_isWrittenToIt_neverInItsPlace() throws Exception {
    kept.walks.put("one", Journals.practice(1, "stereo-only"));
    Path pipe = folder.resolve("pipe");
    Needs.tool("mkfifo");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    CompletableFuture<String> read =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return Files.readString(pipe);
              } catch (IOException broken) {
                throw new UncheckedIOException(broken);
              }
            });
    assertEquals(ExitCode.DONE, run(new SheetCommand(home -> kept), "--csv", pipe.toString()));
    assertTrue(read.get().startsWith("section,step,"));
    assertFalse(Files.isRegularFile(pipe));
  }

  @Test
  void ledgerReading_stopped_keepsWhatItRead() throws IOException {
    List<String> bodies = Journals.practice(1, "stereo-only");
    FakeKeptWalks many = new FakeKeptWalks();
    for (String name : List.of("one", "two", "three")) {
      many.walks.put(name, bodies);
    }
    AtomicInteger asked = new AtomicInteger();
    assertEquals(1, LedgerReading.of(many, s -> {}, () -> asked.incrementAndGet() > 1).folded());
    assertEquals(2, LedgerReading.of(many, s -> {}, () -> false).folded());
    assertEquals(0, LedgerReading.of(many, s -> {}, () -> false).folded());
  }

  /**
   * Entries, complaints, progress and index come in the order of the list, whoever is done first.
   */
  @Test
  void ledgerReading_keepsTheOrder_andTellsHowFarItIs() throws IOException {
    List<String> bodies = Journals.practice(1, "stereo-only");
    FakeKeptWalks many = new FakeKeptWalks();
    for (int i = 0; i < 450; i++) {
      many.walks.put("walk-" + i, i % 100 == 7 ? List.of("{}") : bodies);
    }
    List<String> told = new ArrayList<>();
    LedgerReading.Read read = LedgerReading.of(many, told::add, () -> false);
    List<String> sound = new ArrayList<>(many.walks.keySet());
    sound.removeIf(name -> name.endsWith("07") || name.equals("walk-7"));
    assertEquals(
        sound,
        LedgerIndex.read(many.ledgerIndex(), many.maker()).kept().values().stream()
            .map(known -> known.entry().walk())
            .toList());
    assertEquals(
        List.of("walk-7", "walk-107", "walk-207", "walk-307", "walk-407"),
        read.unreadable().stream().map(line -> line.split(":")[0]).toList());
    assertEquals(List.of("Read 202 of 450 walks.", "Read 404 of 450 walks."), told);
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private int run(Object command, String... arguments) {
    return new CommandLine(command)
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(arguments);
  }

  private static final class FakeKeptWalks implements KeptWalks {
    final Map<String, List<String>> walks = new LinkedHashMap<>();
    Recovered read = new Recovered.Whole(List.of(), 0, Recovered.Ending.KNOWN);
    final AtomicInteger reads = new AtomicInteger();
    private byte[] index = {};

    @Override
    public Rules rules() {
      return StockRules.RULES;
    }

    @Override
    public Listing list() {
      return new Listing(List.copyOf(walks.keySet()), List.of());
    }

    @Override
    public String maker() {
      return "this program";
    }

    /** Each of the walks was opened by itself: the name is in the bytes. */
    @Override
    public Unread bytes(String walk) {
      List<String> bodies = new ArrayList<>(walks.get(walk));
      bodies.set(0, bodies.get(0).replace(Journals.NAME, walk));
      return new Unread() {
        @Override
        public byte[] bytes() {
          return String.join("\n", bodies).getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public String end() {
          return "";
        }

        @Override
        public Journal read() {
          reads.incrementAndGet();
          return new Journal(bodies, read);
        }
      };
    }

    @Override
    public String find(String typed) {
      return typed;
    }

    @Override
    public Journal read(String name) throws IOException {
      reads.incrementAndGet();
      if (!walks.containsKey(name)) {
        throw new IOException("There is no walk named " + name + ".");
      }
      return new Journal(walks.get(name), read);
    }

    @Override
    public Optional<Picture> photo(String path, String sha256) {
      return Optional.empty();
    }

    @Override
    public byte[] ledgerIndex() {
      return index.clone();
    }

    @Override
    public void keepLedgerIndex(byte[] bytes) {
      index = bytes.clone();
    }
  }
}
