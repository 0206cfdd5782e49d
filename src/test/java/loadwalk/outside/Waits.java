package loadwalk.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Things that never begin or never end, where a file is expected: whoever opens them says so, and
 * does not wait.
 */
final class Waits {
  /** What stands in the way of a file. */
  private static final List<String> THINGS =
      List.of("pipe", "/dev/zero", "/dev/full", "/dev/tty", "folder", "link to a pipe");

  private Waits() {}

  /** Readies a data home in which a walk has been begun; returns what is in the way. */
  private interface Place {
    Path in(Path home) throws IOException;
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (String thing : THINGS) {
      named(all, learned, thing);
      lying(all, learned, thing);
    }
    for (String command : List.of("wave", "check", "plan")) {
      all.add(endless(learned, command));
    }
    return all;
  }

  /** Files that a command line names. */
  private static void named(List<Fault> all, Learned learned, String thing) {
    Place named = home -> home.resolve("named");
    all.add(refused(learned, thing, "check", named, "check", "@"));
    all.add(refused(learned, thing, "wave", named, "wave", "@"));
    all.add(refused(learned, thing, "rehearse", named, "rehearse", "--sequence", "tiny", "@"));
    all.add(
        refused(learned, thing, "rehearse's sequence", named, "rehearse", "--sequence", "@", "-"));
    all.add(refused(learned, thing, "plan's sequence", named, "plan", "@", "--amp", "amp.json"));
    all.add(refused(learned, thing, "plan's amplifier", named, "plan", "tiny", "--amp", "@"));
    all.add(
        refused(
            learned, thing, "plan's bench", named, "plan", "tiny", "--amp=amp.json", "--bench=@"));
    all.add(refused(learned, thing, "meters", named, "meters", "--bench", "@"));
    all.add(refused(learned, thing, "walk's amplifier", named, "walk", "tiny", "--amp", "@"));
    all.add(
        refused(
            learned, thing, "walk's bench", named, "walk", "tiny", "--amp=amp.json", "--bench=@"));
    if (!thing.equals("folder")) {
      all.add(refused(learned, thing, "data home", named, "sheet", "--home", "@"));
      all.add(refused(learned, thing, "ledger's home", named, "ledger", "--home", "@"));
    }
  }

  /** Files that lie in the data home. */
  private static void lying(List<Fault> all, Learned learned, String thing) {
    String[][] readers = {{"sheet"}, {"ledger"}, {"replay", "@"}, {"resume", "--plain"}};
    for (String[] reader : readers) {
      all.add(told(learned, thing, "journal", home -> Journal.in(home).get(0), reader));
      all.add(told(learned, thing, "index", home -> session(home, ".ledger-index"), reader));
      all.add(told(learned, thing, "table", home -> home.resolve("data/wire.csv"), reader));
    }
    String[] resume = {"resume", "--plain"};
    all.add(told(learned, thing, "lock", Waits::lock, resume));
    all.add(
        told(learned, thing, "guard of the locks", home -> session(home, ".guard.lock"), resume));
    all.add(told(learned, thing, "used meters", home -> home.resolve(".meters-used"), resume));
    String[] walk = {"walk", "tiny", "--amp=amp.json", "--plain"};
    all.add(told(learned, thing, "sequence", home -> home.resolve("sequences/tiny.json"), walk));
  }

  private static Path session(Path home, String name) {
    return home.resolve("sessions").resolve(name);
  }

  private static Path lock(Path home) throws IOException {
    try (Stream<Path> files = Files.list(home.resolve("sessions"))) {
      return files.filter(f -> f.toString().endsWith(".lock")).findFirst().orElseThrow();
    }
  }

  private static Fault refused(
      Learned learned, String thing, String what, Place place, String... words) {
    return new Fault(
        what + " is " + thing,
        folder -> {
          Path home = TinyWalk.home(folder);
          Path named = put(place.in(home), thing);
          String[] given = words.clone();
          Arrays.setAll(given, i -> given[i].replace("@", named.toString()));
          program(learned, home).run("", given).ends(2).says("folder|pipe|device|file");
        });
  }

  /** It ends by itself in plain words; what it can say of the rest of the home it says. */
  private static Fault told(
      Learned learned, String thing, String what, Place place, String... words) {
    return new Fault(
        what + " is " + thing + ", " + words[0],
        folder -> {
          Path home = TinyWalk.home(folder);
          Program program = program(learned, home);
          program.run(TinyWalk.half(true), TinyWalk.begin(home)).ends(0);
          String walk = Journal.in(home).get(0).getFileName().toString().replace(".jsonl", "");
          put(place.in(home), thing);
          String[] given = words.clone();
          Arrays.setAll(given, i -> given[i].replace("@", walk));
          program.run("", given).isPlain();
        });
  }

  /** What comes in without end is read no further than a file of its kind can be long. */
  private static Fault endless(Learned learned, String command) {
    return new Fault(
        command + " of zeros without end",
        folder -> {
          Path home = TinyWalk.home(folder);
          String[] words =
              command.equals("plan")
                  ? new String[] {"plan", "-", "--amp=amp.json"}
                  : new String[] {command, "-"};
          Program program =
              program(learned, home).behind("sh", "-c", "exec \"$@\" </dev/zero", "sh");
          program.run("", words).ends(2);
        });
  }

  private static Program program(Learned learned, Path home) {
    return new Program(learned.program().launcher(), home, List.of(), learned.program().settings());
  }

  private static Path put(Path path, String thing) throws IOException, InterruptedException {
    Files.createDirectories(path.getParent());
    Files.deleteIfExists(path);
    switch (thing) {
      case "pipe" -> Tools.run("mkfifo", path.toString());
      case "folder" -> Files.createDirectory(path);
      case "link to a pipe" -> {
        Path pipe = path.resolveSibling("a-pipe");
        Tools.run("mkfifo", pipe.toString());
        Files.createSymbolicLink(path, pipe);
      }
      default -> Files.createSymbolicLink(path, Path.of(thing));
    }
    return path;
  }
}
