package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Terminals that can little or are gone, and streams that are closed or full. */
final class Terminals {
  private static final List<String> KINDS =
      List.of("", "dumb", "nonsense", "vt52", "xterm", "../../etc/passwd");
  private static final List<String> SIZES =
      List.of("0 0", "1 1", "1 500", "24 80", "500 500", "65535 65535");

  /**
   * Of a signal; on SIGQUIT Java lists its threads, which nobody is shown, and the walk goes on.
   */
  private static final Map<String, Integer> CODES =
      Map.of("HUP", 129, "TERM", 143, "INT", 130, "QUIT", 0);

  private static final String F10 = "\u001b[21~";

  private Terminals() {}

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (String kind : KINDS) {
      for (String size : SIZES) {
        all.add(
            new Fault(
                "terminal «" + kind + "» of " + size,
                folder -> screen(learned.program(), TinyWalk.home(folder), kind, size)));
      }
      all.add(
          new Fault(
              "no terminal, TERM «" + kind + "»",
              folder -> noTerminal(learned.program().with("TERM", kind), folder)));
    }
    for (String signal : List.of("HUP", "TERM", "INT", "QUIT")) {
      all.add(
          new Fault(
              "SIG" + signal + " in mid-walk",
              folder -> signalled(learned, TinyWalk.home(folder), signal)));
    }
    for (String stream : List.of("0<&-", "1>&-", "2>&-", "0<&- 2>&-", "0<&- 1>&- 2>&-")) {
      all.add(
          new Fault("stream " + stream, folder -> closed(learned, TinyWalk.home(folder), stream)));
    }
    for (String command :
        List.of("ledger", "sheet", "sheet --json -", "sheet --html -", "tone - --seconds 1")) {
      for (String stream : List.of(">/dev/full", ">&-")) {
        all.add(
            new Fault(
                command + " " + stream,
                folder -> unwritten(learned, TinyWalk.home(folder), command, stream)));
      }
    }
    all.add(
        new Fault(
            "nobody reads the lines of a walk", folder -> unread(learned, TinyWalk.home(folder))));
    return all;
  }

  private static Program inShell(Program program, String redirections) {
    return program.behind("sh", "-c", "\"$0\" \"$@\" " + redirections);
  }

  /** The screen comes up, or a sentence says why not; leaving gives the terminal back. */
  private static void screen(Program program, Path home, String kind, String size)
      throws Exception {
    String[] rowsAndColumns = size.split(" ");
    String inside =
        "stty rows "
            + rowsAndColumns[0]
            + " cols "
            + rowsAndColumns[1]
            + "; stty -g > before; "
            + (kind.isEmpty() ? "unset TERM" : "TERM='" + kind + "'; export TERM")
            + "; '"
            + program.launcher()
            + "' --home '"
            + home
            + "'; echo code $?; stty -g > after;"
            + " cmp before after && echo 'given back'";
    Program terminal = new Program(Path.of("/usr/bin/script"), home, List.of(), program.settings());
    Program.Running running = terminal.start("-qfec", inside, "/dev/null");
    for (int i = 0; running.isAlive() && !running.said().contains("code ") && i < 600; i++) {
      Thread.sleep(50);
      if (i > 10 && i % 20 == 0) {
        running.type(F10);
      }
    }
    running.hears("given back");
    Ran ran = running.end().isPlain();
    assertTrue(ran.out().contains("code 0") || ran.out().contains("code 2"), ran::said);
  }

  private static void noTerminal(Program program, Path folder) throws Exception {
    program.run("", "--home", folder.toString()).ends(2).says("needs a terminal");
  }

  private static void signalled(Learned learned, Path home, String signal) throws Exception {
    // A build in the background hands ignored signals down to what it starts.
    Program program = learned.program().behind("env", "--default-signal=HUP,TERM,INT,QUIT");
    Program.Running running = program.start(TinyWalk.begin(home));
    running.type(TinyWalk.half(true)).hears("kept idle supplyAmps");
    assertEquals(0, Tools.run("kill", "-" + signal, String.valueOf(running.pid())));
    Ran ran = running.end();
    assertEquals(CODES.get(signal), ran.code(), ran::said);
    if (ran.code() != 0) {
      ran.says("(?m)^OUTPUT DOWN, SUPPLY OFF: idle was still running\\.$");
    }
    new Ran(0, ran.out(), ran.err()).isPlain();
    Journal.only(home).isWhole().holdsWhatWasCalledKept(ran.out());
    TinyWalk.endsAsIfNothingHadHappened(learned.program(), home, learned.sheet());
  }

  /**
   * What is not there is neither read nor written; nothing but what was typed is in the journal.
   */
  private static void closed(Learned learned, Path home, String stream) throws Exception {
    Ran ran = inShell(learned.program(), stream).run(TinyWalk.half(true), TinyWalk.begin(home));
    new Ran(0, ran.out(), ran.err()).isPlain();
    Journal journal = Journal.only(home).isWhole();
    int facts = stream.contains("0<&-") ? 2 : 5;
    assertEquals(facts, journal.facts().size(), journal.facts().toString());
    TinyWalk.endsAsIfNothingHadHappened(learned.program(), home, learned.sheet());
  }

  private static void unwritten(Learned learned, Path home, String command, String stream)
      throws Exception {
    learned.program().run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.addAll(List.of("--home", home.toString()));
    inShell(learned.program(), stream)
        .run("", words.toArray(String[]::new))
        .ends(2)
        .says("Not all of the output was written: ");
    TinyWalk.hasSheet(learned.sheet(), learned.program(), home);
  }

  /** The reader of the lines goes away; what is typed is kept all the same, or not taken. */
  private static void unread(Learned learned, Path home) throws Exception {
    Ran ran = inShell(learned.program(), "| head -1").run(TinyWalk.lines(), TinyWalk.begin(home));
    ran.isPlain();
    Journal.only(home).isWhole();
    TinyWalk.endsAsIfNothingHadHappened(learned.program(), home, learned.sheet());
  }
}
