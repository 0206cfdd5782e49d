package loadwalk.app.loop;

import java.util.concurrent.TimeUnit;
import loadwalk.view.canvas.Key;

/**
 * Pasted text, from the mark at its begin to the mark at its end.
 *
 * <p>The end can be lost on the way. Then the paste ends when nothing comes for two seconds, or
 * when what comes is as slow as a hand: else it would swallow what is typed.
 */
final class Paste {
  private static final int MOST = 100_000;
  private static final long LOOK_NANOS = TimeUnit.SECONDS.toNanos(2);

  /** No line brings a paste as slowly in {@link #LOOK_NANOS}, and few hands type as fast. */
  private static final int KEYS_OF_A_HAND = 30;

  private final StringBuilder text = new StringBuilder();
  private boolean open;
  private Keyboard.Stroke begun;
  private long lookedNanos;
  private int keysSince;
  private long lastNanos;

  void begin(Keyboard.Stroke mark) {
    open = true;
    begun = mark;
    text.setLength(0);
    lookedNanos = mark.nanos();
    lastNanos = mark.nanos();
    keysSince = 0;
  }

  boolean isOpen() {
    return open;
  }

  /** Adds a key of the text; what would press something is a blank. */
  void add(Keyboard.Stroke stroke) {
    lastNanos = stroke.nanos();
    keysSince++;
    char c = stroke.key().character();
    boolean blank = c == '\0' && !isControl(stroke.key().kind());
    if (text.length() < MOST && (blank || c != '\0')) {
      text.append(blank ? ' ' : c);
    }
  }

  private static boolean isControl(Key.Kind kind) {
    return kind == Key.Kind.NOTHING || kind == Key.Kind.INTERRUPT || kind == Key.Kind.SUSPEND;
  }

  /** Tells, when a key comes or time has passed, whether the end was lost. */
  boolean isForgotten(long nanos) {
    if (!open || nanos - lookedNanos < LOOK_NANOS) {
      return open && nanos - lastNanos >= LOOK_NANOS;
    }
    boolean slow = keysSince < KEYS_OF_A_HAND;
    lookedNanos = nanos;
    keysSince = 0;
    return slow;
  }

  /** Returns the mark at its begin. */
  Keyboard.Stroke begun() {
    return begun;
  }

  /** Ends it and returns what was pasted. */
  String end() {
    open = false;
    return text.toString();
  }
}
