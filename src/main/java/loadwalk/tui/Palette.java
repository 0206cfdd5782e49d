package loadwalk.tui;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor.ANSI;
import loadwalk.view.Style;

/** Gives each style its look, from the sixteen colours or without any. */
enum Palette {
  COLOUR {
    @Override
    TextCharacter cell(char glyph, Style style) {
      switch (style) {
        case FAINT:
          return styled(glyph, ANSI.BLACK_BRIGHT, ANSI.DEFAULT);
        case STRONG:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT, SGR.BOLD);
        case HEADING:
          return styled(glyph, ANSI.CYAN, ANSI.DEFAULT, SGR.BOLD);
        case GOOD:
          return styled(glyph, ANSI.GREEN, ANSI.DEFAULT);
        case HEED:
          return styled(glyph, ANSI.YELLOW, ANSI.DEFAULT, SGR.BOLD);
        case HALT:
          return styled(glyph, ANSI.WHITE, ANSI.RED, SGR.BOLD);
        case FOCUS:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT, SGR.REVERSE);
        case KEY:
          return styled(glyph, ANSI.CYAN, ANSI.DEFAULT);
        default:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT);
      }
    }
  },
  PLAIN {
    @Override
    TextCharacter cell(char glyph, Style style) {
      switch (style) {
        case HALT:
        case FOCUS:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT, SGR.REVERSE);
        case STRONG:
        case HEADING:
        case HEED:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT, SGR.BOLD);
        case KEY:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT, SGR.UNDERLINE);
        default:
          return styled(glyph, ANSI.DEFAULT, ANSI.DEFAULT);
      }
    }
  };

  /** Returns the terminal's cell for a glyph in a style. */
  abstract TextCharacter cell(char glyph, Style style);

  static TextCharacter styled(char glyph, ANSI fore, ANSI back, SGR... modifiers) {
    return TextCharacter.fromCharacter(glyph, fore, back, modifiers)[0];
  }
}
