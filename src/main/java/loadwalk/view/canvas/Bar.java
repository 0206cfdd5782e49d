package loadwalk.view.canvas;

import java.util.OptionalDouble;
import loadwalk.forecast.Band;

/** Draws a forecast as a bar with the reading where it landed. */
public final class Bar {
  private static final double MARGIN = 0.75;

  private Bar() {}

  /** Paints the bar; a reading beyond its ends shows as an arrow at the edge. */
  public static void paint(
      Canvas canvas, int column, int row, int width, Band band, OptionalDouble reading) {
    double spread = Math.max(band.high() - band.low(), Math.abs(band.middle()) * 1e-3);
    double from = band.low() - MARGIN * spread;
    double to = band.high() + MARGIN * spread;
    for (int i = 0; i < width; i++) {
      double at = from + (to - from) * (i + 0.5) / width;
      boolean inside = band.holds(at);
      char glyph = inside ? canvas.look().pick('▒', '=') : canvas.look().pick('·', '.');
      canvas.put(column + i, row, glyph, inside ? Style.GOOD : Style.FAINT);
    }
    if (reading.isPresent() && !Double.isNaN(reading.getAsDouble())) {
      double value = reading.getAsDouble();
      Style style = band.holds(value) ? Style.STRONG : Style.HEED;
      if (value < from) {
        canvas.put(column, row, canvas.look().pick('◀', '<'), style);
      } else if (value > to) {
        canvas.put(column + width - 1, row, canvas.look().pick('▶', '>'), style);
      } else {
        int at = Math.min(width - 1, (int) ((value - from) / (to - from) * width));
        canvas.put(column + at, row, canvas.look().pick('●', 'O'), style);
      }
    }
  }
}
