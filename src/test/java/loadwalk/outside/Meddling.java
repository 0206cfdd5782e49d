package loadwalk.outside;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Files that another changes or takes away while a step runs. */
final class Meddling {
  private Meddling() {}

  /** Does something to a data home and the journal in it. */
  private interface Deed {
    void to(Path home, Path journal) throws IOException;
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double part = random.nextDouble();
      all.add(told(learned, "journal cut at " + part, (home, file) -> cut(file, part)));
      all.add(turned(learned, part));
    }
    all.add(told(learned, "journal emptied", (home, file) -> Files.write(file, new byte[0])));
    all.add(told(learned, "journal deleted", (home, file) -> Files.delete(file)));
    all.add(told(learned, "journal longer by another's line", (home, file) -> append(file, "x\n")));
    all.add(told(learned, "journal longer by half a line", (home, file) -> append(file, "{\"se")));
    all.add(
        told(
            learned,
            "journal replaced by an equal one",
            (home, file) -> {
              byte[] bytes = Files.readAllBytes(file);
              Files.delete(file);
              Files.write(file, bytes);
            }));
    all.add(
        told(
            learned,
            "journal renamed",
            (home, file) -> Files.move(file, file.resolveSibling("elsewhere.jsonl"))));
    all.add(
        told(
            learned,
            "folder of the walks renamed",
            (home, file) -> Files.move(home.resolve("sessions"), home.resolve("elsewhere"))));
    all.add(
        told(
            learned,
            "folder replaced by an empty one",
            (home, file) -> {
              Files.move(home.resolve("sessions"), home.resolve("elsewhere"));
              Files.createDirectory(home.resolve("sessions"));
            }));
    all.add(
        unmoved(
            learned,
            "sequence gone",
            (home, file) -> Files.delete(home.resolve("sequences").resolve("tiny.json"))));
    all.add(
        unmoved(
            learned,
            "sequence spoiled",
            (home, file) ->
                Files.writeString(home.resolve("sequences").resolve("tiny.json"), "{\"")));
    all.add(
        unmoved(
            learned,
            "amplifier's file gone",
            (home, file) -> Files.delete(home.resolve("amp.json"))));
    for (String table : List.of("wire", "fuse", "limits", "ampacity", "insulation")) {
      all.add(
          unmoved(
              learned,
              "own table " + table + " spoiled",
              (home, file) -> {
                Files.createDirectories(home.resolve("data"));
                Files.writeString(home.resolve("data").resolve(table + ".csv"), "a,b\n1,x\n");
              }));
    }
    return all;
  }

  private static void cut(Path file, double part) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, (int) (part * bytes.length)));
  }

  private static void turn(Path file, double part) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[(int) (part * bytes.length)] ^= 1;
    Files.write(file, bytes);
  }

  private static void append(Path file, String text) throws IOException {
    Files.write(file, text.getBytes(UTF_8), StandardOpenOption.APPEND);
  }

  /** The program says that its journal is not what it was, and calls nothing kept from then on. */
  private static Fault told(Learned learned, String name, Deed deed) {
    return new Fault(
        name,
        folder -> {
          Path home = TinyWalk.home(folder);
          Program.Running running = learned.program().start(TinyWalk.begin(home));
          running.type(TinyWalk.half(true)).hears("kept idle supplyAmps");
          Path journal = Journal.only(home).file();
          deed.to(home, journal);
          byte[] left = Files.exists(journal) ? Files.readAllBytes(journal) : new byte[0];
          running.type(TinyWalk.half(false));
          Ran ran = running.end().isPlain();
          ran.says("(?i)(gone|changed|replaced|damaged|not where|is not there|longer|shorter)");
          assertNotEquals(0, ran.code(), ran.said());
          assertEquals(2, ran.lines("kept "), ran::said);
          if (Files.exists(journal)) {
            assertEquals(new String(left, UTF_8), Files.readString(journal), "it was written on");
          }
        });
  }

  /** A byte that turns under a running walk is found by whoever reads the journal next. */
  private static Fault turned(Learned learned, double part) {
    return new Fault(
        "journal's byte at " + part,
        folder -> {
          Path home = TinyWalk.home(folder);
          Program.Running running = learned.program().start(TinyWalk.begin(home));
          running.type(TinyWalk.half(true)).hears("kept idle supplyAmps");
          turn(Journal.only(home).file(), part);
          running.type(TinyWalk.half(false)).end().isPlain();
          for (String format : List.of("--json", "--html")) {
            Ran sheet =
                learned.program().run("", "sheet", format, "-", "--home", home.toString()).ends(4);
            sheet.says("(?i)damaged");
          }
          String left = Files.readString(Journal.only(home).file());
          learned.program().run("", TinyWalk.resume(home)).isPlain();
          assertEquals(left, Files.readString(Journal.only(home).file()), "it was written on");
        });
  }

  /** What a walk has read stays with it: the file may be gone. */
  private static Fault unmoved(Learned learned, String name, Deed deed) {
    return new Fault(
        name,
        folder -> {
          Path home = TinyWalk.home(folder);
          Program.Running running = learned.program().start(TinyWalk.begin(home));
          running.type(TinyWalk.half(true)).hears("kept idle supplyAmps");
          deed.to(home, Journal.only(home).file());
          running.type(TinyWalk.half(false));
          Ran ran = running.end().ends(0);
          Journal.only(home).isWhole().holdsWhatWasCalledKept(ran.out());
          assertEquals(6, ran.lines("kept "), ran::said);
        });
  }
}
