package loadwalk.tui;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor.ANSI;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.List;
import loadwalk.view.canvas.Style;

/** The look of each style, in the sixteen colours or in none. */
enum Palette {
  COLOUR {
    @Override
    Ink ink(Style style) {
      switch (style) {
        case FAINT:
          return new Ink(ANSI.BLACK_BRIGHT, ANSI.DEFAULT, List.of());
        case STRONG:
          return new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of(SGR.BOLD));
        case HEADING:
          return new Ink(ANSI.CYAN, ANSI.DEFAULT, List.of(SGR.BOLD));
        case GOOD:
          return new Ink(ANSI.GREEN, ANSI.DEFAULT, List.of());
        case HEED:
          return new Ink(ANSI.YELLOW, ANSI.DEFAULT, List.of(SGR.BOLD));
        case HALT:
          return new Ink(ANSI.WHITE, ANSI.RED, List.of(SGR.BOLD));
        case FOCUS:
          return new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of(SGR.REVERSE));
        case KEY:
          return new Ink(ANSI.CYAN, ANSI.DEFAULT, List.of());
        default:
          return new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of());
      }
    }
  },
  PLAIN {
    @Override
    Ink ink(Style style) {
      return switch (style) {
        case HALT, FOCUS -> new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of(SGR.REVERSE));
        case STRONG, HEADING, HEED -> new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of(SGR.BOLD));
        case KEY -> new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of(SGR.UNDERLINE));
        case TEXT, FAINT, GOOD -> new Ink(ANSI.DEFAULT, ANSI.DEFAULT, List.of());
      };
    }
  };

  private record Ink(ANSI fore, ANSI back, List<SGR> modifiers) {}

  /** Returns the look of a style. */
  abstract Ink ink(Style style);

  /** Switches the terminal to a style. */
  void put(Style style, Terminal terminal) throws IOException {
    Ink ink = ink(style);
    terminal.resetColorAndSGR();
    if (ink.fore() != ANSI.DEFAULT) {
      terminal.setForegroundColor(ink.fore());
    }
    if (ink.back() != ANSI.DEFAULT) {
      terminal.setBackgroundColor(ink.back());
    }
    for (SGR modifier : ink.modifiers()) {
      terminal.enableSGR(modifier);
    }
  }
}
