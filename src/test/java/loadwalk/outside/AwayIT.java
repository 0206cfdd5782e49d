package loadwalk.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A journal, its folder or its home goes away in mid-walk: the walk is written whole, elsewhere.
 */
class AwayIT {
  private static final String HELD = "NOT ON DISK";
  private static final String ANSWERED = "Loadwalk switches nothing.";
  private static final String ANEW = "The whole walk is written anew in ";

  @TempDir Path folder;

  private Path home;
  private Path other;
  private Path journal;
  private Program.Running running;

  /** What befalls the journal. */
  private enum Loss {
    DELETED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        Files.delete(journal);
      }
    },
    RENAMED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        Files.move(journal, journal.resolveSibling("elsewhere.jsonl"));
      }
    },
    REPLACED_BY_A_COPY {
      @Override
      void befall(Path home, Path journal) throws IOException {
        byte[] bytes = Files.readAllBytes(journal);
        Files.delete(journal);
        Files.write(journal, bytes);
      }
    },
    REPLACED_BY_AN_OLDER_COPY {
      @Override
      void befall(Path home, Path journal) throws IOException {
        byte[] bytes = Files.readAllBytes(journal);
        int end = new String(bytes, UTF_8).lastIndexOf('\n', bytes.length - 2) + 1;
        Files.delete(journal);
        Files.write(journal, Arrays.copyOf(bytes, end));
      }
    },
    SESSIONS_DELETED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        delete(home.resolve("sessions"));
      }
    },
    SESSIONS_RENAMED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        Files.move(home.resolve("sessions"), home.resolve("elsewhere"));
      }
    },
    SESSIONS_EMPTIED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        Files.move(home.resolve("sessions"), home.resolve("elsewhere"));
        Files.createDirectory(home.resolve("sessions"));
      }
    },
    HOME_DELETED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        delete(home);
      }
    },
    HOME_RENAMED {
      @Override
      void befall(Path home, Path journal) throws IOException {
        Files.move(home, home.resolveSibling("elsewhere"));
      }
    };

    abstract void befall(Path home, Path journal) throws IOException;
  }

  private static void delete(Path below) throws IOException {
    try (Stream<Path> all = Files.walk(below)) {
      for (Path path : all.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(path);
      }
    }
  }

  @BeforeEach
  void walkAStep() throws Exception {
    home = TinyWalk.home(folder.resolve("home"));
    other = Files.createDirectories(folder.resolve("other"));
    running = program().start(TinyWalk.begin(home));
    running.type(TinyWalk.half(true)).hears("kept idle supplyAmps");
    journal = Journal.only(home).file();
  }

  private Program program() {
    return Program.shipped(folder);
  }

  /** Lets the journal go and types on until the program holds the walk. */
  private void lose(Loss loss) throws Exception {
    loss.befall(home, journal);
    running.type("note a smell of dust\n").hears(HELD).hears("write-all PLACE");
  }

  /** Types the rest where the walk goes on; every line is in the one journal there, once. */
  private Journal goesOnIn(Path file) throws Exception {
    running.hears(ANEW + file).hears("kept note: a smell of dust");
    Ran ran = running.type(TinyWalk.half(false)).end().ends(0);
    String readings = ran.out().replaceAll("(?m)^kept note: .*\\n", "");
    Journal whole = Journal.read(file).isWhole().holdsWhatWasCalledKept(readings);
    assertTrue(TinyWalk.isWhole(whole), ran::said);
    long anew =
        whole.facts().stream().filter(f -> f.get("fact").asText().equals("written-anew")).count();
    assertEquals(1, anew, "the record does not say that it was written anew");
    return whole;
  }

  /** What tells that records are missing at the end goes along with the walk. */
  private void missingRecordIsSeen(Path dataHome, Path file) throws Exception {
    String text = Files.readString(file);
    Files.writeString(file, text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1));
    program().run("", "sheet", "--home", dataHome.toString()).ends(4);
  }

  private void sheetSaysSo(Path dataHome) throws Exception {
    program()
        .run("", "sheet", "--home", dataHome.toString())
        .ends(0)
        .says("(?s)Loadwalk\\s+wrote\\s+the\\s+whole\\s+walk\\s+anew");
  }

  @ParameterizedTest
  @EnumSource
  void walk_isWrittenAnewWhereItWas(Loss loss) throws Exception {
    lose(loss);
    running.type("write-all\n");
    goesOnIn(journal);
    sheetSaysSo(home);
    missingRecordIsSeen(home, journal);
  }

  @ParameterizedTest
  @EnumSource
  void walk_isWrittenAnewInAnotherFolder(Loss loss) throws Exception {
    lose(loss);
    running.type("write-all " + other + "\n");
    Path file = other.resolve("sessions").resolve(journal.getFileName());
    goesOnIn(file);
    assertTrue(running.said().contains("--home " + other), running::said);
    sheetSaysSo(other);
    missingRecordIsSeen(other, file);
  }

  @ParameterizedTest
  @EnumSource
  void walk_isWrittenAnewInAFile(Loss loss) throws Exception {
    lose(loss);
    Path file = other.resolve("saved.jsonl");
    running.type("write-all " + file + "\n");
    goesOnIn(file);
    assertTrue(running.said().contains("the folder sessions of a data home"), running::said);
  }

  /** What stands at a place, and whether the walk may take it. */
  private interface Occupied {
    void by(Path file) throws Exception;
  }

  @Test
  void placeThatHoldsSomethingElse_isLeftAsItIs_andTheWalkStillGoesOnElsewhere() throws Exception {
    byte[] before = Files.readAllBytes(journal);
    lose(Loss.DELETED);
    Map<String, Occupied> occupied = new LinkedHashMap<>();
    occupied.put("a text", file -> Files.writeString(file, "my notes\n"));
    occupied.put("nothing yet", file -> Files.write(file, new byte[0]));
    occupied.put(
        "another walk",
        file -> {
          Path third = TinyWalk.home(folder.resolve("third"));
          program().run(TinyWalk.lines(), TinyWalk.begin(third)).ends(0);
          Files.copy(Journal.only(third).file(), file);
        });
    occupied.put(
        "this walk and more",
        file -> Files.writeString(file, new String(before, UTF_8) + "{\"seq\":9}\n"));
    occupied.put("this walk, gone on with by another program", file -> goneOnWith(before, 5, file));
    occupied.put("an older state of this walk, gone on with", file -> goneOnWith(before, 2, file));
    occupied.put(
        "this walk, a letter changed",
        file -> Files.writeString(file, new String(before, UTF_8).replace("13.8", "13.9")));
    occupied.put("a link", file -> Files.createSymbolicLink(file, folder.resolve("led to")));
    occupied.put("a pipe", file -> Tools.run("mkfifo", file.toString()));
    int number = 0;
    for (Map.Entry<String, Occupied> each : occupied.entrySet()) {
      Path file = other.resolve("taken-" + ++number + ".jsonl");
      each.getValue().by(file);
      Optional<String> stood = text(file);
      String answer = answer("write-all " + file);
      assertEquals(stood, text(file), each.getKey() + " was written over");
      assertTrue(answer.contains(file.getFileName().toString()), answer);
      assertFalse(answer.contains(ANEW), each.getKey() + " took the walk");
    }
    assertFalse(Files.exists(folder.resolve("led to")), "a link was followed");
    Path free = other.resolve("free.jsonl");
    String answer = answer("write-all " + free);
    assertTrue(answer.contains(ANEW + free), answer);
    running.end();
    assertEquals("", Journal.read(free).rest());
    System.out.println("places that hold something else: " + occupied.size() + " tried");
  }

  /** Goes on from the first records of a journal in another home, and copies what comes of it. */
  private void goneOnWith(byte[] whole, int records, Path copy) throws Exception {
    Path theirs = TinyWalk.home(Files.createTempDirectory(folder, "theirs"));
    Files.createDirectories(theirs.resolve("sessions"));
    List<String> lines = new String(whole, UTF_8).lines().limit(records).toList();
    Files.writeString(
        theirs.resolve("sessions").resolve(journal.getFileName()), String.join("\n", lines) + "\n");
    program().run("note theirs\n", TinyWalk.resume(theirs)).ends(0);
    Files.copy(Journal.only(theirs).file(), copy);
  }

  /** Types a line and returns what is said until the next one was answered too. */
  private String answer(String line) throws InterruptedException {
    String before = running.said();
    running.type(line + "\nhelp\n");
    String more = "";
    for (int i = 0; i < 3000 && !more.contains(ANSWERED); i++) {
      Thread.sleep(10);
      more = running.said().substring(before.length());
    }
    assertTrue(more.contains(ANSWERED), more);
    return more;
  }

  private static Optional<String> text(Path file) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        ? Optional.of(Files.readString(file))
        : Optional.empty();
  }

  @ParameterizedTest
  @EnumSource(names = {"DELETED", "SESSIONS_DELETED", "HOME_RENAMED"})
  void walkWrittenAnew_isLockedThere(Loss loss) throws Exception {
    lose(loss);
    for (String place : List.of("", other.toString())) {
      Path there = place.isEmpty() ? home : other;
      String answer = answer("write-all " + place);
      assertTrue(answer.contains(ANEW + there), answer);
      Ran second = program().run("", TinyWalk.resume(there));
      second.ends(3).says("Another Loadwalk has this walk open");
      if (place.isEmpty()) {
        Files.delete(journal);
        running.type("note once more\n");
      }
    }
    running.end();
  }

  @Test
  void walkThatCanBeWritten_isNotWrittenAnew() throws Exception {
    byte[] before = Files.readAllBytes(journal);
    Ran ran = running.type("write-all " + other + "\n").end().ends(0);
    ran.says("Everything is on the disk");
    assertEquals(new String(before, UTF_8), Files.readString(journal));
    try (Stream<Path> files = Files.list(other)) {
      assertEquals(0, files.count());
    }
  }

  @Test
  void placeThatCannotBe_isToldInASentence() throws Exception {
    lose(Loss.DELETED);
    Files.createDirectories(other.resolve("sessions"));
    Path led = Files.createDirectories(folder.resolve("led"));
    Path linked = Files.createDirectories(folder.resolve("linked"));
    Files.createSymbolicLink(linked.resolve("sessions"), led);
    Map<String, String> wrong = new LinkedHashMap<>();
    wrong.put(other.resolve("none").toString(), "There is no folder");
    wrong.put(other.resolve("none").resolve("x.jsonl").toString(), "There is no folder");
    wrong.put(other.resolve("a b.jsonl").toString(), "is made of letters a to z");
    wrong.put(linked.toString(), "is a link that leads out of the data home");
    wrong.put("/proc/x.jsonl", "cannot be opened for writing");
    wrong.put("\u0001", "There is no folder");
    for (Map.Entry<String, String> each : wrong.entrySet()) {
      String answer = answer("write-all " + each.getKey());
      assertTrue(answer.contains(each.getValue()), each.getKey() + " was answered: " + answer);
    }
    Ran ran = running.end().ends(2);
    assertFalse(ran.said().contains(ANEW), ran::said);
    try (Stream<Path> files = Files.list(led)) {
      assertEquals(0, files.count(), "it was written through a link");
    }
  }
}
