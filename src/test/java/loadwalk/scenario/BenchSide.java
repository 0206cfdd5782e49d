package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import loadwalk.app.FailingDisk;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.loop.Keyboard;
import loadwalk.app.loop.Keyboard.Asked;
import loadwalk.app.store.ProgramUnderTest;
import loadwalk.bench.ReadingId;
import loadwalk.sequence.PlannedStep;
import loadwalk.tui.KeyMap;
import loadwalk.tui.Surface;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;

/**
 * Sits at the bench: presses keys on a virtual terminal and reads its screen.
 *
 * <p>A script is a row of words: {@code Enter}, {@code F8}, {@code Esc}, {@code Up}…; {@code
 * text:13,4 V} types; {@code wait:60} lets a minute go by, a second at a time. Run with {@code
 * -Dscenario.visible=true} to see every screen go by, {@code -Dscenario.millis=300} apart.
 */
final class BenchSide {
  private static final boolean VISIBLE = Boolean.getBoolean("scenario.visible");
  private static final long MILLIS = Long.getLong("scenario.millis", 300);
  private static final Map<String, KeyType> NAMED =
      Map.ofEntries(
          Map.entry("Enter", KeyType.Enter),
          Map.entry("Esc", KeyType.Escape),
          Map.entry("Tab", KeyType.Tab),
          Map.entry("Back", KeyType.Backspace),
          Map.entry("Up", KeyType.ArrowUp),
          Map.entry("Down", KeyType.ArrowDown),
          Map.entry("Left", KeyType.ArrowLeft),
          Map.entry("Right", KeyType.ArrowRight),
          Map.entry("Home", KeyType.Home),
          Map.entry("End", KeyType.End),
          Map.entry("PageUp", KeyType.PageUp),
          Map.entry("PageDown", KeyType.PageDown));

  private final Path folder;
  private final FakeClocks clocks;
  private final Look look;
  private final boolean colour;
  private final CountingTerminal terminal;
  private Surface surface;
  private ProgramUnderTest program;
  private int cells;
  private boolean blind;
  private boolean left;

  private BenchSide(Path folder, FakeClocks clocks, Look look, boolean colour) {
    this.folder = folder;
    this.clocks = clocks;
    this.look = look;
    this.colour = colour;
    this.terminal = new CountingTerminal(new TerminalSize(80, 24));
    terminal.enterPrivateMode();
    start();
  }

  /** Starts Loadwalk on a folder, 80 columns by 24 rows, in colour and UTF-8. */
  static BenchSide at(Path folder) {
    return new BenchSide(folder, new FakeClocks(), new Look(false), true);
  }

  /** Starts Loadwalk on a terminal that shows plain ASCII without colours. */
  static BenchSide plainLooking(Path folder) {
    return new BenchSide(folder, new FakeClocks(), new Look(true), false);
  }

  /** Starts a second Loadwalk beside this one, on the same folder and clocks. */
  BenchSide second() {
    return new BenchSide(folder, clocks, look, colour);
  }

  /** Starts a walk of the practice amplifier of seed 1 at sixty times the pace. */
  BenchSide practising() {
    return press("Enter", "Enter");
  }

  /**
   * Starts a walk of the practice amplifier of seed 10: its steps have cautions, so are armed.
   *
   * <p>Its heatsink gets so hot that stereo-4 and stereo-2 are HEED.
   */
  BenchSide heedAtStereoFour() {
    press("Enter", "Up", "Up", "Up");
    for (int seed = 1; seed < 10; seed++) {
      press("Right");
    }
    return press("Enter").warmedUp().idled().sees("stereo-4  brief: HEED");
  }

  /** Starts a practice walk and brings it to the brief of stereo-4, warm. */
  BenchSide warmAtStereoFour() {
    return practising().warmedUp().idled().sees("stereo-4  brief:");
  }

  /** Starts the warm-up, waits it out and finishes it. */
  BenchSide warmedUp() {
    return press("Enter", "wait:16", "Enter");
  }

  /** Starts the idle step, lets its readings be filled in and finishes it. */
  BenchSide idled() {
    return press("Enter", "F8", "F9");
  }

  private void start() {
    program = new ProgramUnderTest(folder, clocks, look);
    surface = new Surface(terminal, colour);
    program.tick();
    show();
  }

  /** Kills Loadwalk and starts it again; nothing was closed. */
  BenchSide killedAndStartedAgain() {
    program.die();
    terminal.clearScreen();
    start();
    return this;
  }

  /** Presses keys, types and waits, as the script says. */
  BenchSide press(String... script) {
    for (String word : script) {
      if (word.startsWith("text:")) {
        for (char c : word.substring(5).toCharArray()) {
          stroke(new KeyStroke(c, false, false));
        }
      } else if (word.startsWith("wait:")) {
        waitFor(Integer.parseInt(word.substring(5)));
      } else {
        stroke(
            word.startsWith("Ctrl-")
                ? new KeyStroke(Character.toLowerCase(word.charAt(5)), true, false)
                : new KeyStroke(keyType(word)));
      }
    }
    return this;
  }

  private static KeyType keyType(String word) {
    return NAMED.containsKey(word) ? NAMED.get(word) : KeyType.valueOf(word);
  }

  private void stroke(KeyStroke stroke) {
    terminal.addInput(stroke);
    KeyStroke got = terminal.pollInput();
    Keyboard keyboard = program.keyboard();
    left |= keyboard.hear(keyboard.typed(KeyMap.of(got), clocks.monoNanos())) == Asked.LEAVE;
    show();
  }

  /** Presses keys and types in one breath, before anything of it is painted. */
  BenchSide typeAhead(String... script) {
    blind = true;
    press(script);
    blind = false;
    show();
    return this;
  }

  /** Tells whether a key has left the program. */
  boolean isLeft() {
    return left;
  }

  private void waitFor(int seconds) {
    for (int i = 0; i < seconds; i++) {
      clocks.goOn(1);
      program.keyboard().passed(clocks.monoNanos());
      program.tick();
      show();
    }
  }

  /** Pastes a text, as a terminal that marks pastes does. */
  BenchSide paste(String text) {
    program.accept(new ProgramEvent.Pasted(text));
    show();
    return this;
  }

  /** Lets a tick come now, without time going by. */
  BenchSide tick() {
    program.tick();
    show();
    return this;
  }

  /** Makes the window another size. */
  BenchSide resize(int columns, int rows) {
    terminal.setTerminalSize(new TerminalSize(columns, rows));
    show();
    return this;
  }

  private void show() {
    if (blind) {
      return;
    }
    program.keyboard().tellDropped();
    try {
      int painted = surface.show(program.paint(surface.size()));
      cells += painted;
      program.keyboard().painted();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (VISIBLE) {
      System.out.print("\u001b[H\u001b[2J" + picture() + "\n");
      System.out.flush();
      LockSupport.parkNanos(MILLIS * 1_000_000);
    }
  }

  /** Returns the rows of the screen as the terminal shows them, trailing blanks cut. */
  List<String> rows() {
    TerminalSize size = terminal.getTerminalSize();
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < size.getRows(); row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < size.getColumns(); column++) {
        line.append(terminal.getCharacter(column, row).getCharacterString());
      }
      rows.add(line.toString().stripTrailing());
    }
    return rows;
  }

  /** Returns the screen as one text, its rows joined by line breaks. */
  String picture() {
    return String.join("\n", rows());
  }

  /** Returns the words of the screen with all gaps made one blank, to find folded sentences. */
  private String words() {
    return String.join(" ", rows()).replaceAll("\\s+", " ");
  }

  /** Checks that the screen shows every text, whether or not a line break falls into it. */
  BenchSide sees(String... texts) {
    for (String text : texts) {
      String wanted = text.replaceAll("\\s+", " ");
      assertTrue(words().contains(wanted), () -> "«" + text + "» is not on\n" + picture());
    }
    return this;
  }

  /** Checks how much of the warm-up is left, which the screen shows in digits of many cells. */
  BenchSide seesLeft(int minutes, int seconds) {
    sees("time left");
    PlannedStep planned = model().state().current().orElseThrow();
    double left =
        planned.step().warmUp().orElseThrow().minutes() * 60 - model().clock().warmSeconds();
    assertEquals(minutes * 60 + seconds, left, 0.5, this::picture);
    return this;
  }

  /** Checks that the screen shows none of the texts. */
  BenchSide seesNot(String... texts) {
    for (String text : texts) {
      String unwanted = text.replaceAll("\\s+", " ");
      assertFalse(words().contains(unwanted), () -> "«" + text + "» is on\n" + picture());
    }
    return this;
  }

  /** Returns how many frames the terminal was given so far. */
  int frames() {
    return terminal.frames;
  }

  /** Returns how many cells of the terminal were painted so far. */
  int cells() {
    return cells;
  }

  FakeClocks clocks() {
    return clocks;
  }

  FailingDisk disk() {
    return program.disk();
  }

  ProgramUnderTest program() {
    return program;
  }

  DefaultVirtualTerminal terminal() {
    return terminal;
  }

  Model model() {
    return program.model();
  }

  /** Returns the state of a step. */
  StepState step(String id) {
    return model().state().step(id);
  }

  /** Returns the values entered for a reading, oldest first. */
  List<String> typed(String step, ReadingId reading) {
    return step(step).entries().getOrDefault(reading, List.of()).stream().map(Entry::text).toList();
  }

  /** Returns the facts in the journal's file. */
  List<Stamped> facts() {
    return program.bodies().stream().flatMap(body -> FactText.read(body).stream()).toList();
  }

  /** Checks that the journal's file tells the same walk as the one in memory. */
  BenchSide journalTellsTheSame() {
    boolean same = FactText.walk(program.bodies()).equals(model().state());
    assertTrue(same, "the journal tells another walk than the screen");
    return this;
  }

  /** Counts the frames that reach the terminal. */
  private static final class CountingTerminal extends DefaultVirtualTerminal {
    private int frames;

    CountingTerminal(TerminalSize size) {
      super(size);
    }

    @Override
    public synchronized void flush() {
      frames++;
      super.flush();
    }
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s%n%s", folder, picture());
  }
}
