package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** A file that takes no more from each byte on, and a file system that has so many pages left. */
final class FullDisk {
  private static final int WAITING_EVERY = 400;
  private static final int PAGE = 4096;
  private static final int PAGES = 3;

  private FullDisk() {}

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (long n = 0; n <= learned.bytes(); n++) {
      long bytes = n;
      String name = "no file beyond " + bytes + " bytes";
      all.add(new Fault(name, folder -> cut(learned, TinyWalk.home(folder), bytes)));
    }
    for (long n = WAITING_EVERY; n < learned.bytes(); n += WAITING_EVERY) {
      long bytes = n + random.nextInt(WAITING_EVERY) - WAITING_EVERY / 2;
      String name = "no file beyond " + bytes + " bytes, then room";
      all.add(new Fault(name, folder -> roomIsMade(learned, TinyWalk.home(folder), bytes)));
    }
    if (canMount()) {
      for (int n = 0; n <= PAGES; n++) {
        int pages = n;
        all.add(
            new Fault(
                "a file system with " + pages + " pages left",
                folder -> pagesLeft(learned, folder, pages)));
      }
    }
    return all;
  }

  private static void cut(Learned learned, Path home, long bytes) throws Exception {
    Program narrow = learned.program().behind("prlimit", "--fsize=" + bytes);
    Ran ran = narrow.run(TinyWalk.lines(), TinyWalk.begin(home)).isPlain();
    if (ran.code() == 0) {
      TinyWalk.hasSheet(learned.sheet(), learned.program(), home);
      return;
    }
    ran.ends(2).says("\\.jsonl|-ilvik-t-2\\b").says("The disk (is full|failed)");
    nothingIsHalf(home);
    if (Journal.in(home).isEmpty()) {
      assertEquals(0, ran.lines("kept "), ran.out());
      learned.program().run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
      TinyWalk.hasSheet(learned.sheet(), learned.program(), home);
      return;
    }
    Journal.only(home).isWhole().holdsWhatWasCalledKept(ran.out());
    TinyWalk.endsAsIfNothingHadHappened(learned.program(), home, learned.sheet());
  }

  /** No half file of any name is left in the data home. */
  private static void nothingIsHalf(Path home) throws IOException {
    if (Files.isDirectory(home.resolve("sessions"))) {
      try (Stream<Path> files = Files.list(home.resolve("sessions"))) {
        files
            .map(file -> file.getFileName().toString())
            .forEach(name -> assertTrue(name.matches(".*\\.(jsonl|lock|end)"), name + " is left"));
      }
    }
  }

  private static void roomIsMade(Learned learned, Path home, long bytes) throws Exception {
    Program narrow = learned.program().behind("prlimit", "--fsize=" + bytes + ":");
    Program.Running running = walkTyped(narrow, home);
    if (running.isAlive()) {
      String pid = String.valueOf(running.pid());
      assertEquals(0, Tools.run("prlimit", "--pid", pid, "--fsize=unlimited:"));
    }
    goesOn(learned, home, running);
  }

  /** Types all lines and waits until each was kept or refused, or until the program has ended. */
  private static Program.Running walkTyped(Program program, Path home) throws Exception {
    Program.Running running = program.start(TinyWalk.begin(home));
    running.type(TinyWalk.lines() + "help\n").hearsBeforeItsEnd("READING VALUE ");
    return running;
  }

  /** It goes on when told to; what was typed while it waited was refused and is typed again. */
  private static void goesOn(Learned learned, Path home, Program.Running running) throws Exception {
    Ran ran = running.type("retry\n").end().isPlain();
    if (Journal.in(home).isEmpty()) {
      learned.program().run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
      TinyWalk.hasSheet(learned.sheet(), learned.program(), home);
      return;
    }
    ran.ends(0);
    Journal.only(home).isWhole().holdsWhatWasCalledKept(ran.out());
    TinyWalk.endsAsIfNothingHadHappened(learned.program(), home, learned.sheet());
  }

  private static boolean canMount() {
    try {
      Path folder = Files.createTempDirectory("loadwalk-mount");
      boolean can = Tools.run("mount", "-t", "tmpfs", "none", folder.toString()) == 0;
      if (can) {
        Tools.run("umount", folder.toString());
      }
      Files.delete(folder);
      return can;
    } catch (IOException | InterruptedException e) {
      return false;
    }
  }

  private static void pagesLeft(Learned learned, Path folder, int pages) throws Exception {
    Path home = Files.createDirectories(folder.resolve("mounted"));
    // Three pages are the files of the data home, one the ballast.
    String size = "size=" + (PAGES + 1 + pages) * PAGE;
    assertEquals(0, Tools.run("mount", "-t", "tmpfs", "-o", size, "none", home.toString()));
    try {
      TinyWalk.home(home);
      Path ballast = Files.write(home.resolve("ballast"), new byte[PAGE]);
      Program.Running running = walkTyped(learned.program(), home);
      boolean full = !running.said().contains("stereo-4 done");
      assertTrue(!full || running.said().contains("The disk is full"), running::said);
      Tools.run("mount", "-o", "remount,size=1M", home.toString());
      Files.delete(ballast);
      if (full) {
        goesOn(learned, home, running);
      } else {
        running.end().ends(0);
        TinyWalk.hasSheet(learned.sheet(), learned.program(), home);
      }
    } finally {
      Tools.run("umount", "-l", home.toString());
    }
  }
}
