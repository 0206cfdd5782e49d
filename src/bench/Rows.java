import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Measures the rows that the arguments name, or all, and prints each as a line of a table. */
final class Rows {
  private static final int ROUNDS = 15;
  private static final int KEYS = 100;
  private static final long QUIET_MILLIS = 8;
  private static final long IDLE_MILLIS = 4000;

  /** What an operator takes at least from an open walk to its first reading. */
  private static final long OPEN_MILLIS = 5000;

  private static final String F3 = "\u001bOR";
  private static final String F8 = "\u001b[19~";
  private static final String F9 = "\u001b[20~";

  private final String java;
  private final Path target;
  private final Path work;
  private final Path source;

  private Rows(String java, Path target, Path work, Path source) {
    this.java = java;
    this.target = target;
    this.work = work;
    this.source = source;
  }

  /** Takes the java command, the folder of the build, a work folder, this folder and the rows. */
  public static void main(String[] arguments) throws Exception {
    Rows rows =
        new Rows(arguments[0], Path.of(arguments[1]), Path.of(arguments[2]), Path.of(arguments[3]));
    List<String> named = Arrays.asList(arguments).subList(4, arguments.length);
    List<String> all =
        List.of("start", "keys", "entry", "idle", "memory", "sheet", "ledger", "jar", "growth");
    System.out.println("| what | compared with | Loadwalk | the other | ratio | reach |");
    System.out.println("|---|---|---|---|---|---|");
    for (String row : named.isEmpty() ? all : named) {
      rows.measure(row);
    }
  }

  private void measure(String row) throws Exception {
    switch (row) {
      case "start" -> start();
      case "keys" -> keys();
      case "entry" -> entry();
      case "idle" -> idle();
      case "memory" -> memory();
      case "sheet" -> new PipeRows(java, target, work, source).sheet();
      case "ledger" -> new PipeRows(java, target, work, source).ledger();
      case "jar" -> jar();
      case "growth" -> Growth.print(PipeRows.demo(source));
      default -> throw new IllegalArgumentException("no row is named " + row);
    }
  }

  static void print(String what, String with, double own, double other, String unit, String reach) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %s | %.4g %s | %.4g %s | %.2f× | %s |%n",
        what,
        with,
        own,
        unit,
        other,
        unit,
        own / other,
        reach);
  }

  private List<String> bare(String... more) {
    List<String> command = new ArrayList<>(List.of(java, "-jar", work + "/bare.jar"));
    command.addAll(List.of(more));
    return command;
  }

  private Path freshHome() throws IOException {
    return Files.createTempDirectory(work, "home");
  }

  private List<String> walk(Path home) {
    return List.of(
        target + "/loadwalk",
        "walk",
        "full-walk",
        "--practice=7",
        "--speed=1",
        "--home",
        home.toString());
  }

  private void start() throws IOException {
    Sample bare = new Sample();
    Sample launcher = new Sample();
    Sample plain = new Sample();
    for (int round = 0; round < ROUNDS; round++) {
      bare.add(millisTo(bare(), "ready"));
      launcher.add(millisTo(List.of(target + "/loadwalk"), "leave"));
      plain.add(millisTo(List.of(java, "-jar", target + "/loadwalk.jar"), "leave"));
    }
    String with = "bare Lanterna, one frame, java -jar";
    print("command to home screen, launcher", with, launcher.median(), bare.median(), "ms", "1.0×");
    print("command to home screen, java -jar", with, plain.median(), bare.median(), "ms", "1.8×");
  }

  private double millisTo(List<String> command, String text) throws IOException {
    try (Session session = Session.start(freshHome(), command)) {
      return session.until(text) / 1e6;
    }
  }

  /** Brings a walk to its first loaded step, its first reading in focus. */
  private static void toReadings(Session walk) {
    walk.await("To arm");
    press(walk, F3);
    press(walk, "not needed for this measurement");
    for (String keys : List.of("\r", "\r", F8)) {
      press(walk, keys);
    }
    walk.forget();
    press(walk, F9);
    walk.await("HEED");
    walk.forget();
    press(walk, "4\r");
    walk.await("running");
  }

  private static void press(Session session, String keys) {
    session.answered(keys, 60);
  }

  private void keys() throws IOException {
    Sample bareMedians = new Sample();
    Sample ownMedians = new Sample();
    Sample bareAll = new Sample();
    Sample ownAll = new Sample();
    Path home = freshHome();
    try (Session bare = Session.start(home, bare());
        Session own = Session.start(home, walk(home))) {
      bare.await("ready");
      toReadings(own);
      keys(bare);
      keys(own);
      for (int round = 0; round < ROUNDS; round++) {
        Sample bareRound = keys(bare);
        Sample ownRound = keys(own);
        bareMedians.add(bareRound.median());
        ownMedians.add(ownRound.median());
        bareAll.addAll(bareRound);
        ownAll.addAll(ownRound);
      }
    }
    String with = "echo loop on bare Lanterna";
    print("key to screen, median", with, ownMedians.median(), bareMedians.median(), "ms", "1.2×");
    print("key to screen, p99", with, ownAll.quantile(0.99), bareAll.quantile(0.99), "ms", "1.5×");
  }

  private static Sample keys(Session session) {
    Sample sample = new Sample();
    for (int key = 0; key < KEYS; key++) {
      sample.add(session.answered(key % 2 == 0 ? "1" : "\u007f", QUIET_MILLIS) / 1e6);
    }
    return sample;
  }

  private void entry() throws IOException, InterruptedException {
    Sample own = new Sample();
    Sample other = new Sample();
    Path home = freshHome();
    try (Session bare = Session.start(home, bare());
        Session walk = Session.start(home, walk(home))) {
      bare.await("ready");
      toReadings(walk);
      Thread.sleep(OPEN_MILLIS);
      keys(bare);
      Path journal;
      try (var files = Files.list(home.resolve("sessions"))) {
        journal = files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
      }
      for (int round = -ROUNDS; round < 2 * ROUNDS; round++) {
        press(walk, "17." + (round & 7));
        long before = Files.size(journal);
        double entered = walk.answered("\r", QUIET_MILLIS) / 1e6;
        int bytes = (int) (Files.size(journal) - before);
        if (bytes <= 0) {
          throw new IllegalStateException("the reading was not kept");
        }
        press(walk, "\u001b[A");
        double written = forced(home.resolve("written"), bytes);
        double echoed = bare.answered(round % 2 == 0 ? "1" : "\u007f", QUIET_MILLIS) / 1e6;
        if (round >= 0) {
          own.add(entered);
          other.add(written + echoed);
        }
      }
    }
    print(
        "a reading entered to kept, judged, renewed and painted",
        "one write and force of the same bytes, plus the echo",
        own.median(),
        other.median(),
        "ms",
        "");
  }

  /** Writes and forces so many bytes behind what a file holds and returns how long it took, ms. */
  private static double forced(Path file, int bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      ByteBuffer buffer = ByteBuffer.allocateDirect(bytes);
      long start = System.nanoTime();
      channel.write(buffer);
      channel.force(false);
      return (System.nanoTime() - start) / 1e6;
    }
  }

  private void idle() throws IOException, InterruptedException {
    Sample own = new Sample();
    Sample other = new Sample();
    Path home = freshHome();
    try (Session bare = Session.start(home, bare("tick"));
        Session walk = Session.start(home, walk(home))) {
      bare.await("ready");
      walk.await("To arm");
      press(walk, "4\r");
      press(walk, "\r");
      Thread.sleep(2 * IDLE_MILLIS);
      for (int round = 0; round < ROUNDS; round++) {
        long bareBefore = bare.processorNanos();
        long ownBefore = walk.processorNanos();
        long start = System.nanoTime();
        Thread.sleep(IDLE_MILLIS);
        double share = 100.0 / (System.nanoTime() - start);
        other.add((bare.processorNanos() - bareBefore) * share);
        own.add((walk.processorNanos() - ownBefore) * share);
      }
    }
    print(
        "idle on the warm-up screen, share of a core",
        "bare Lanterna at 4 ticks a second",
        own.median(),
        other.median(),
        "%",
        "1.2×, < 1 %");
  }

  private void memory() throws IOException, InterruptedException {
    Sample own = new Sample();
    Sample other = new Sample();
    for (int round = 0; round < ROUNDS; round++) {
      Path home = freshHome();
      try (Session bare = Session.start(home, bare());
          Session walk = Session.start(home, walk(home))) {
        bare.await("ready");
        toReadings(walk);
        Thread.sleep(OPEN_MILLIS);
        own.add(walk.residentKib() / 1024.0);
        other.add(bare.residentKib() / 1024.0);
      }
    }
    print(
        "resident memory on the walk screen",
        "bare Lanterna",
        own.median(),
        other.median(),
        "MiB",
        "1.5×");
  }

  private void jar() throws IOException {
    double mebibytes = Files.size(target.resolve("loadwalk.jar")) / 1048576.0;
    System.out.printf(Locale.ROOT, "| jar size | | %.2f MiB | | | 8 MiB |%n", mebibytes);
  }
}
