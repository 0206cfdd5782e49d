package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import loadwalk.app.store.DataHome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CrashReportTest {
  private static final Instant AT = Instant.parse("2026-03-01T10:20:30Z");
  private static final CrashReport.Machine MACHINE =
      new CrashReport.Machine("1.0.0", "17.0.1", "Linux amd64");

  @TempDir Path folder;

  private static CrashReport of(Throwable fault) {
    return new CrashReport(fault, AT, MACHINE);
  }

  private static Throwable fault(String message) {
    IOException cause = new IOException("inner " + message);
    cause.addSuppressed(new IllegalArgumentException("suppressed " + message));
    return new UncheckedIOException("outer " + message, cause);
  }

  private static int count(String text, String part) {
    return text.split(part, -1).length - 1;
  }

  @Test
  void text_startsWithWhatRanWhere() {
    assertTrue(
        of(fault("x"))
            .text()
            .startsWith(
                """
                Crash report of Loadwalk 1.0.0
                Format: loadwalk-crash/1
                Time: 2026-03-01T10:20:30Z
                Java: 17.0.1
                System: Linux amd64
                Error messages are left out: they can quote what was typed.

                java.io.UncheckedIOException
                  at loadwalk.app.CrashReportTest.fault(CrashReportTest.java:\
                """));
  }

  @Test
  void text_showsCausesAndSuppressedErrorsButNoMessage() {
    String secret = "serial 4711 of Ada in " + System.getProperty("user.home") + "/bench";
    String text = of(fault(secret)).text();
    assertTrue(text.contains("\ncaused by: java.io.IOException\n"), text);
    assertTrue(text.contains("\nsuppressed: java.lang.IllegalArgumentException\n"), text);
    for (String part : List.of("4711", "Ada", System.getProperty("user.home"), "outer", "inner")) {
      assertFalse(text.contains(part), part + " in " + text);
    }
  }

  @Test
  void text_ofErrorsThatCauseEachOther_ends() {
    Exception first = new Exception();
    Exception second = new Exception(first);
    first.initCause(second);
    assertEquals(2, count(of(first).text(), "java.lang.Exception"));
  }

  @Test
  void text_ofAVeryDeepError_isShortened() {
    Throwable chain = new Exception();
    for (int i = 0; i < 5000; i++) {
      chain = new Exception(chain);
    }
    StackTraceElement frame = new StackTraceElement("loadwalk.Deep", "down", "Deep.java", 1);
    chain.setStackTrace(Collections.nCopies(1024, frame).toArray(StackTraceElement[]::new));
    String text = of(chain).text();
    assertEquals(60, count(text, "loadwalk.Deep.down"));
    assertTrue(text.contains("  and 964 more\n"));
    assertEquals(20, count(text, "java.lang.Exception\n"));
  }

  @Test
  void write_makesAFileAndSaysWhatToDo() throws IOException {
    CrashReport report = of(fault("x"));
    Path file = folder.resolve("home/crashes/crash-20260301-102030.txt");
    assertEquals(
        "Loadwalk stopped on a fault of its own. Every reading it called kept is on the disk: go on"
            + " with «loadwalk resume». Please send "
            + file
            + " to whoever gave you Loadwalk; it holds no readings, names or notes.",
        report.write(new DataHome(folder.resolve("home")), folder));
    assertEquals(report.text(), Files.readString(file));
  }

  @Test
  void write_twiceInOneSecond_keepsBoth() throws IOException {
    of(fault("x")).write(new DataHome(folder), folder);
    of(new IllegalStateException()).write(new DataHome(folder), folder);
    try (Stream<Path> files = Files.list(folder.resolve("crashes"))) {
      assertEquals(
          List.of("crash-20260301-102030-2.txt", "crash-20260301-102030.txt"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void write_whereTheDataHomeCannotBeWritten_goesToTheTemporaryFolderAndSaysSo()
      throws IOException {
    Path notAFolder = Files.createFile(folder.resolve("file"));
    Path temporary = Files.createDirectories(folder.resolve("temporary"));
    CrashReport report = of(fault("x"));
    Path file = temporary.resolve("crash-20260301-102030.txt");
    assertEquals(
        "Loadwalk stopped on a fault of its own. Every reading it called kept is on the disk: go on"
            + " with «loadwalk resume». The data home could not be written, so the crash report is"
            + " in the temporary folder. Please send "
            + file
            + " to whoever gave you Loadwalk; it holds no readings, names or notes.",
        report.write(new DataHome(notAFolder), temporary));
    assertEquals(report.text(), Files.readString(file));
  }

  @Test
  void write_whereNothingCanBeWritten_stillSaysWhatToDo() throws IOException {
    Path notAFolder = Files.createFile(folder.resolve("file"));
    assertEquals(
        "Loadwalk stopped on a fault of its own. Every reading it called kept is on the disk: go on"
            + " with «loadwalk resume». No crash report could be written; the fault was"
            + " java.lang.IllegalStateException.",
        of(new IllegalStateException("secret")).write(new DataHome(notAFolder), notAFolder));
  }

  @Test
  void machine_ofThisProcess_isNeverBlank() {
    CrashReport.Machine machine = CrashReport.Machine.ofThisProcess();
    for (String part : List.of(machine.version(), machine.java(), machine.system())) {
      assertFalse(part.isBlank());
    }
  }
}
