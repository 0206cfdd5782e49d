package loadwalk.view;

import java.util.Locale;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;

/** Says how a verdict and a number stand on a screen. */
final class Words {
  private static final Printer PRINTER = Printer.UTF8;

  private Words() {}

  static String upper(Verdict verdict) {
    return verdict.word().toUpperCase(Locale.ROOT);
  }

  static Style style(Verdict verdict) {
    return switch (verdict) {
      case CLEAR -> Style.GOOD;
      case HEED -> Style.HEED;
      case HALT -> Style.HALT;
    };
  }

  static String number(double value) {
    return PRINTER.exact(value, Unit.ONE).strip();
  }
}
