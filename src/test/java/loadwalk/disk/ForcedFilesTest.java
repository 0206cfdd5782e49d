package loadwalk.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.Needs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every file that must last is forced, and its folder, before the program goes on: all calls. */
class ForcedFilesTest {
  @TempDir Path folder;

  private Tracer tracer;

  @BeforeEach
  void needTracer() throws IOException {
    Needs.tool("strace");
    tracer = new Tracer(folder.toRealPath());
  }

  /** Drafts have the number of the process in their name. */
  private static List<String> plain(Tracer.Run run) {
    return run.words().stream()
        .map(line -> line.replaceAll("\\.\\d+(-\\d+)?\\.(tmp|new)", ".draft"))
        .toList();
  }

  private static List<String> replaced(String in, String name) {
    String draft = (in.isEmpty() ? "" : in + "/") + "." + name + ".draft";
    String file = (in.isEmpty() ? "" : in + "/") + name;
    return List.of(
        "make " + draft,
        "write " + draft,
        "force " + draft,
        "rename " + draft + " to " + file,
        "force " + in);
  }

  @Test
  void newWalk_forcesItsFoldersAndEveryRecord_beforeItSaysAnything() throws Exception {
    Tracer.Run run = RecordedWalks.whole(tracer);
    String journal = "home/sessions/" + RecordedWalks.walk(tracer) + ".jsonl";
    int records = Files.readAllLines(RecordedWalks.journal(tracer)).size();
    List<String> begin =
        new ArrayList<>(
            List.of(
                "make folder home",
                "force ",
                "make folder home/sessions",
                "force home",
                "make home/sessions/." + RecordedWalks.walk(tracer) + ".lock"));
    begin.addAll(replaced("home/sessions", RecordedWalks.walk(tracer) + ".jsonl"));
    String end = "home/sessions/." + RecordedWalks.walk(tracer) + ".end";
    begin.addAll(List.of("write " + journal, "cut " + journal, "force " + journal));
    begin.addAll(List.of("make " + end, "write " + end));
    List<String> words = plain(run);
    assertEquals(begin, words.subList(0, begin.size()), run::toString);
    int kept = 1;
    List<String> due = List.of();
    for (String line : words.subList(begin.size(), words.size() - 1)) {
      boolean record = line.equals("write " + journal);
      kept += record ? 1 : 0;
      if (due.isEmpty() && !line.equals("say")) {
        assertTrue(record, run::toString);
        due = List.of("force " + journal, "write " + end);
      } else if (!due.isEmpty()) {
        assertEquals(due.get(0), line, run::toString);
        due = due.subList(1, due.size());
      }
    }
    assertEquals("force " + end, words.get(words.size() - 1), run::toString);
    assertEquals(records, kept);
    long forces = words.stream().filter(line -> line.startsWith("force ")).count();
    assertEquals(records + 5, forces);
    System.out.printf("forces of a new walk: %d for %d records, in order%n", forces, records);
  }

  @Test
  void tornWalkTakenUp_forcesWhatIsPutAside_thenTheCut_thenPhotoAndRecords() throws Exception {
    RecordedWalks.leaveTorn(tracer);
    String walk = RecordedWalks.walk(tracer);
    String sessions = "home/sessions/";
    String journal = sessions + walk + ".jsonl";
    String torn = sessions + walk + ".torn-1";
    String photo = sessions + walk + ".photos/amp.png";
    Tracer.Run run = RecordedWalks.takenUp(tracer);
    List<String> said = plain(run).stream().filter(line -> !line.equals("say")).toList();
    List<String> calls = new ArrayList<>(said);
    String end = sessions + "." + walk + ".end";
    List<String> recorded = List.of("write " + journal, "force " + journal, "write " + end);
    List<String> begin =
        List.of(
            "make " + torn,
            "write " + torn,
            "force " + torn,
            "force home/sessions",
            "cut " + journal,
            "force " + journal,
            "write " + end);
    assertEquals(begin, calls.subList(0, begin.size()), run::toString);
    List<String> attached =
        List.of(
            "make folder " + sessions + walk + ".photos",
            "force home/sessions",
            "make " + photo,
            "write " + photo,
            "force " + photo,
            "force " + sessions + walk + ".photos");
    int at = calls.indexOf(attached.get(0));
    assertEquals(attached, calls.subList(at, at + attached.size()), run::toString);
    assertEquals(recorded, calls.subList(at + 6, at + 9), run::toString);
    // The second time it is there already; who wrote it may have been killed before it was forced.
    assertEquals(attached.subList(4, 6), calls.subList(at + 9, at + 11), run::toString);
    assertEquals(recorded, calls.subList(at + 11, at + 14), run::toString);
    assertEquals("force " + end, calls.get(calls.size() - 1), run::toString);
    long records = calls.stream().filter(("write " + journal)::equals).count();
    assertEquals(begin.size() + attached.size() + 2 + 3 * records + 1, calls.size(), run::toString);
  }

  @Test
  void filesThatReplaceOthers_areForcedBefore_andTheirFolderAfter() throws Exception {
    RecordedWalks.whole(tracer);
    Files.createDirectories(folder.resolve("out"));
    Files.writeString(folder.resolve("out/a.html"), "what was there before");
    String out = folder.toRealPath().resolve("out").toString();
    Tracer.Run sheet =
        tracer.run("", "sheet", RecordedWalks.walk(tracer), "--html", out + "/a.html");
    assertEquals(replaced("out", "a.html"), made(sheet), sheet::toString);
    Tracer.Run ledger = tracer.run("", "ledger", "--csv", out + "/b.csv");
    List<String> both = new ArrayList<>(replaced("home/sessions", ".ledger-index"));
    both.addAll(replaced("out", "b.csv"));
    assertEquals(both, made(ledger), ledger::toString);
    Tracer.Run tone = tracer.run("", "tone", "--seconds", "1", out + "/t.wav");
    assertEquals(replaced("out", "t.wav"), made(tone), tone::toString);
  }

  private static List<String> made(Tracer.Run run) {
    assertEquals(0, run.code(), run::toString);
    List<String> made = new ArrayList<>();
    for (String line : plain(run)) {
      boolean again = !made.isEmpty() && made.get(made.size() - 1).equals(line);
      if (!line.equals("say") && !again) {
        made.add(line);
      }
    }
    assertTrue(made.stream().noneMatch(line -> line.startsWith("remove")), run::toString);
    return made;
  }
}
