package loadwalk.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
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
public record CrashReport(Throwable fault, Instant at, Machine machine) {
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
    public static Machine ofThisProcess() {
      String version = CrashReport.class.getPackage().getImplementationVersion();
      return new Machine(
          version == null ? "not packed" : version,
          System.getProperty("java.version", "unknown"),
          System.getProperty("os.name", "unknown") + " " + System.getProperty("os.arch", ""));
    }
  }

  /**
   * Writes the report into the data home and returns the one sentence that the operator is told.
   * Nothing that goes wrong here is thrown: the crash comes first.
   */
  public String write(DataHome home) {
    String resume =
        "Loadwalk stopped by a fault of its own; every reading it called kept is on the disk, so go"
            + " on with «loadwalk resume»";
    try {
      Path file = written(home.root());
      return resume
          + ", and send the file "
          + file
          + ", which holds no readings, names or notes, to whoever gave you Loadwalk.";
    } catch (IOException | RuntimeException e) {
      return resume
          + " (a report could not be written, the fault was "
          + fault.getClass().getName()
          + ").";
    }
  }

  private Path written(Path folder) throws IOException {
    Files.createDirectories(folder);
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
    throw new IOException("there are " + SAME_SECOND_MAX + " reports of this second already");
  }

  /** Returns the report as text. */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append("Crash report of Loadwalk ").append(machine.version()).append('\n');
    text.append("Format: loadwalk-crash/1\n");
    text.append("Time: ").append(at).append('\n');
    text.append("Java: ").append(machine.java()).append('\n');
    text.append("System: ").append(machine.system()).append('\n');
    text.append("Messages are left out, as they can hold what was typed.\n\n");
    List<String> lines = new ArrayList<>();
    describe(fault, "", Collections.newSetFromMap(new IdentityHashMap<>()), lines);
    lines.forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }

  private static void describe(
      Throwable error, String relation, Set<Throwable> seen, List<String> lines) {
    if (!seen.add(error) || seen.size() > ERRORS_MAX) {
      lines.add(relation + "an error shown above, or one too many");
      return;
    }
    lines.add(relation + error.getClass().getName());
    StackTraceElement[] frames = error.getStackTrace();
    for (int i = 0; i < Math.min(frames.length, FRAMES_MAX); i++) {
      lines.add("  at " + frames[i]);
    }
    if (frames.length > FRAMES_MAX) {
      lines.add("  and " + (frames.length - FRAMES_MAX) + " more");
    }
    for (Throwable suppressed : error.getSuppressed()) {
      describe(suppressed, "besides: ", seen, lines);
    }
    if (error.getCause() != null) {
      describe(error.getCause(), "because of: ", seen, lines);
    }
  }
}
