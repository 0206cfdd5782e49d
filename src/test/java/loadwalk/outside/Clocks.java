package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A clock on the wall that is set back and forward while an amplifier warms up. */
final class Clocks {
  private static final List<String> JUMPS =
      List.of("+15m", "+3h", "+9m", "+20y", "-15m", "-3h", "-30d", "-20y");

  /** Those that may have been a sleep of the computer in which the amplifier cooled. */
  private static final List<String> TOLD = List.of("+15m", "+3h", "+20y");

  /** As on the wall: a computer however slow does not take the minutes of a warm-up for a trial. */
  private static final int SPEED = 1;

  /** Before the first tick is kept, and at the end of one. */
  private static final double SLACK_SECONDS = 60;

  private Clocks() {}

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (String jump : JUMPS) {
      all.add(
          new Fault(
              jump + " in mid-warm-up", folder -> inMidWarmUp(learned.program(), folder, jump)));
      all.add(
          new Fault(
              jump + " between a kill and going on",
              folder -> whileKilled(learned.program(), folder, jump)));
    }
    return all;
  }

  private static Optional<Path> library() throws IOException {
    for (String place : List.of("/usr/lib", "/usr/lib64", "/usr/local/lib")) {
      if (Files.isDirectory(Path.of(place))) {
        try (Stream<Path> files =
            Files.find(Path.of(place), 3, (file, is) -> file.endsWith("libfaketime.so.1"))) {
          Optional<Path> found = files.findFirst();
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Only the wall's clock is set: the one that counts from the start of the computer is not. */
  private static Program underClock(Program program, Path clock) throws IOException {
    Path library = library().orElseThrow(() -> new AssertionError("libfaketime is not installed"));
    return program
        .with("LD_PRELOAD", library.toString())
        .with("FAKETIME_TIMESTAMP_FILE", clock.toString())
        .with("FAKETIME_CACHE_DURATION", "1")
        .with("FAKETIME_DONT_FAKE_MONOTONIC", "1");
  }

  private static String[] words(String command, Path home) {
    return command.equals("walk")
        ? new String[] {
          "walk",
          "stereo-only",
          "--practice",
          "1",
          "--plain",
          "--speed",
          "" + SPEED,
          "--home",
          home.toString()
        }
        : new String[] {"resume", "--plain", "--speed", "" + SPEED, "--home", home.toString()};
  }

  private static void inMidWarmUp(Program program, Path folder, String jump) throws Exception {
    Path clock = Files.writeString(folder.resolve("clock"), "+0s");
    long start = System.nanoTime();
    Program.Running running = underClock(program, clock).start(words("walk", folder));
    running.type("begin\n").hears("warm-up is running");
    awaitWarmth(folder, running);
    Files.writeString(clock, jump);
    Thread.sleep(1500);
    if (TOLD.contains(jump)) {
      running.hears("the amplifier ");
    }
    running.type("sinkCelsius 30\n").hears("kept warm-up sinkCelsius");
    Ran ran = running.type("done\n").end().ends(0);
    isNotDone(ran, folder, start);
  }

  private static void whileKilled(Program program, Path folder, String jump) throws Exception {
    Path clock = Files.writeString(folder.resolve("clock"), "+0s");
    long start = System.nanoTime();
    Program.Running running = underClock(program, clock).start(words("walk", folder));
    running.type("begin\n").hears("warm-up is running");
    awaitWarmth(folder, running);
    running.kill();
    running.end();
    Files.writeString(clock, jump);
    Ran ran = underClock(program, clock).run("begin\ndone\n", words("resume", folder)).ends(0);
    isNotDone(ran, folder, start);
  }

  /** Waits a little; under a clock of its own the program may not keep a tick unasked. */
  private static void awaitWarmth(Path home, Program.Running running) throws Exception {
    for (int i = 0; i < 100 && warmSeconds(Journal.only(home)) == 0; i++) {
      assertTrue(running.isAlive(), running::said);
      Thread.sleep(20);
    }
  }

  private static double warmSeconds(Journal journal) {
    double most = 0;
    for (JsonNode fact : journal.facts()) {
      if (fact.get("fact").asText().equals("warmed")) {
        most = Math.max(most, fact.get("seconds").asDouble());
      }
    }
    return most;
  }

  private static void isNotDone(Ran ran, Path home, long start) throws IOException {
    double passed = (System.nanoTime() - start) / (double) TimeUnit.SECONDS.toNanos(1);
    Journal journal = Journal.only(home).isWhole();
    double most = SPEED * passed + SLACK_SECONDS;
    double warm = warmSeconds(journal);
    assertTrue(warm <= most, warm + " s of warm-up in " + passed + " s");
    boolean done = journal.facts().stream().anyMatch(f -> f.get("fact").asText().equals("done"));
    assertTrue(
        !done || SPEED * passed > 15 * 60, () -> "the jump ended the warm-up\n" + ran.said());
  }
}
