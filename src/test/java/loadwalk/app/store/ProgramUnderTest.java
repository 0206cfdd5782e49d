package loadwalk.app.store;

import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loadwalk.app.FailingDisk;
import loadwalk.app.MachineEffects;
import loadwalk.app.TextsForScreen;
import loadwalk.app.loop.Background;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.loop.Keyboard;
import loadwalk.app.loop.LineFeed;
import loadwalk.app.loop.PlainLoop;
import loadwalk.app.loop.ProgramRunner;
import loadwalk.app.sound.Inputs;
import loadwalk.app.sound.LiveInput;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.journal.Recovery;
import loadwalk.plan.Rules;
import loadwalk.plan.StockRules;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramPainter;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Model;
import loadwalk.walk.Walker;

/** The real program on a folder of a test, with clocks, processes and disk of its own. */
public final class ProgramUnderTest {
  private static final String SHOWN_HOME = "the data home";

  private final DataHome home;
  private final FakeClocks clocks;
  private final FailingDisk disk = new FailingDisk();
  private final MachineEffects effects;
  private final ProgramRunner runner;
  private final Keyboard keyboard;
  private final Look look;
  private final ProgramPainter painter;
  private int bells;
  private int judgements;
  private int forecasts;

  /** Starts a Loadwalk in a process of its own, on a machine without a sound input. */
  public ProgramUnderTest(Path folder, FakeClocks clocks, Look look) {
    this(folder, clocks, look, Inputs.NONE);
  }

  public ProgramUnderTest(Path folder, FakeClocks clocks, Look look, LiveInput input) {
    this(folder, clocks, look, input, StockRules.RULES);
  }

  /** Starts a Loadwalk that goes by given rules. */
  public ProgramUnderTest(Path folder, FakeClocks clocks, Look look, LiveInput input, Rules rules) {
    this.home = new DataHome(folder);
    this.clocks = clocks;
    this.look = look;
    this.painter = new ProgramPainter(look);
    JournalFolder store = new JournalFolder(home, disk::before);
    this.effects =
        new MachineEffects(
            new WalkFolder(store),
            new SequenceFinder(home),
            new TextsForScreen(rules, look.ascii()),
            clocks,
            () -> bells++,
            input);
    this.runner =
        new ProgramRunner(
            new ProgramUpdate(new Walker(counting(rules))),
            effects,
            Program.atHome(SHOWN_HOME, rules));
    this.keyboard = new Keyboard(runner);
    try {
      runner.accept(effects.libraryRead());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private Forecaster counting(Forecaster asked) {
    return new Forecaster() {
      @Override
      public Forecast forecast(Evidence evidence, Target target) {
        forecasts++;
        return asked.forecast(evidence, target);
      }

      @Override
      public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
        judgements++;
        return asked.judge(evidence, target, entries);
      }

      @Override
      public List<Doubt> judgeSoFar(
          Evidence evidence, Target target, Map<ReadingId, Double> entries) {
        judgements++;
        return asked.judgeSoFar(evidence, target, entries);
      }
    };
  }

  /** Returns how often entries were judged. */
  public int judgements() {
    return judgements;
  }

  /** Returns how often a step was forecast. */
  public int forecasts() {
    return forecasts;
  }

  /** Returns the disk its journals are written to. */
  public FailingDisk disk() {
    return disk;
  }

  /** Returns how often the bell rang. */
  public int bells() {
    return bells;
  }

  /** Takes one event. */
  public void accept(ProgramEvent event) {
    runner.accept(event);
  }

  /** Returns what brings keys to the program. */
  public Keyboard keyboard() {
    return keyboard;
  }

  /** Does long work elsewhere from now on. */
  public void workingIn(Background elsewhere) {
    effects.workingIn(elsewhere);
  }

  /** Lets the program take in what became known outside. */
  public void look() {
    runner.look();
  }

  /** Tells the program what the clocks say now. */
  public void tick() {
    runner.accept(new ProgramEvent.OfWalk(new Event.Tick(clocks.monoNanos(), clocks.wallMillis())));
  }

  /** Opens a walk by its name, as the command does. */
  public void resume(String walk) {
    effects.resume(new WalkName(walk)).forEach(runner::accept);
  }

  /** Lets the simulated operator answer everything to the end, told as lines of text. */
  void fill(PrintStream out) {
    new PlainLoop(runner, out, look, clocks).fill();
  }

  /** Takes lines typed in plain mode to their end; returns the exit code. */
  int type(Reader lines, PrintStream out) throws IOException {
    try (LineFeed feed = new LineFeed(lines)) {
      return new PlainLoop(runner, out, look, clocks).run(feed);
    }
  }

  /** Begins a walk. */
  public void open(Effect.OpenWalk asked) {
    try {
      effects.open(asked).forEach(runner::accept);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Returns the program as it is. */
  public Program program() {
    return runner.program();
  }

  /** Returns the open walk. */
  public Model model() {
    return runner.program().walk().orElseThrow(() -> new AssertionError("no walk is open"));
  }

  /** Tells whether the operator has left. */
  public boolean isLeaving() {
    return runner.isLeaving();
  }

  /** Paints the program as the terminal's loop does, after what it painted before. */
  public Frame paint(Size size) {
    return painter.paint(runner.program(), size);
  }

  /** Paints the program from nothing. */
  public Frame paintWhole(Size size) {
    return runner.program().paint(size, look);
  }

  /** Returns the bodies that are in the journal of the open walk, read from its file. */
  public List<String> bodies() {
    String name = model().state().opened().walk();
    try {
      byte[] bytes = FileStorage.read(home.sessions().resolve(name + JournalFolder.ENDING));
      return Recovery.read(bytes).bodies();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Leaves as a killed process does: what it held is let go, and nothing more is written. */
  public void die() {
    try {
      effects.close();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
