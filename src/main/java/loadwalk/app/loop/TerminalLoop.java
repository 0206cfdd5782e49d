package loadwalk.app.loop;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import loadwalk.tui.KeyMap;
import loadwalk.tui.Surface;
import loadwalk.tui.TtyTerminal;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramPainter;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Event;

/**
 * The event loop of the terminal: one thread reads keys, one updates and paints.
 *
 * <p>The queue between them is bounded and drained whole before one painting, so that a paste
 * paints once. A second without anything else is a tick.
 */
public final class TerminalLoop {
  private static final int QUEUE = 4096;
  private static final long TICK_MILLIS = 1000;

  // Longer than a far terminal takes to answer: what comes later lands in the shell as typed.
  private static final long JOIN_MILLIS = 1000;

  private static final long TAKEN_BACK_NANOS = TimeUnit.SECONDS.toNanos(1);

  /** What another thread brings; it is done on the loop's own. */
  private interface Arrival {
    void reach(Surface surface, TtyTerminal terminal) throws IOException;
  }

  private final ProgramRunner runner;
  private final ProgramPainter painter;
  private final Look look;
  private final boolean colour;
  private final Clocks clocks;
  private final BlockingQueue<Arrival> queue = new ArrayBlockingQueue<>(QUEUE);
  private final Keyboard keyboard;
  private volatile boolean over;
  private Lookout lookout;
  private long nextTick;
  private long tookBackNanos;

  /** Makes the loop of a screen; the terminal is not touched yet. */
  public TerminalLoop(ProgramRunner runner, Look look, boolean colour, Clocks clocks) {
    this.runner = runner;
    this.keyboard = new Keyboard(runner);
    this.painter = new ProgramPainter(look);
    this.look = look;
    this.colour = colour;
    this.clocks = clocks;
  }

  /** Gives the loop an event from another thread. */
  public void offer(ProgramEvent event) {
    queue.offer((surface, terminal) -> runner.accept(event));
  }

  /** Tells the loop that another thread ended by a fault, so that the loop ends by it too. */
  public void broke(Throwable fault) {
    queue.clear();
    queue.offer(
        (surface, terminal) -> {
          throw new IllegalStateException("a thread ended by a fault", fault);
        });
  }

  /** Tells the loop from another thread that a meter has spoken; a full queue is behind anyway. */
  public void metersSpoke() {
    queue.offer((surface, terminal) -> runner.look());
  }

  /**
   * Runs until the operator leaves or the keyboard is gone.
   *
   * @param afterFirstFrame what to start once the first frame is on the screen
   * @param farewell what to say once the terminal is given back, whatever ended the program
   * @throws IOException if the terminal cannot be used
   */
  public void run(Runnable afterFirstFrame, Runnable farewell) throws IOException {
    TtyTerminal terminal = new TtyTerminal();
    terminal.atTheEnd(farewell);
    terminal.enterPrivateMode();
    terminal.addResizeListener((t, size) -> queue.offer((shown, resized) -> shown.forget()));
    Surface surface = new Surface(terminal, colour);
    lookout = new Lookout(runner, surface, look, clocks);
    Thread keys = keyReader(terminal);
    try {
      paint(surface);
      // What was typed to the shell, or in impatience, was not meant for this screen.
      keyboard.forgotten(terminal.forgetInput(), clocks.monoNanos());
      keys.start();
      listenForResizes(terminal);
      afterFirstFrame.run();
      nextTick = clocks.monoNanos();
      while (!over && !runner.isLeaving()) {
        step(surface, terminal);
      }
    } finally {
      over = true;
      lookout.ends();
      leave(terminal, keys);
    }
  }

  private void step(Surface surface, TtyTerminal terminal) throws IOException {
    List<Arrival> arrivals = drained();
    lookout.begins();
    for (Arrival arrival : arrivals) {
      arrival.reach(surface, terminal);
    }
    if (!over && !runner.isLeaving()) {
      keyboard.tellDropped();
      lookout.ends();
      paint(surface);
    }
  }

  private void paint(Surface surface) throws IOException {
    surface.show(painter.paint(runner.program(), surface.size()), keyboard::painted);
  }

  /** Returns what has come, after a second at most. */
  private List<Arrival> drained() {
    List<Arrival> arrivals = new ArrayList<>();
    try {
      long tick = Math.max(0, nextTick - clocks.monoNanos());
      Arrival first = queue.poll(tick, TimeUnit.NANOSECONDS);
      if (first != null) {
        arrivals.add(first);
        queue.drainTo(arrivals);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      over = true;
    }
    if (clocks.monoNanos() >= nextTick) {
      nextTick = clocks.monoNanos() + TimeUnit.MILLISECONDS.toNanos(TICK_MILLIS);
      arrivals.add((surface, terminal) -> secondPassed());
    }
    return arrivals;
  }

  private void secondPassed() {
    keyboard.passed(clocks.monoNanos());
    runner.accept(new ProgramEvent.OfWalk(new Event.Tick(clocks.monoNanos(), clocks.wallMillis())));
  }

  private void hear(Keyboard.Stroke stroke, Surface surface, TtyTerminal terminal)
      throws IOException {
    switch (keyboard.hear(stroke)) {
      case LEAVE:
        over = true;
        break;
      case SUSPEND:
        suspend(surface, terminal);
        break;
      case NOTHING:
        break;
    }
  }

  private Arrival keyed(Key key) {
    Keyboard.Stroke stroke = keyboard.typed(key, clocks.monoNanos());
    return (surface, terminal) -> hear(stroke, surface, terminal);
  }

  /** Stops the whole process group as a shell's job control expects, and comes back whole. */
  private void suspend(Surface surface, TtyTerminal terminal) throws IOException {
    lookout.ends();
    terminal.lend();
    new ProcessBuilder("kill", "-TSTP", "0").start();
    try {
      // The signal stops this very process; the pause covers the moment until it arrives.
      Thread.sleep(200);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    takeBack(surface, terminal);
  }

  /** Sets the terminal up anew: whoever had it meanwhile left it as a shell needs it. */
  private void takeBack(Surface surface, TtyTerminal terminal) throws IOException {
    lookout.ends();
    terminal.takeBack();
    surface.forget();
    tookBackNanos = clocks.monoNanos();
  }

  /** A process that somebody else stopped goes on; our own stop has taken back already. */
  private void continued(Surface surface, TtyTerminal terminal) throws IOException {
    if (clocks.monoNanos() - tookBackNanos > TAKEN_BACK_NANOS) {
      takeBack(surface, terminal);
    }
  }

  /** Away from the event loop, because it asks the terminal for its size once more. */
  private void listenForResizes(TtyTerminal terminal) {
    Thread thread =
        new Thread(
            () -> {
              try {
                terminal.listenForResizes();
                TtyTerminal.whenContinued(() -> queue.offer(this::continued));
              } catch (IOException gone) {
                queue.offer(keyed(Key.of(Key.Kind.LEAVE)));
              }
            },
            "resizes");
    thread.setDaemon(true);
    thread.start();
  }

  private Thread keyReader(TtyTerminal terminal) {
    Thread thread = new Thread(() -> readKeys(terminal), "keys");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Reads on after the end until the answers of {@link #leave} are in: the shell would get them.
   */
  private void readKeys(TtyTerminal terminal) {
    try {
      while (true) {
        KeyStroke stroke = terminal.readInput();
        KeyType type = stroke.getKeyType();
        if (over && (type == KeyType.CursorLocation || type == KeyType.EOF)) {
          return;
        }
        if (over || type == KeyType.CursorLocation) {
          continue;
        }
        Key key = KeyMap.of(stroke);
        lookout.heard(key);
        queue.put(keyed(key));
        if (type == KeyType.EOF) {
          return;
        }
      }
    } catch (IOException gone) {
      queue.offer(keyed(Key.of(Key.Kind.LEAVE)));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Asks for the cursor's place: the answer wakes the reader, so that leaving is quick. */
  private static void leave(TtyTerminal terminal, Thread keys) throws IOException {
    try {
      if (keys.isAlive()) {
        terminal.wakeReader();
        keys.join(JOIN_MILLIS);
      }
      terminal.forgetInput();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      terminal.exitPrivateMode();
      terminal.close();
    }
  }
}
