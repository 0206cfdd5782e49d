import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.DefaultTerminalFactory;
import java.io.IOException;

/**
 * A program that is nothing but Lanterna as it comes: one frame, then an echo of each key, or with
 * the argument {@code tick} a count painted four times a second. {@code q} leaves.
 */
final class Bare {
  private static final int ROWS = 24;
  private static final int COLUMNS = 80;
  private static final long TICK_MILLIS = 250;

  private Bare() {}

  /** Runs until {@code q}. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    DefaultTerminalFactory factory = new DefaultTerminalFactory().setForceTextTerminal(true);
    TerminalScreen screen = new TerminalScreen(factory.createTerminal());
    screen.startScreen();
    for (int row = 0; row < ROWS; row++) {
      text(screen, 0, row, row == ROWS - 1 ? "ready" : "a line of a screen that is mostly text");
    }
    screen.refresh();
    if (arguments.length > 0) {
      tick(screen);
    } else {
      echo(screen);
    }
    screen.stopScreen();
  }

  private static void echo(TerminalScreen screen) throws IOException {
    int typed = 0;
    while (true) {
      KeyStroke key = screen.readInput();
      if (key.getKeyType() == KeyType.EOF || Character.valueOf('q').equals(key.getCharacter())) {
        return;
      }
      boolean back = key.getKeyType() == KeyType.Backspace;
      typed = back ? Math.max(0, typed - 1) : Math.min(COLUMNS - 1, typed + 1);
      text(screen, typed, ROWS / 2, back ? " " : String.valueOf(key.getCharacter()));
      screen.refresh();
    }
  }

  private static void tick(TerminalScreen screen) throws IOException, InterruptedException {
    for (int ticks = 0; ; ticks++) {
      KeyStroke key = screen.pollInput();
      if (key != null && Character.valueOf('q').equals(key.getCharacter())) {
        return;
      }
      text(screen, 0, 0, "tick " + ticks);
      screen.refresh();
      Thread.sleep(TICK_MILLIS);
    }
  }

  private static void text(TerminalScreen screen, int column, int row, String text) {
    for (int i = 0; i < text.length() && column + i < COLUMNS; i++) {
      screen.setCharacter(column + i, row, TextCharacter.fromCharacter(text.charAt(i))[0]);
    }
  }
}
