package loadwalk.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.shipped.Shipped;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plain mode in a process of its own: lines in, lines out, exit codes. */
class PlainModeScenarioIT {
  private static final String[] LOADS = {"4", "2", "1"};

  @TempDir Path folder;

  private record Ran(int code, String out, String err) {}

  private Ran run(String locale, String input, String... arguments) throws Exception {
    Process child = Shipped.start(locale, folder, arguments);
    ByteArrayOutputStream complaints = new ByteArrayOutputStream();
    Thread errors = new Thread(() -> copy(child, complaints));
    errors.start();
    try (OutputStream in = child.getOutputStream()) {
      in.write(input.getBytes(UTF_8));
    } catch (IOException alreadyGone) {
      assertFalse(child.isAlive() && input.isEmpty(), "the child closed its input");
    }
    String out = new String(child.getInputStream().readAllBytes(), UTF_8);
    errors.join();
    return new Ran(child.waitFor(), out, complaints.toString(UTF_8));
  }

  private static void copy(Process child, OutputStream to) {
    try {
      child.getErrorStream().transferTo(to);
    } catch (IOException gone) {
      throw new IllegalStateException(gone);
    }
  }

  @Test
  void wholeWalk_typedAsLines_endsWithASheetAndCodeZero() throws Exception {
    List<String> lines = new ArrayList<>(List.of("begin", "early it is a test", "begin", "fill"));
    lines.add("done");
    for (String ohms : LOADS) {
      lines.addAll(List.of("lift it is a test", "arm " + ohms, "fill", "done"));
    }
    lines.addAll(List.of("begin", "fill", "done", "lift test it is", "arm 4", "begin"));
    lines.addAll(List.of("early it is a test", "lift it is a test", "arm 1", "fill", "done"));
    lines.addAll(List.of("sheet", "quit", ""));
    Ran ran =
        run("C.UTF-8", String.join("\n", lines), "walk", "stereo-only", "--practice", "--plain");
    assertTrue(ran.out().contains("  95 % forecast. "), ran.out());
    assertTrue(ran.out().contains("Every step is done."), ran::out);
    assertTrue(ran.out().contains("kept stereo-1 outputVolts"), ran::out);
    assertTrue(ran.out().contains("Ω"), ran::out);
    assertEquals(0, ran.code(), ran.err());
  }

  @Test
  void amplifierFileThatIsNotThereOrAFolder_isToldAsThat() throws Exception {
    String none = folder.resolve("nofile").toString();
    Ran missing = run("C.UTF-8", "", "walk", "stereo-only", "--plain", "--amp", none);
    assertEquals(none + ": there is no such file.\n", missing.err());
    assertEquals(2, missing.code());
    String there = folder.toString();
    Ran within = run("C.UTF-8", "", "walk", "stereo-only", "--plain", "--amp", there);
    assertEquals(there + " is a folder, not a file.\n", within.err());
    assertEquals(2, within.code());
  }

  @Test
  void resumingWithoutAName_goesOnWithTheOneThatIsOpen() throws Exception {
    Ran open = run("C.UTF-8", "note begun\n", "walk", "stereo-only", "--practice", "2", "--plain");
    String walk = open.out().lines().findFirst().orElseThrow();
    assertTrue(walk.startsWith("walk "), open::out);
    Ran later = run("C.UTF-8", "", "walk", "stereo-only", "--practice", "3", "--fill");
    assertEquals(0, later.code(), later.err());
    Ran resumed = run("C.UTF-8", "", "resume", "--plain");
    assertTrue(resumed.out().startsWith(walk), resumed::out);
  }

  @Test
  void resumingADamagedWalk_showsWhatIsSound_withCodeFour() throws Exception {
    Path sessions = Files.createDirectories(folder.resolve("sessions"));
    List<String> lines =
        new ArrayList<>(
            Files.readAllLines(Path.of("sessions", "2026-11-25-halvorsen-pike-hp-250.jsonl")));
    lines.set(40, lines.get(40).replace("\"seq\":", "\"sea\":"));
    Files.write(sessions.resolve("holed.jsonl"), lines);
    Files.createFile(sessions.resolve("empty.jsonl"));
    Ran holed = run("C.UTF-8", "", "resume", "holed", "--plain");
    assertEquals(4, holed.code(), holed.err());
    assertTrue(holed.err().contains("The journal is damaged"), holed.err());
    assertTrue(holed.out().contains("Readings and forecast"), holed::out);
    assertEquals(4, run("C.UTF-8", "", "resume", "empty", "--plain").code());
  }

  @Test
  void whatIsKept_isTold_whateverItIs() throws Exception {
    String lines =
        "note\nnote fan is loud\nskip cold run\nskip no clamp here\narm 4\n"
            + "outputVolts 1.55\nstand outputVolts it is so\npair 13.2 0.8%\n"
            + "criterion below-limit\ndone\narm 2\noutputVolts 13\ndone\n"
            + "lift the owner wants it\nquit\n";
    Ran ran = run("C.UTF-8", lines, "walk", "stereo-only", "--practice", "2", "--plain");
    assertTrue(ran.out().contains("Type: note TEXT."), ran::out);
    assertTrue(ran.out().contains("\nkept note: fan is loud\n"), ran::out);
    assertTrue(ran.out().contains("\nstood by stereo-4 outputVolts: it is so\n"), ran::out);
    assertTrue(ran.out().contains("\nkept stereo-4 pair 1\n"), ran::out);
    assertTrue(ran.out().contains("\nstereo-4, output was read below the limit"), ran::out);
    assertTrue(ran.out().contains("\nHalt lifted: the owner wants it. To arm, type"), ran::out);
  }

  @Test
  void version_isPrintedByEveryCommand() throws Exception {
    assertTrue(run("C.UTF-8", "", "--version").out().startsWith("Loadwalk "));
    assertTrue(run("C.UTF-8", "", "sheet", "-V").out().startsWith("Loadwalk "));
  }

  @Test
  void fill_walksToTheSheetWithoutInput_inAsciiWhereTheLocaleIsC() throws Exception {
    Ran ran = run("C", "", "walk", "full-walk", "--fill");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("Every step is done."), ran::out);
    assertTrue(ran.out().contains("kept bridged-1 outputVolts"), ran::out);
    assertTrue(ran.out().chars().allMatch(c -> c < 127), "not ASCII: " + ran.out());
  }

  @Test
  void wrongWords_endWithCodeTwo_andASentence() throws Exception {
    Ran sequence = run("C", "", "walk", "no-such-thing", "--practice", "--plain");
    assertEquals(2, sequence.code());
    assertTrue(sequence.err().contains("There is no sequence named no-such-thing."));
    Ran option = run("C", "", "walk", "full-walk", "--practise");
    assertEquals(2, option.code());
    Ran name = run("C", "", "resume", "../no-such-folder/etc", "--plain");
    assertEquals(2, name.code());
    assertTrue(name.err().startsWith("etc cannot be read: it is not there."), name::err);
    Ran home = run("C", "");
    assertEquals(2, home.code());
    assertTrue(home.err().contains("The home screen needs a terminal"), home::err);
  }

  @Test
  void openDoubt_endsWithCodeThree_andResumeTakesItsAnswer() throws Exception {
    String slip =
        "skip it is a test\nskip it is a test\nlift it is\narm 4\noutputVolts 1.55 V\n"
            + "begin\nbegin\nlevitate\n"
            + "note "
            + "x".repeat(3_000_000)
            + "\n";
    Ran ran = run("C", slip, "walk", "stereo-only", "--practice", "--plain");
    assertTrue(ran.out().contains("DOUBT on outputVolts"), ran::out);
    assertEquals(3, ran.code(), ran.out());
    assertEquals(2, count(ran.out(), "stereo-4 is already running."), ran::out);
    assertTrue(ran.out().contains("is not a command; type help"), ran::out);
    assertTrue(ran.out().contains("That line is longer than 4000 characters"), ran::out);
    Ran resumed =
        run("C", "stand outputVolts the probe divides by ten\nquit\n", "resume", "--plain");
    assertEquals(0, resumed.code(), resumed.out() + resumed.err());
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }

  @Test
  void walkHeldByAnother_isShownButNotWritten() throws Exception {
    Process first = Shipped.start("C", folder, "walk", "stereo-only", "--practice", "--plain");
    try {
      StringBuilder said = new StringBuilder();
      for (int c = 0; c >= 0 && !said.toString().contains("brief:"); ) {
        c = first.getInputStream().read();
        said.append((char) c);
      }
      Ran second = run("C", "begin\n", "resume", "--plain");
      assertEquals(3, second.code(), second.out());
      assertEquals("Another Loadwalk has this walk open.", second.err().strip());
      assertFalse(second.out().isEmpty(), "nothing to watch");
      Ran another = run("C", "quit\n", "walk", "stereo-only", "--practice", "--plain");
      assertEquals(0, another.code(), another.err());
      assertTrue(another.out().matches("(?s)walk [-a-z0-9]+-2, .*"), another.out());
    } finally {
      first.destroyForcibly();
      first.waitFor();
    }
  }
}
