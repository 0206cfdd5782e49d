package loadwalk.disk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import loadwalk.journal.TornLine;
import loadwalk.report.Photos;

/** Real walks, each under the tracer. */
final class RecordedWalks {
  private static final int TORN_BYTES = 40;

  private static final String[] PRACTICE = {"walk", "stereo-only", "--practice=1", "--speed=60"};

  private RecordedWalks() {}

  /** A new walk in a data home that is not there yet, filled in to its end. */
  static Tracer.Run whole(Tracer tracer) throws IOException, InterruptedException {
    Tracer.Run run = failing(tracer, List.of());
    assertEquals(0, run.code(), run::toString);
    return run;
  }

  /** The same, while calls fail. */
  static Tracer.Run failing(Tracer tracer, List<String> faults)
      throws IOException, InterruptedException {
    return tracer.failing(faults, "", PRACTICE[0], PRACTICE[1], PRACTICE[2], PRACTICE[3], "--fill");
  }

  /**
   * Leaves a walk open with a torn line at its end, and a photo beside the data home; returns what
   * is torn.
   */
  static String leaveTorn(Tracer tracer) throws IOException, InterruptedException {
    Tracer.Run run =
        tracer.run(
            "begin\nsinkCelsius 20.3\n",
            PRACTICE[0],
            PRACTICE[1],
            PRACTICE[2],
            PRACTICE[3],
            "--plain");
    assertEquals(0, run.code(), run::toString);
    byte[] torn = TornLine.after(Files.readAllBytes(journal(tracer)), TORN_BYTES);
    Files.write(journal(tracer), torn, StandardOpenOption.APPEND);
    Files.write(tracer.watched().resolve("amp.png"), Photos.png());
    return new String(torn, UTF_8);
  }

  /** The torn walk taken up again, with two readings and between them one photo, twice. */
  static Tracer.Run takenUp(Tracer tracer) throws IOException, InterruptedException {
    String photo = "photo " + tracer.watched().resolve("amp.png") + " the amplifier\n";
    Tracer.Run run =
        tracer.run("sinkCelsius 31\n" + photo + photo + "sinkCelsius 32\n", "resume", "--plain");
    assertEquals(0, run.code(), run::toString);
    assertTrue(run.said().contains("The photo is kept"), run::toString);
    return run;
  }

  /** Returns the one journal there is. */
  static Path journal(Tracer tracer) throws IOException {
    try (Stream<Path> files = Files.list(tracer.home().resolve("sessions"))) {
      return files.filter(file -> file.toString().endsWith(".jsonl")).findFirst().orElseThrow();
    }
  }

  /** Returns the name of the one walk there is. */
  static String walk(Tracer tracer) throws IOException {
    return journal(tracer).getFileName().toString().replace(".jsonl", "");
  }
}
