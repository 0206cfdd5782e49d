package loadwalk.view;

import java.util.List;

/** Tells what text a program shows, for those who cannot see the screen. */
public final class TextShown {
  private TextShown() {}

  /** Returns the lines of the text on the screen; empty where another screen shows. */
  public static List<String> lines(Program program) {
    return program.screen() instanceof TextScreen text ? text.lines() : List.of();
  }
}
