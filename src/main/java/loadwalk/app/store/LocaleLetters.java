package loadwalk.app.store;

import loadwalk.cli.BadInput;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Finds names that the locale cannot write: Java puts a mark in the place of each letter, and what
 * it would open under such a name is not what was meant.
 */
public final class LocaleLetters {
  private static final char LOST = '\uFFFD';
  private static final int SHOWN = 200;

  private LocaleLetters() {}

  /** Tells whether letters of a name are lost. */
  static boolean areLost(String name) {
    return name.indexOf(LOST) >= 0;
  }

  /**
   * Checks a name that came from the command line, the environment or the system.
   *
   * @throws BadInput with a sentence that says what to do, if letters of it are lost
   */
  public static void require(String name) {
    if (areLost(name)) {
      throw new BadInput(
          Sentence.of(
              "{} has letters that this locale cannot write. Set LC_ALL to a UTF-8 locale, such as"
                  + " C.UTF-8, and start again.",
              Visible.line(name, SHOWN)));
    }
  }
}
