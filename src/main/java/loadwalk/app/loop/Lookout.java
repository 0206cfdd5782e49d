package loadwalk.app.loop;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import loadwalk.text.Sentence;
import loadwalk.tui.Surface;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;

/**
 * Looks after the screen while the loop's own thread waits for a slow disk: the stop key shows at
 * once, though its record queues, and a wait of more than a second is said.
 */
final class Lookout {
  private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(100);
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(1);
  private static final long IDLE = Long.MIN_VALUE;

  private final ProgramRunner runner;
  private final Look look;
  private final Clocks clocks;
  private final Thread thread;
  private volatile long since = IDLE;
  private volatile boolean stopping;

  /** Makes the lookout of a screen. */
  Lookout(ProgramRunner runner, Surface surface, Look look, Clocks clocks) {
    this.runner = runner;
    this.look = look;
    this.clocks = clocks;
    this.thread = new Thread(() -> lookOut(surface), "lookout");
    thread.setDaemon(true);
    thread.start();
  }

  /** The loop begins to work on what has come. */
  void begins() {
    since = clocks.monoNanos();
    LockSupport.unpark(thread);
  }

  /** The loop is about to show what came of it, or wants the terminal for itself. */
  void ends() {
    since = IDLE;
    stopping = false;
  }

  /** A key was typed, which the loop may get to later. */
  void heard(Key key) {
    if (key.is(Key.Kind.ESCAPE)) {
      stopping = true;
    }
  }

  private void lookOut(Surface surface) {
    try {
      while (!Thread.currentThread().isInterrupted()) {
        if (since == IDLE) {
          LockSupport.park(this);
        } else {
          LockSupport.parkNanos(this, LOOK_NANOS);
          show(surface);
        }
      }
    } catch (IOException gone) {
      // The loop meets it too, and ends.
      Thread.currentThread().interrupt();
    }
  }

  private void show(Surface surface) throws IOException {
    synchronized (surface) {
      long began = since;
      long waited = began == IDLE ? 0 : clocks.monoNanos() - began;
      Program program = runner.program();
      if (stopping && waited >= LOOK_NANOS && program.walk().isPresent()) {
        surface.show(runner.after(Key.of(Key.Kind.ESCAPE)).paint(surface.size(), look));
      } else if (waited >= PATIENCE_NANOS) {
        surface.show(waiting(program, waited).paint(surface.size(), look));
      }
    }
  }

  private static Program waiting(Program program, long nanos) {
    String sentence =
        Sentence.of(
            program.walk().isPresent()
                ? "Waiting for the disk, {} s so far. Esc is STOP, other keys wait too."
                : "Waiting for the disk, {} s so far. Keys wait too.",
            TimeUnit.NANOSECONDS.toSeconds(nanos));
    return new ProgramEvent.KeysTold(sentence).toldTo(program);
  }
}
