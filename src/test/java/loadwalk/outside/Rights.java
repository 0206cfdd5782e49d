package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Folders and files that may not be read, written or entered, by somebody who is not root. */
final class Rights {
  private static final List<String> NOBODY =
      List.of("setpriv", "--reuid", "65534", "--regid", "65534", "--clear-groups");

  private Rights() {}

  /** Readies a data home in which the walk has run for one step; its sessions are there. */
  private interface Deed {
    void to(Path home) throws IOException;
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    if (!isWhole(learned.program().launcher().resolveSibling("loadwalk.jar"))) {
      return all;
    }
    all.add(begun(learned, "home read-only", "", home -> rights(home, "r-xr-xr-x")));
    all.add(begun(learned, "home closed", "", home -> rights(home, "---------")));
    all.add(
        begun(
            learned,
            "sessions read-only",
            "",
            home -> rights(Files.createDirectories(home.resolve("sessions")), "r-xr-xr-x")));
    all.add(
        begun(
            learned,
            "sessions closed",
            "",
            home -> rights(Files.createDirectories(home.resolve("sessions")), "---------")));
    all.add(
        begun(
            learned,
            "sessions is a file",
            "",
            home -> Files.writeString(home.resolve("sessions"), "a file")));
    for (String way : List.of("read-only", "closed")) {
      String letters = way.equals("closed") ? "---------" : "r--r--r--";
      all.add(resumed(learned, "journal " + way, home -> rights(Journal.in(home).get(0), letters)));
    }
    all.add(
        resumed(learned, "sessions closed", home -> rights(home.resolve("sessions"), "---------")));
    all.add(
        goneOn(
            learned, "sessions read-only", home -> rights(home.resolve("sessions"), "r-xr-xr-x")));
    for (String home : List.of("", "/nonexistent", "/dev/null", "/proc", "relative/home")) {
      all.add(homeless(learned, home));
    }
    for (String mask : List.of("000", "002", "022", "077")) {
      all.add(keptForItsOwner(learned, mask));
    }
    return all;
  }

  /** A jar that only leads to classes elsewhere cannot be carried to where nobody may read it. */
  static boolean isWhole(Path jar) {
    return jar.toFile().length() > 1 << 20;
  }

  static void rights(Path path, String letters) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(letters));
  }

  /** Everybody may do everything in a folder and below, and come to it. */
  static void open(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.filter(path -> !Files.isSymbolicLink(path)).toList()) {
        rights(path, "rwxrwxrwx");
      }
    }
  }

  /** The launcher as nobody, from a folder that nobody may enter, too. */
  static Program nobody(Learned learned, Path folder) throws IOException {
    Path installed = Files.createDirectories(folder.resolve("program"));
    Path given = learned.program().launcher();
    Path launcher = Files.copy(given, installed.resolve("loadwalk"));
    Files.copy(given.resolveSibling("loadwalk.jar"), installed.resolve("loadwalk.jar"));
    open(folder);
    boolean root = "root".equals(System.getProperty("user.name"));
    Program program = learned.program();
    return new Program(launcher, folder, root ? NOBODY : List.of(), program.settings());
  }

  private static Fault begun(Learned learned, String name, String typed, Deed deed) {
    return new Fault(
        name + ", a walk begun",
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Path files = TinyWalk.home(folder.resolve("files"));
          Program program = nobody(learned, folder);
          String[] words = TinyWalk.begin(home);
          words[4] = files.resolve("amp.json").toString();
          words[6] = files.resolve("bench.json").toString();
          words[1] = "stereo-only";
          deed.to(home);
          try {
            program.run(typed, words).ends(2).says("home|sessions|ilvik");
          } finally {
            open(folder);
          }
        });
  }

  private static Fault resumed(Learned learned, String name, Deed deed) {
    return new Fault(
        name + ", a walk resumed",
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Program program = nobody(learned, folder);
          program.run(TinyWalk.half(true), TinyWalk.begin(home)).ends(0);
          Journal before = Journal.only(home).isWhole();
          deed.to(home);
          Ran ran;
          try {
            ran = program.run(TinyWalk.half(false), TinyWalk.resume(home)).isPlain();
          } finally {
            open(folder);
          }
          ran.says("(?i)denied|read-only|cannot|not be");
          assertNotEquals(0, ran.code(), ran::said);
          Journal after = Journal.only(home).isWhole();
          assertEquals(before, after);
          TinyWalk.endsAsIfNothingHadHappened(program, home, learned.sheet());
        });
  }

  /** What is written is the journal, which is there and may be written. */
  private static Fault goneOn(Learned learned, String name, Deed deed) {
    return new Fault(
        name + ", a walk gone on with",
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Program program = nobody(learned, folder);
          program.run(TinyWalk.half(true), TinyWalk.begin(home)).ends(0);
          deed.to(home);
          try {
            TinyWalk.endsAsIfNothingHadHappened(program, home, learned.sheet());
          } finally {
            open(folder);
          }
        });
  }

  /** A journal names the owner's serial numbers; a sheet goes where its reader wants it. */
  private static Fault keptForItsOwner(Learned learned, String mask) {
    return new Fault(
        "files made under umask " + mask,
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Program program =
              learned.program().behind("sh", "-c", "umask " + mask + "; exec \"$@\"", "sh");
          program.run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
          program.run("", "ledger", "--home", home.toString()).ends(0);
          Path sheet = folder.resolve("sheet.html");
          program.run("", "sheet", "--html=" + sheet, "--home", home.toString()).ends(0);
          Path sessions = home.resolve("sessions");
          assertEquals("rwx------", letters(sessions));
          try (Stream<Path> kept = Files.list(sessions)) {
            for (Path file : kept.toList()) {
              assertEquals("rw-------", letters(file), file::toString);
            }
          }
          int open = 0666 & ~Integer.parseInt(mask, 8);
          assertEquals(open, (int) Files.getAttribute(sheet, "unix:mode") & 0777);
        });
  }

  private static String letters(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  /** Without a data home of its own, a walk says where it could not be kept. */
  private static Fault homeless(Learned learned, String home) {
    return new Fault(
        "HOME is «" + home + "»",
        folder -> {
          Program program =
              nobody(learned, folder)
                  .with("HOME", home)
                  .with("XDG_DATA_HOME", home)
                  .with("JAVA_TOOL_OPTIONS", "-Duser.home=/nonexistent");
          program
              .run("", "walk", "stereo-only", "--practice", "1", "--plain")
              .ends(2)
              .says("nonexistent|/dev/null|/proc");
          program.run("", "ledger").isPlain();
        });
  }
}
