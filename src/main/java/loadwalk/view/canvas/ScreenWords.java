package loadwalk.view.canvas;

import loadwalk.forecast.Verdict;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;

/** Says how a verdict and a number stand on a screen. */
public final class ScreenWords {
  private static final Printer PRINTER = Printer.UTF8;

  private ScreenWords() {}

  /** Returns how the verdict looks. */
  public static Style style(Verdict verdict) {
    return switch (verdict) {
      case CLEAR -> Style.GOOD;
      case HEED -> Style.HEED;
      case HALT -> Style.HALT;
    };
  }

  /** Returns a number without a unit, every digit it has. */
  public static String number(double value) {
    return PRINTER.exact(value, Unit.ONE).strip();
  }
}
