package loadwalk.app.loop;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Says the last words on a walk when a signal ends the program before its loop does. */
public final class Farewell {
  /** Words that nobody takes up must not keep the program from ending. */
  private static final long MOST_MILLIS = TimeUnit.SECONDS.toMillis(1);

  private final Thread hook;

  private Farewell(Thread hook) {
    this.hook = hook;
  }

  /**
   * Readies the words from now on.
   *
   * @param words what is to be said when it comes to that
   * @param tell takes each sentence
   */
  public static Farewell ifSignalled(Supplier<List<String>> words, Consumer<String> tell) {
    Thread hook = new Thread(() -> say(() -> words.get().forEach(tell)), "farewell");
    Runtime.getRuntime().addShutdownHook(hook);
    return new Farewell(hook);
  }

  private static void say(Runnable words) {
    Thread speaker = new Thread(words, "last words");
    speaker.setDaemon(true);
    speaker.start();
    try {
      speaker.join(MOST_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Calls them off: the loop has ended by itself and said everything. */
  public void callOff() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException signalled) {
      // The words are being said.
    }
  }
}
