package loadwalk.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import loadwalk.app.store.AtomicFile;
import loadwalk.app.store.DataHome;
import loadwalk.cli.Folders;
import loadwalk.text.Sentence;

/**
 * Reports a fault of Loadwalk itself in a file that can be handed on.
 *
 * <p>The report holds the kinds of the errors and the places in the program, and no message: a
 * message can quote a path, a note or a serial number.
 *
 * @param fault what escaped
 * @param at when
 * @param machine on what
 */
record CrashReport(Throwable fault, Instant at, Machine machine) {
  private static final String FOLDER = "crashes";
  private static final int FRAMES_MAX = 60;
  private static final int ERRORS_MAX = 20;
  private static final int SAME_SECOND_MAX = 100;
  private static final DateTimeFormatter IN_A_NAME =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

  /** Checks that nothing is missing. */
  public CrashReport {
    Objects.requireNonNull(fault, "fault");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(machine, "machine");
  }

  /**
   * What a report says of the computer.
   *
   * @param version the version of Loadwalk
   * @param java the version of Java
   * @param system the operating system and the processor
   */
  public record Machine(String version, String java, String system) {
    /** Returns what this process runs on. */
    static Machine ofThisProcess() {
      String version = CrashReport.class.getPackage().getImplementationVersion();
      return new Machine(
          version == null ? "not packed" : version,
          System.getProperty("java.version", "unknown"),
          System.getProperty("os.name", "unknown") + " " + System.getProperty("os.arch", ""));
    }
  }

  /**
   * Writes the report into the data home, into a folder of its own, as the data home may be the one
   * the operator works in, and returns what the operator is told. Nothing that goes wrong here is
   * thrown: the crash comes first.
   *
   * @param temporary where it goes if the data home cannot be written
   */
  String write(DataHome home, Path temporary) {
    try {
      return Sentence.of(
          "Loadwalk stopped on a fault of its own. Every reading it called kept is on the disk: go"
              + " on with «loadwalk resume». Please send {} to whoever gave you Loadwalk; it holds"
              + " no readings, names or notes.",
          written(home.root().resolve(FOLDER)));
    } catch (IOException | RuntimeException e) {
      return writeAside(temporary);
    }
  }

  private String writeAside(Path temporary) {
    try {
      return Sentence.of(
          "Loadwalk stopped on a fault of its own. Every reading it called kept is on the disk: go"
              + " on with «loadwalk resume». The data home could not be written, so the crash"
              + " report is in the temporary folder. Please send {} to whoever gave you Loadwalk;"
              + " it holds no readings, names or notes.",
          written(temporary));
    } catch (IOException | RuntimeException e) {
      return Sentence.of(
          "Loadwalk stopped on a fault of its own. Every reading it called kept is on the disk: go"
              + " on with «loadwalk resume». No crash report could be written; the fault was {}.",
          fault.getClass().getName());
    }
  }

  private Path written(Path folder) throws IOException {
    Folders.make(folder);
    byte[] bytes = text().getBytes(UTF_8);
    for (int number = 1; number <= SAME_SECOND_MAX; number++) {
      String suffix = number == 1 ? "" : "-" + number;
      Path file = folder.resolve("crash-" + IN_A_NAME.format(at) + suffix + ".txt");
      try {
        AtomicFile.writeNew(file, bytes);
        return file;
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
    }
    throw new IOException(Sentence.of("this second already has {} reports", SAME_SECOND_MAX));
  }

  /** Returns the report as text. */
  String text() {
    List<String> lines = new ArrayList<>();
    lines.add(Sentence.of("Crash report of Loadwalk {}", machine.version()));
    lines.add("Format: loadwalk-crash/1");
    lines.add(Sentence.of("Time: {}", at));
    lines.add(Sentence.of("Java: {}", machine.java()));
    lines.add(Sentence.of("System: {}", machine.system()));
    lines.add("Error messages are left out: they can quote what was typed.");
    lines.add("");
    describe(fault, "", Collections.newSetFromMap(new IdentityHashMap<>()), lines);
    return String.join("\n", lines) + "\n";
  }

  private static void describe(
      Throwable error, String relation, Set<Throwable> seen, List<String> lines) {
    if (!seen.add(error) || seen.size() > ERRORS_MAX) {
      lines.add(Sentence.of("{}an error shown above, or more than fit here", relation));
      return;
    }
    lines.add(relation + error.getClass().getName());
    StackTraceElement[] frames = error.getStackTrace();
    for (int i = 0; i < Math.min(frames.length, FRAMES_MAX); i++) {
      lines.add(Sentence.of("  at {}", frames[i]));
    }
    if (frames.length > FRAMES_MAX) {
      lines.add(Sentence.of("  and {} more", frames.length - FRAMES_MAX));
    }
    for (Throwable suppressed : error.getSuppressed()) {
      describe(suppressed, "suppressed: ", seen, lines);
    }
    if (error.getCause() != null) {
      describe(error.getCause(), "caused by: ", seen, lines);
    }
  }
}
