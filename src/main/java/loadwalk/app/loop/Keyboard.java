package loadwalk.app.loop;

import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import loadwalk.text.Sentence;
import loadwalk.view.Interrupts;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Key;

/**
 * Brings what is typed to the program.
 *
 * <p>A key carries which turn of the program was on the screen when it was typed. Where something
 * else has come since, such as a step that runs in place of its brief, the key was not meant for it
 * and is dropped, and what is typed in one breath with it. The stop key always counts.
 */
public final class Keyboard {
  /** A hand that has seen that its keys are dropped rests as long as this. */
  private static final long REST_NANOS = TimeUnit.MILLISECONDS.toNanos(400);

  private final ProgramRunner runner;
  private final Paste paste = new Paste();
  private Interrupts interrupts = Interrupts.NONE;
  private volatile int shown;
  private int dropped;
  private boolean untold;
  private OptionalLong lastDropped = OptionalLong.empty();

  /**
   * A key as it was typed.
   *
   * @param key the key
   * @param shown the turn of the program that was on the screen
   * @param nanos when, by a clock that only goes forward, ns
   */
  public record Stroke(Key key, int shown, long nanos) {}

  /** What the terminal itself is to do about a key. */
  public enum Asked {
    NOTHING,
    SUSPEND,
    LEAVE
  }

  /** Makes the keyboard of a program. */
  public Keyboard(ProgramRunner runner) {
    this.runner = runner;
  }

  /** Notes that the program as it stands is on the screen. */
  public void painted() {
    shown = runner.turns();
  }

  /** Returns a key typed now; any thread may ask. */
  public Stroke typed(Key key, long nanos) {
    return new Stroke(key, shown, nanos);
  }

  /** Takes a key to the program. */
  public Asked hear(Stroke stroke) {
    Key.Kind kind = stroke.key().kind();
    if (kind == Key.Kind.LEAVE) {
      return Asked.LEAVE;
    }
    if (paste.isForgotten(stroke.nanos())) {
      endPaste();
    }
    if (paste.isOpen() && kind != Key.Kind.ESCAPE) {
      if (kind == Key.Kind.PASTE_END) {
        endPaste();
      } else {
        paste.add(stroke);
      }
      return Asked.NOTHING;
    }
    return switch (kind) {
      case SUSPEND -> Asked.SUSPEND;
      case INTERRUPT -> interrupted(stroke.nanos());
      default -> {
        press(stroke);
        yield Asked.NOTHING;
      }
    };
  }

  private void press(Stroke stroke) {
    switch (stroke.key().kind()) {
      case PASTE_BEGIN:
        paste.begin(stroke);
        break;
      case PASTE_END:
      case NOTHING:
        break;
      case ESCAPE:
        // Even a paste whose end was lost must not keep the stop key from working.
        runner.accept(new ProgramEvent.Pressed(stroke.key()));
        break;
      default:
        if (isMeant(stroke)) {
          runner.accept(new ProgramEvent.Pressed(stroke.key()));
        } else {
          drop(1, stroke.nanos());
        }
    }
  }

  private boolean isMeant(Stroke stroke) {
    boolean inOneBreath =
        lastDropped.isPresent() && stroke.nanos() - lastDropped.getAsLong() < REST_NANOS;
    return stroke.shown() == runner.turns() && !inOneBreath;
  }

  private void drop(int keys, long nanos) {
    boolean more = lastDropped.isPresent() && nanos - lastDropped.getAsLong() < REST_NANOS;
    dropped = more ? dropped + keys : keys;
    untold = true;
    lastDropped = OptionalLong.of(nanos);
  }

  private Asked interrupted(long nanos) {
    Program program = runner.program();
    return interrupts
        .at(program, nanos)
        .map(
            events -> {
              interrupts = Interrupts.after(nanos);
              events.forEach(runner::accept);
              return Asked.NOTHING;
            })
        .orElse(Asked.LEAVE);
  }

  private void endPaste() {
    String text = paste.end();
    Stroke begin = paste.begun();
    if (text.isEmpty() || isMeant(begin)) {
      runner.accept(new ProgramEvent.Pasted(text));
    } else {
      drop(text.length(), begin.nanos());
    }
  }

  /** Takes in that so many keys were typed before there was a screen at all. */
  public void forgotten(int keys, long nanos) {
    if (keys > 0) {
      drop(keys, nanos);
    }
  }

  /** Takes in that time has passed: a paste whose end was lost ends by itself. */
  public void passed(long nanos) {
    if (paste.isForgotten(nanos)) {
      endPaste();
    }
  }

  /** Tells how many keys were dropped, where some were since the last time. */
  public void tellDropped() {
    if (untold) {
      untold = false;
      runner.accept(
          new ProgramEvent.KeysTold(
              Sentence.plural(
                  dropped,
                  "1 key was typed before this was on the screen, and is dropped.",
                  "{} keys were typed before this was on the screen, and are dropped.")));
    }
  }
}
