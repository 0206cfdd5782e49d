package loadwalk.tui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor.ANSI;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.canvas.Style;
import org.junit.jupiter.api.Test;

/** What a style looks like on a terminal: a warning is never mistaken for calm text. */
class SurfaceTest {
  private static final Size SIZE = new Size(12, 9);

  private final DefaultVirtualTerminal terminal =
      new DefaultVirtualTerminal(new TerminalSize(12, 9));

  private static Frame everyStyle() {
    Canvas canvas = new Canvas(SIZE, new Look(false));
    for (Style style : Style.values()) {
      canvas.text(0, style.ordinal(), style.name(), style);
    }
    return canvas.frame();
  }

  private Map<Style, TextCharacter> shown(boolean colour) throws IOException {
    new Surface(terminal, colour).show(everyStyle());
    Map<Style, TextCharacter> shown = new EnumMap<>(Style.class);
    for (Style style : Style.values()) {
      shown.put(style, terminal.getCharacter(0, style.ordinal()));
    }
    return shown;
  }

  @Test
  void halt_isWhiteOnRed_heedIsBoldYellow_clearIsGreen() throws IOException {
    Map<Style, TextCharacter> shown = shown(true);
    assertEquals(ANSI.RED, shown.get(Style.HALT).getBackgroundColor());
    assertEquals(ANSI.WHITE, shown.get(Style.HALT).getForegroundColor());
    assertTrue(shown.get(Style.HALT).isBold());
    assertEquals(ANSI.YELLOW, shown.get(Style.HEED).getForegroundColor());
    assertTrue(shown.get(Style.HEED).isBold());
    assertEquals(ANSI.GREEN, shown.get(Style.GOOD).getForegroundColor());
    assertEquals(ANSI.DEFAULT, shown.get(Style.TEXT).getForegroundColor());
    assertTrue(shown.get(Style.FOCUS).isReversed());
    Set<String> looks = new HashSet<>();
    shown.values().forEach(c -> looks.add(c.withCharacter('x').toString()));
    assertEquals(Style.values().length, looks.size(), "each style has its own look");
  }

  @Test
  void withoutColour_warningsStillStandOut_fromCalmText() throws IOException {
    Map<Style, TextCharacter> shown = shown(false);
    shown.values().forEach(c -> assertEquals(ANSI.DEFAULT, c.getForegroundColor()));
    assertTrue(shown.get(Style.HALT).isReversed());
    assertTrue(shown.get(Style.FOCUS).isReversed());
    assertTrue(shown.get(Style.HEED).isBold());
    assertTrue(shown.get(Style.KEY).getModifiers().contains(SGR.UNDERLINE));
    for (Style calm : new Style[] {Style.TEXT, Style.FAINT, Style.GOOD}) {
      assertTrue(shown.get(calm).getModifiers().isEmpty(), calm.name());
    }
  }

  @Test
  void cellThatChangesItsStyleAlone_isPaintedAnew() throws IOException {
    Surface surface = new Surface(terminal, true);
    surface.show(line(Style.TEXT));
    assertEquals(4, surface.show(line(Style.HALT)));
    assertEquals(ANSI.RED, terminal.getCharacter(1, 2).getBackgroundColor());
    assertEquals(0, surface.show(line(Style.HALT)));
    surface.forget();
    assertEquals(12 * 9, surface.show(line(Style.HALT)));
    assertFalse(terminal.getCharacter(0, 2).isBold());
  }

  private static Frame line(Style style) {
    Canvas canvas = new Canvas(SIZE, new Look(false));
    canvas.text(1, 2, "STOP", style);
    return canvas.frame();
  }
}
