package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** Changes of the archive of classes beside the jar: what a command prints is as it was. */
final class ClassArchive {
  private static final int ALL = 500;

  /** So many are seldom all in parts that a command does not use. */
  private static final int MANY = 100;

  private static final int PATIENCE_SECONDS = 120;

  private final Learned learned;
  private final Deque<Program> free = new ArrayDeque<>();

  private ClassArchive(Learned learned) {
    this.learned = learned;
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    // A jar that only leads to classes elsewhere has no archive.
    if (Rights.isWhole(learned.program().launcher().resolveSibling("loadwalk.jar"))) {
      ClassArchive archive = new ClassArchive(learned);
      for (int i = 0; i < ALL; i++) {
        all.add(archive.bits(i % 2 == 0 ? 1 : MANY, random.nextLong()));
      }
    }
    return all;
  }

  private Fault bits(int bits, long seed) {
    return new Fault(
        bits + " bits of the class archive, seed " + seed,
        folder -> {
          Program program = taken(folder);
          Path archive = program.launcher().resolveSibling("loadwalk.jsa");
          turn(archive, bits, new Random(seed));
          Path home = learned.program().folder();
          assertEquals(learned.sheet(), TinyWalk.sheet(program, home));
          turn(archive, bits, new Random(seed));
          synchronized (free) {
            free.push(program);
          }
        });
  }

  /** Turns the same bits again where it is asked twice. */
  private static void turn(Path file, int bits, Random random) throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      for (int i = 0; i < bits; i++) {
        long at = (long) (random.nextDouble() * bytes.length());
        bytes.seek(at);
        int sound = bytes.read();
        bytes.seek(at);
        bytes.write(sound ^ 1 << random.nextInt(8));
      }
    }
  }

  /** Takes the launcher with a jar of its own and an archive of that one. */
  private Program taken(Path folder) throws IOException, InterruptedException {
    synchronized (free) {
      if (!free.isEmpty()) {
        return free.pop();
      }
    }
    Path given = learned.program().launcher();
    Path launcher = Files.copy(given, folder.resolve("loadwalk"));
    Path jar = Files.copy(given.resolveSibling("loadwalk.jar"), folder.resolve("loadwalk.jar"));
    Process made =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:ArchiveClassesAtExit=" + folder.resolve("loadwalk.jsa"),
                "-jar",
                jar.toString(),
                "sheet",
                "--home",
                learned.program().folder().toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!made.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      made.destroyForcibly();
      throw new AssertionError("no class archive was made in time");
    }
    return new Program(launcher, folder, learned.program().ahead(), learned.program().settings());
  }
}
