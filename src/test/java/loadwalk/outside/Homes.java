package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Journals of other names and copies of them, and what stands in the way of an operator's files.
 */
final class Homes {
  private static final int AT_ONCE = 4;

  /** The heaviest load of the operator's own sequence, which the stock one of its name has not. */
  private static final String OWN =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"full-walk\",\"title\":\"Own\",\"tone\":"
          + "{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,\"steps\":["
          + "{\"do\":\"measure\",\"mode\":\"bridged\",\"ohms\":0.7}]}";

  private Homes() {}

  /** Readies a data home. */
  private interface Deed {
    void to(Path home) throws Exception;
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    all.add(renamed(learned));
    all.add(copied(learned));
    all.add(begunAtOnce(learned));
    all.add(
        ofSequence(
            learned,
            "a folder",
            "full-walk.json is a folder, a pipe or a device",
            home -> {
              Files.delete(own(home));
              Files.createDirectory(own(home));
            }));
    all.add(
        ofSequence(
            learned,
            "a pipe",
            "full-walk.json is a folder, a pipe or a device",
            home -> {
              Files.delete(own(home));
              new ProcessBuilder("mkfifo", own(home).toString()).start().waitFor();
            }));
    all.add(
        ofSequence(
            learned,
            "a lost link",
            "full-walk.json is a link that leads nowhere",
            home -> {
              Files.delete(own(home));
              Files.createSymbolicLink(own(home), home.resolve("gone.json"));
            }));
    all.add(
        ofSequence(
            learned,
            "in a folder that is a lost link",
            "sequences is a link that leads nowhere",
            home -> {
              Files.move(home.resolve("sequences"), home.resolve("away"));
              Files.createSymbolicLink(home.resolve("sequences"), home.resolve("gone"));
            }));
    if (Rights.isWhole(learned.program().launcher().resolveSibling("loadwalk.jar"))) {
      all.add(
          ofSequence(
              learned,
              "closed",
              "sequences/full-walk.json cannot be read: access is denied",
              home -> Rights.rights(own(home), "---------")));
      all.add(
          ofSequence(
              learned,
              "in a folder that is closed",
              "full-walk.json cannot be read: access is denied",
              home -> Rights.rights(home.resolve("sequences"), "---------")));
      all.add(
          ofSequence(
              learned,
              "beside a table that is closed",
              "data/limits.csv cannot be read: access is denied",
              home -> {
                Path data = Files.createDirectories(home.resolve("data"));
                Rights.rights(Files.createFile(data.resolve("limits.csv")), "---------");
              }));
      all.add(
          closed(
              learned,
              "journal closed",
              4,
              "cannot be read: access is denied",
              home -> Rights.rights(Journal.in(home).get(0), "---------")));
      all.add(unreadIndex(learned));
      all.add(
          closed(
              learned,
              "sessions closed",
              2,
              "sessions cannot be read: access is denied",
              home -> Rights.rights(home.resolve("sessions"), "---------")));
    }
    return all;
  }

  private static Path own(Path home) {
    return home.resolve("sequences").resolve("full-walk.json");
  }

  /** Whatever has the name of the own sequence, the stock one is not walked in its place. */
  private static Fault ofSequence(Learned learned, String name, String told, Deed deed) {
    return new Fault(
        "own sequence is " + name,
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Files.writeString(own(home), OWN);
          Program program = Rights.nobody(learned, folder);
          String[] plan = {
            "plan",
            "full-walk",
            "--amp",
            home.resolve("amp.json").toString(),
            "--bench",
            home.resolve("bench.json").toString(),
            "--home",
            home.toString()
          };
          program.run("", plan).ends(0).says("0\\.7 Ω");
          try {
            deed.to(home);
            program.run("", plan).ends(2).says(told);
            String[] walk = {
              "walk", "full-walk", "--practice", "1", "--fill", "--home", home.toString()
            };
            program.run("", walk).ends(2).says(told);
          } finally {
            Rights.open(folder);
          }
          assertEquals(List.of(), Journal.in(home), "a walk was begun");
        });
  }

  private static Fault closed(Learned learned, String name, int code, String told, Deed deed) {
    return new Fault(
        name + ", the ledger",
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Program program = Rights.nobody(learned, folder);
          program.run(TinyWalk.half(true), TinyWalk.begin(home)).ends(0);
          String[] ledger = {"ledger", "--home", home.toString()};
          program.run("", ledger).ends(0);
          try {
            deed.to(home);
            program.run("", ledger).ends(code).says(told);
            Ran resumed = program.run("", TinyWalk.resume(home)).ends(2).says(told);
            assertFalse(resumed.said().contains("was not written"), resumed::said);
          } finally {
            Rights.open(folder);
          }
        });
  }

  /** The index only saves time: one that cannot be read or written is as good as none. */
  private static Fault unreadIndex(Learned learned) {
    return new Fault(
        "index closed, a folder, a pipe",
        folder -> {
          Path home = TinyWalk.home(folder.resolve("home"));
          Program program = Rights.nobody(learned, folder);
          program.run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
          String[] words = {"ledger", "--home", home.toString()};
          String ledger = program.run("", words).ends(0).out();
          Path index = home.resolve("sessions/.ledger-index");
          Rights.rights(index, "---------");
          assertEquals(ledger, program.run("", words).ends(0).out());
          Files.delete(index);
          Files.createDirectory(index);
          assertEquals(ledger, program.run("", words).ends(0).out());
          Files.delete(index);
          new ProcessBuilder("mkfifo", index.toString()).start().waitFor();
          assertEquals(ledger, program.run("", words).ends(0).out());
        });
  }

  private static Path moved(Path journal, String name) throws IOException {
    return Files.move(journal, journal.resolveSibling(name + ".jsonl"));
  }

  /** Every name that is printed is one that every command finds. */
  private static Fault renamed(Learned learned) {
    return new Fault(
        "journal renamed, then resumed by its name, by a start of it and by its path",
        folder -> {
          Program program = learned.program();
          for (String named : List.of("left-van", "left", "sessions/left-van.jsonl", "2026")) {
            Path home = TinyWalk.home(folder.resolve(named.replace('/', '-')));
            program.run(TinyWalk.half(true), TinyWalk.begin(home)).ends(0);
            String inside = Journal.in(home).get(0).getFileName().toString().replace(".jsonl", "");
            Path journal = moved(Journal.in(home).get(0), "left-van");
            String typed = named.contains("/") ? journal.toString() : named;
            typed = named.equals("2026") ? inside.substring(0, 10) : typed;
            Ran ledger = program.run("", "ledger", "--home", home.toString()).ends(0);
            ledger.says("left-van").says(inside);
            String[] resume = {"resume", typed, "--plain", "--home", home.toString()};
            program.run(TinyWalk.half(false), resume).ends(0);
            assertTrue(TinyWalk.isWhole(Journal.only(home)), typed);
            assertEquals(
                program.run("", "sheet", inside, "--home", home.toString()).ends(0).out(),
                program.run("", "sheet", typed, "--home", home.toString()).ends(0).out());
          }
        });
  }

  private static Fault copied(Learned learned) {
    return new Fault(
        "journal copied, and one of both walked on",
        folder -> {
          Program program = learned.program();
          Path home = TinyWalk.home(folder);
          program.run(TinyWalk.half(true), TinyWalk.begin(home)).ends(0);
          Path journal = Journal.in(home).get(0);
          Path copy = Files.copy(journal, journal.resolveSibling("copy.jsonl"));
          String[] ledger = {"ledger", "--home", home.toString()};
          String name = journal.getFileName().toString().replace(".jsonl", "");
          program.run("", ledger).ends(0).says("(?m)^1 walk$").says("copy is a copy of " + name);
          String[] resume = {"resume", "copy", "--plain", "--home", home.toString()};
          program.run(TinyWalk.half(false), resume).ends(0);
          program
              .run("", ledger)
              .ends(0)
              .says("(?m)^1 walk$")
              .says(name + " is a copy of copy up\\s+to record");
          String sheet = program.run("", "sheet", "copy", "--home", home.toString()).ends(0).out();
          Files.delete(journal);
          Files.move(copy, journal);
          assertEquals(
              sheet, program.run("", "sheet", name, "--home", home.toString()).ends(0).out());
        });
  }

  private static Fault begunAtOnce(Learned learned) {
    return new Fault(
        AT_ONCE + " walks of one model begun at once",
        folder -> {
          Path home = TinyWalk.home(folder);
          List<Program.Running> running = new ArrayList<>();
          for (int i = 0; i < AT_ONCE; i++) {
            running.add(learned.program().start(TinyWalk.begin(home)));
          }
          for (Program.Running one : running) {
            one.type(TinyWalk.lines()).end().ends(0);
          }
          assertEquals(AT_ONCE, Journal.in(home).size());
          for (Path journal : Journal.in(home)) {
            assertTrue(TinyWalk.isWhole(Journal.read(journal)), journal.toString());
          }
          Ran ledger = learned.program().run("", "ledger", "--home", home.toString()).ends(0);
          ledger.says("(?m)^" + AT_ONCE + " walks$");
        });
  }
}
