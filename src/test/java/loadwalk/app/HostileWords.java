package loadwalk.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Runs every command that prints text, one after the other, on names that are out for harm. */
final class HostileWords {
  /** What a file may hold. */
  static final String KEPT = "\u00c9vil \u00ab\u03a9\u00bb \u97f3\ud83d\ude00e\u0301 \u00bd";

  /** What is typed, or refused in a file. */
  static final String NAME = KEPT + " \u202egpj.\u001b[2J\u0007\u009b1m\u2028";

  /** What words of a command line may hold besides. */
  static final String WORD = NAME + "\ud800 \r\n\u0000\t\uffff";

  /** Stands ahead of what a command printed, with the number of the command and its exit code. */
  static final String MARK = "== ";

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path home;
  private final List<String> flags;
  private int number;

  private HostileWords(Path home, List<String> flags) {
    this.home = home;
    this.flags = flags;
  }

  /**
   * Runs all commands.
   *
   * @param words a folder that is there, and the words added to every command
   */
  public static void main(String[] words) throws IOException {
    List<String> flags = List.of(words).subList(1, words.length);
    new HostileWords(Path.of(words[0]), flags).all();
    System.out.flush();
    System.exit(0);
  }

  private void all() throws IOException {
    Path amp = amplifier();
    Path bench = bench();
    Path sequence = sequence();
    Path bad = Files.writeString(home.resolve("bad.json"), "{\"format\":\"" + NAME + "\"");
    Path odd = Files.writeString(home.resolve("odd.json"), oddAmplifier());
    walks(amp, bench, odd);
    run("check", amp, bench, sequence, bad, odd, NAME, WORD, home);
    run("plan", "own-walk", "--amp", amp, "--bench", bench);
    run("plan", sequence, "--amp", amp, "--columns", "50");
    run("plan", WORD, "--amp", amp);
    run("plan", bad, "--amp", odd, "--bench", NAME);
    run("plan", "own-walk", "--amp", amp, "--html", NAME + "/x.html");
    run("plan", "own-walk", "--amp", amp, "--html", home.resolve("x"), "--csv");
    reports();
    rehearse(amp);
    waves();
    run("meters", "--bench", bench);
    run("meters", "--bench", WORD);
    run("meters", "--bench", bad);
    run("meters", "--example", WORD);
    run("meters", "--keep", WORD, "--practice");
    run("meters", "--example");
    usage();
    Files.createDirectories(home.resolve("other/data"));
    Files.writeString(home.resolve("other/data/wire.csv"), NAME + "," + NAME + "\n" + NAME);
    run("ledger", "--home", home.resolve("other"));
    run("ledger", "--home", WORD);
    run("ledger", "--home", home.resolve(name("no home")));
  }

  private void walks(Path amp, Path bench, Path odd) {
    typed("", "walk", "own-walk", "--practice", "--fill");
    String lines = "begin\nnote " + NAME + "\n" + NAME + "\nfill\nskip " + NAME + "\n";
    String asked = "brief\nhelp\nsheet\nplan\nledger\nwave " + NAME + "\nset " + NAME + "\nquit\n";
    typed(lines + asked, "walk", "own-walk", "--plain", "--amp", amp, "--bench", bench);
    typed(
        "outputVolts 3\nstand outputVolts " + NAME + "\nsheet\nquit\nquit\n", "resume", "--plain");
    typed("", "walk", "own-walk", "--plain", "--amp", odd);
    typed("", "walk", "own-walk", "--plain", "--amp", name("no file"));
    typed("", "walk", WORD, "--plain", "--practice");
    typed("", "walk", "own-walk", "--speed", WORD);
    typed("", "walk", "own-walk", WORD);
    typed("", "walk", "own-walk", "--practice", WORD);
    typed("", "walk", "own-walk");
    typed("", "resume", WORD, "--plain");
    typed("");
  }

  private void reports() throws IOException {
    String[] walks = walkNames();
    run("sheet");
    run("sheet", walks[0], "--columns", "40", "--show-serial");
    run("sheet", walks[1]);
    run("sheet", WORD);
    run("sheet", walks[0], "--csv", home.resolve("none").resolve(name("x")));
    run("sheet", walks[0], "--csv", WORD, "--html", WORD);
    run("ledger");
    run("ledger", "--filter", WORD);
    run("ledger", "--sort", WORD);
    run("ledger", "--columns", WORD);
    run("ledger", "--compare", walks[0] + "," + walks[1]);
    run("ledger", "--compare", WORD + "," + walks[1]);
    run("replay", walks[0], walks[1], WORD);
  }

  private String[] walkNames() throws IOException {
    try (Stream<Path> files = Files.list(home.resolve("sessions"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".jsonl"))
          .map(file -> file.substring(0, file.length() - ".jsonl".length()))
          .sorted()
          .toArray(String[]::new);
    }
  }

  private void rehearse(Path amp) throws IOException {
    ObjectNode step = JSON.createObjectNode().set(NAME, JSON.createObjectNode().put(NAME, NAME));
    ObjectNode line = JSON.createObjectNode().put("name", KEPT).put(NAME, 1);
    line.set("amp", JSON.readTree(amp.toFile()));
    line.set("answers", step);
    Path lines = Files.writeString(home.resolve("lines.jsonl"), line + "\n{\"" + NAME + "\"\n");
    // The one command whose output is JSON whatever is asked: it has the names as they are.
    run("rehearse", "--sequence", "own-walk", lines);
    run("rehearse", "--sequence", "own-walk", WORD);
    run("rehearse", "--sequence", WORD, lines);
    run("rehearse", "--sequence", home.resolve("bad.json"), lines);
  }

  private void waves() throws IOException {
    Path wav = home.resolve(name("tone") + ".wav");
    run("tone", wav, "--seconds", "1", "--steps", "-6:0:3");
    run("tone", wav, "--steps", WORD);
    run("tone", WORD);
    run("tone", home.resolve("none").resolve(name("x")));
    run("tone", wav, "--hertz", WORD);
    run("wave", wav, "--limit", "1");
    run("wave", WORD);
    run("wave", home.resolve(name("none")));
    run("wave", home);
    run("wave", wav, "--time-unit", WORD);
    Path csv = home.resolve(name("scope") + ".csv");
    Files.writeString(csv, NAME + ";" + NAME + "\n" + NAME + "\n0,1\n");
    run("wave", csv);
    run("wave", wav, "--html", home.resolve("none").resolve(name("x")));
  }

  private void usage() {
    run("--help");
    run("--version");
    run(WORD);
    run("--" + WORD);
    for (String command : Main.COMMANDS) {
      run(command, "--help");
      run(command, "--version");
      run(command, "--" + WORD, WORD);
    }
  }

  /** Returns a name that the file system of this locale takes. */
  private static String name(String plain) {
    try {
      return Path.of(plain + " " + NAME).toString();
    } catch (InvalidPathException asciiOnly) {
      return plain;
    }
  }

  private Path amplifier() throws IOException {
    ObjectNode amp = JSON.createObjectNode().put("format", "loadwalk-amplifier/1");
    amp.put("maker", KEPT).put("model", KEPT).put("serial", KEPT).put("class", "AB");
    return Files.writeString(home.resolve("amp.json"), amp.toString());
  }

  private static String oddAmplifier() {
    return JSON.createObjectNode()
        .put("format", "loadwalk-amplifier/1")
        .put("maker", 7)
        .put(NAME, NAME)
        .put("class", NAME)
        .toString();
  }

  private Path bench() throws IOException {
    ObjectNode bench = JSON.createObjectNode().put("format", "loadwalk-bench/1").put("name", KEPT);
    bench.putArray("supplies").addObject().put("volts", 14.4).put("amps", 100);
    bench.putArray("leads").addObject().put("label", KEPT).put("awg", 8).put("metres", 2);
    ObjectNode load = bench.putArray("loads").addObject();
    load.put("label", KEPT).put("ohms", 4).put("watts", 50).put("count", 2);
    bench
        .putArray("meters")
        .addObject()
        .put("label", KEPT)
        .put("reads", "outputVolts")
        .put("percent", 1);
    return Files.writeString(home.resolve("bench.json"), bench.toString());
  }

  private Path sequence() throws IOException {
    ObjectNode own = (ObjectNode) JSON.readTree(Path.of("sequences/stereo-only.json").toFile());
    own.put("name", "own-walk").put("title", KEPT);
    own.withArray("steps").insertObject(0).put("do", "note").put("text", KEPT);
    Files.createDirectories(home.resolve("sequences"));
    return Files.writeString(home.resolve("sequences/own-walk.json"), own.toString());
  }

  private void run(Object... words) {
    typed("", words);
  }

  private void typed(String lines, Object... words) {
    System.setIn(new ByteArrayInputStream(lines.getBytes(UTF_8)));
    List<String> all = new ArrayList<>();
    for (Object word : words) {
      all.add(word.toString());
    }
    if (!all.contains("--home")) {
      all.addAll(List.of("--home", home.toString()));
    }
    all.addAll(flags);
    mark(System.out, all);
    mark(System.err, all);
    int code = Main.run(all.toArray(String[]::new));
    System.out.println("\n" + MARK + "exit " + code);
    System.out.flush();
    number++;
  }

  private void mark(PrintStream out, List<String> words) {
    out.println();
    out.println(MARK + number + " " + words.get(0).replaceAll("[^ -~]", "?"));
    out.flush();
  }
}
