package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loadwalk.numeric.ThermalFit;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.walk.Steadiness.Left;
import loadwalk.walk.Steadiness.Told;

/** Words how steady a warm-up is, for screen, plain mode and sheet. */
public final class SteadinessWords {
  /** How far off its curve a reading lies before the operator is told, K. Chosen by hand. */
  private static final double TOLD_KELVIN = 1;

  private static final double COVERAGE = 2;

  private SteadinessWords() {}

  /** Returns what the temperatures tell, and when the next one is wanted. */
  public static String now(Steadiness steadiness) {
    List<String> sentences = new ArrayList<>();
    sentences.add(told(steadiness));
    steadiness
        .left()
        .filter(left -> left.kelvin() >= TOLD_KELVIN)
        .ifPresent(left -> sentences.add(left(left)));
    if (steadiness.told() != Told.NOTHING && steadiness.told() != Told.STEADY) {
      sentences.add(
          Sentence.of(
              "Read the heatsink at {} of the warm-up.", clock(steadiness.readAtSeconds())));
    }
    return String.join(" ", sentences);
  }

  private static String told(Steadiness now) {
    return switch (now.told()) {
      case NOTHING -> "No temperature was read: the clock alone decides.";
      case TOO_FEW -> "Too few temperatures to tell whether the heatsink is steady.";
      case TOO_OLD -> "The last temperature is too old to tell whether the heatsink is steady.";
      case MOVING ->
          Sentence.of(
              "The heatsink moves {} °C a minute; up to {} is steady.",
              slope(now.slope().orElseThrow()),
              Printer.UTF8.exact(now.limit(), Unit.ONE));
      case STEADY ->
          Sentence.of(
              "The heatsink moves {} °C a minute: steady.", slope(now.slope().orElseThrow()));
    };
  }

  /** Returns how steady a warm-up was when it ended, for the sheet. */
  public static String atTheEnd(Steadiness steadiness) {
    String end =
        switch (steadiness.told()) {
          case NOTHING -> "No temperatures were typed, so the clock alone decided.";
          case TOO_FEW -> "Too few of them to tell how steady it was at the end.";
          case TOO_OLD -> "The last one was too old to tell how steady it was at the end.";
          case MOVING, STEADY ->
              Sentence.of(
                  "At the end the heatsink moved {} °C a minute.",
                  slope(steadiness.slope().orElseThrow()));
        };
    return steadiness
        .left()
        .filter(left -> left.kelvin() >= TOLD_KELVIN)
        .map(left -> Sentence.of("{} {}", left(left), end))
        .orElse(end);
  }

  private static String left(Left left) {
    return Sentence.of(
        "The temperatures leave their curve by {} K, as when a fan switches: those from {} on"
            + " count.",
        Printer.UTF8.value(left.kelvin(), Unit.ONE, 2),
        clock(60 * left.sinceMinutes()));
  }

  private static String slope(ThermalFit.Slope slope) {
    return Sentence.of(
        "{} ± {}",
        String.format(Locale.ROOT, "%+.2f", slope.celsiusPerMinute()),
        String.format(Locale.ROOT, "%.2f", COVERAGE * slope.u()));
  }

  /** Returns minutes and seconds of the warm-up clock, rounded up so that no time left is over. */
  public static String clock(double seconds) {
    long whole = (long) Math.ceil(seconds - 1e-9);
    return String.format(Locale.ROOT, "%02d:%02d", Math.min(whole / 60, 999), whole % 60);
  }
}
