package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A short walk of a made-up amplifier, typed as lines, and the sheet that comes of it. */
final class TinyWalk {
  /** One of them with a comma, which is read as a point in every language. */
  private static final List<String> LINES =
      List.of(
          "begin",
          "supplyVolts 13.8 V",
          "supplyAmps 1,6 A",
          "done",
          "arm 4",
          "outputVolts 14.2 V",
          "supplyVolts 13.7 V",
          "supplyAmps 14 A",
          "thdPercent 1",
          "done");

  /** The lines that start a step. */
  private static final List<Integer> STARTS = List.of(0, 4);

  private static final String SEQUENCE =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"tiny\",\"title\":\"Tiny\",\"tone\":"
          + "{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,\"steps\":["
          + "{\"do\":\"idle\"},{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4}]}";
  private static final String AMPLIFIER =
      "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Ilvik\",\"model\":\"T 2\",\"channels\":2,"
          + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":50}]}";
  private static final String BENCH = "{\"format\":\"loadwalk-bench/1\",\"name\":\"Bench\"}";

  private TinyWalk() {}

  /** Makes a data home that holds sequence, amplifier and bench. */
  static Path home(Path home) throws IOException {
    Files.createDirectories(home.resolve("sequences"));
    Files.writeString(home.resolve("sequences").resolve("tiny.json"), SEQUENCE);
    Files.writeString(home.resolve("amp.json"), AMPLIFIER);
    Files.writeString(home.resolve("bench.json"), BENCH);
    return home;
  }

  /** Returns the words that begin the walk in a data home. */
  static String[] begin(Path home) {
    return new String[] {
      "walk",
      "tiny",
      "--plain",
      "--amp",
      home.resolve("amp.json").toString(),
      "--bench",
      home.resolve("bench.json").toString(),
      "--home",
      home.toString()
    };
  }

  /** Returns the words that go on with it. */
  static String[] resume(Path home) {
    return new String[] {"resume", "--plain", "--home", home.toString()};
  }

  /** Returns every line. */
  static String lines() {
    return String.join("\n", LINES) + "\n";
  }

  /** Returns the lines of the first step, which leave it running, or those that follow. */
  static String half(boolean first) {
    return String.join("\n", first ? LINES.subList(0, 3) : LINES.subList(3, LINES.size())) + "\n";
  }

  /** Returns how many lines, from the first, a journal holds the facts of. */
  private static int done(Journal journal) {
    int done = 0;
    for (JsonNode fact : journal.facts()) {
      boolean next = done < LINES.size() && isLeftBy(LINES.get(done), fact);
      done += next ? 1 : 0;
    }
    return done;
  }

  /** Tells whether every line is in the journal. */
  static boolean isWhole(Journal journal) {
    return done(journal) == LINES.size();
  }

  /** Returns the lines to go on with; a step that ran is briefed afresh and started again. */
  static String linesAfter(Journal journal) {
    int done = done(journal);
    List<String> lines = new ArrayList<>();
    STARTS.stream()
        .filter(start -> start < done)
        .reduce((first, last) -> last)
        .ifPresent(
            start -> {
              boolean over = LINES.subList(start, done).contains("done");
              lines.addAll(over ? List.of() : List.of(LINES.get(start)));
            });
    lines.addAll(LINES.subList(done, LINES.size()));
    return String.join("\n", lines) + "\n";
  }

  private static boolean isLeftBy(String line, JsonNode fact) {
    String[] words = line.split(" ", 2);
    return switch (words[0]) {
      case "begin" -> fact.get("fact").asText().equals("begun");
      case "arm" -> fact.get("fact").asText().equals("armed");
      case "done" -> fact.get("fact").asText().equals("done");
      default ->
          fact.path("reading").asText().equals(words[0])
              && fact.path("text").asText().equals(words[1]);
    };
  }

  /** Ends the walk of a data home and holds that its sheet is the one of a walk without faults. */
  static void endsAsIfNothingHadHappened(Program program, Path home, String sheet)
      throws IOException, InterruptedException {
    Journal before = Journal.only(home);
    if (!isWhole(before)) {
      Ran resumed = program.run(linesAfter(before), resume(home)).ends(0);
      Journal after = Journal.only(home).isWhole().goesOnFrom(before);
      after.holdsWhatWasCalledKept(resumed.out());
      assertTrue(isWhole(after), () -> "lines are missing\n" + resumed.said());
    }
    hasSheet(sheet, program, home);
  }

  /** Holds that the sheet of a data home is the one wanted, to the byte. */
  static void hasSheet(String wanted, Program program, Path home)
      throws IOException, InterruptedException {
    List<String> expected = wanted.lines().toList();
    List<String> found = sheet(program, home).lines().toList();
    for (int i = 0; i < Math.min(expected.size(), found.size()); i++) {
      assertEquals(expected.get(i), found.get(i), "line " + (i + 1) + " of the sheet");
    }
    assertEquals(expected.size(), found.size(), "lines of the sheet");
  }

  /**
   * Returns the sheet as JSON and CSV without the walk's name, its time and how long its step had
   * run, which nobody knows of one that was taken up again.
   */
  static String sheet(Program program, Path home) throws IOException, InterruptedException {
    StringBuilder both = new StringBuilder();
    for (String format : List.of("--json", "--csv")) {
      Ran ran = program.run("", "sheet", format, "-", "--home", home.toString()).ends(0);
      both.append(ran.out());
    }
    return both.toString()
        .replaceAll("(?m)^.*heldSeconds.*$", "HELD")
        .replaceAll("(\"item\" : \"duration\",[^}]*\"outcome\" : )[^}]*", "$1HELD")
        .replaceAll("\\d{4}-\\d\\d-\\d\\dT[0-9:.]+Z", "TIME")
        .replaceAll("\\d{4}-\\d\\d-\\d\\d-ilvik-t-2(-\\d+)?", "NAME")
        .replaceAll("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d UTC", "TIME");
  }
}
