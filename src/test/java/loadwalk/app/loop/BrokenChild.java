package loadwalk.app.loop;

import java.io.IOException;
import java.util.List;
import loadwalk.app.Main;
import loadwalk.plan.StockRules;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import loadwalk.walk.Walker;

/** Runs the real screen on an outside world that has a fault, in a process of its own. */
public final class BrokenChild {
  private static final String SECRET = "serial 4711, the note of a customer";

  private BrokenChild() {}

  /** Takes what breaks, the loop or a thread, then {@code --home} and the data home. */
  public static void main(String[] arguments) {
    try {
      show(arguments[0].equals("thread"));
    } catch (IOException | RuntimeException fault) {
      System.exit(Main.crashed(fault, arguments));
    }
  }

  private static void show(boolean inAThread) throws IOException {
    ProgramUpdate loop = new ProgramUpdate(new Walker(StockRules.RULES));
    ProgramRunner runner =
        new ProgramRunner(
            loop, new BrokenEffects(inAThread), Program.atHome("home", StockRules.RULES));
    TerminalLoop terminal = new TerminalLoop(runner, new Look(true), false, Clocks.MACHINE);
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> terminal.broke(fault));
    terminal.run(() -> {}, () -> {});
  }

  /** Answers what is asked, such as to leave, with a fault, here or in a thread. */
  private record BrokenEffects(boolean inAThread) implements EffectRunner {
    @Override
    public List<ProgramEvent> perform(Effect effect, Program program) {
      if (!inAThread) {
        throw new IllegalStateException(SECRET);
      }
      new Thread(
              () -> {
                throw new IllegalStateException(SECRET);
              })
          .start();
      return List.of();
    }

    @Override
    public List<ProgramEvent> after(Program program) {
      return List.of();
    }

    @Override
    public boolean isLeaving() {
      return false;
    }
  }
}
