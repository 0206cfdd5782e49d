package loadwalk.quantity;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What follows the digits of an entry: a prefix, a unit, both or nothing.
 *
 * @param unit the unit, or null where only a prefix was typed
 * @param powerOfTen the prefix
 * @param offset what to subtract before the factor applies, for degrees Fahrenheit
 * @param factor one typed unit in SI units
 */
record Suffix(Unit unit, int powerOfTen, double offset, double factor) {
  private static final Map<String, Suffix> UNITS = new HashMap<>();
  private static final Map<Character, Integer> PREFIXES =
      Map.of('k', 3, 'K', 3, 'M', 6, 'm', -3, 'u', -6, 'μ', -6);

  static {
    name(Unit.VOLT, "v", "volt", "volts", "vrms", "vac", "vdc", "voltsrms");
    name(Unit.AMPERE, "a", "amp", "amps", "ampere", "amperes", "arms", "adc", "aac");
    name(Unit.WATT, "w", "watt", "watts", "wrms");
    name(Unit.OHM, "ω", "r", "ohm", "ohms", "ohm(s)");
    name(Unit.CELSIUS, "c", "°c", "degc", "celsius", "degreescelsius", "°", "deg", "degrees");
    name(Unit.HERTZ, "hz", "hertz");
    name(Unit.PERCENT, "%", "percent", "pct");
    name(Unit.SECOND, "s", "sec", "secs", "second", "seconds");
    name(Unit.METRE, "metre", "metres", "meter", "meters");
    name(Unit.DECIBEL, "db", "decibel", "decibels");
    for (String word : new String[] {"f", "°f", "degf", "fahrenheit", "degreesfahrenheit"}) {
      UNITS.put(word, new Suffix(Unit.CELSIUS, 0, 32, 5.0 / 9));
    }
    for (String word : new String[] {"min", "mins", "minute", "minutes"}) {
      UNITS.put(word, new Suffix(Unit.SECOND, 0, 0, 60));
    }
    for (String word : new String[] {"h", "hour", "hours"}) {
      UNITS.put(word, new Suffix(Unit.SECOND, 0, 0, 3600));
    }
    UNITS.put("cm", new Suffix(Unit.METRE, -2, 0, 1));
  }

  private static void name(Unit unit, String... words) {
    for (String word : words) {
      UNITS.put(word, none(unit));
    }
  }

  /** Returns a suffix of a unit without prefix. */
  static Suffix none(Unit unit) {
    return new Suffix(unit, 0, 0, 1);
  }

  /**
   * Reads a suffix. A lone m is metres where metres are wanted, refused where seconds are (it may
   * mean minutes), and otherwise a thousandth.
   *
   * @param text what follows the digits, not empty
   * @param wanted the units that may be typed
   */
  static Optional<Suffix> read(String text, Set<Unit> wanted) {
    String word = text.replace(" ", "");
    boolean metres = wanted.contains(Unit.METRE);
    Optional<Suffix> whole = unit(word, metres);
    if (whole.isPresent() || word.isEmpty()) {
      return whole;
    }
    Integer power = PREFIXES.get(word.charAt(0));
    if (power == null) {
      return Optional.empty();
    }
    String rest = word.substring(1);
    if (rest.isEmpty()) {
      if (wanted.contains(Unit.SECOND)) {
        return Optional.empty();
      }
      return Optional.of(new Suffix(null, power, 0, 1));
    }
    return unit(rest, true)
        .filter(Suffix::isPlain)
        .map(suffix -> new Suffix(suffix.unit, power, 0, 1));
  }

  private static Optional<Suffix> unit(String word, boolean metres) {
    if (metres && word.equals("m")) {
      return Optional.of(none(Unit.METRE));
    }
    return Optional.ofNullable(UNITS.get(word.toLowerCase(Locale.ROOT)));
  }

  /** Tells whether the typed unit is the SI unit itself, perhaps with a prefix. */
  boolean isPlain() {
    return offset == 0 && factor == 1;
  }

  /** Tells whether the prefix is used with a unit; mega only where it makes sense. */
  boolean mayStandBefore(Unit used) {
    return switch (used) {
      case OHM, HERTZ, ONE -> true;
      case VOLT, AMPERE, WATT, SECOND, METRE -> powerOfTen < 6;
      case CELSIUS, PERCENT, DECIBEL -> powerOfTen == 0;
    };
  }

  /** Returns this prefix with a unit. */
  Suffix withUnit(Unit used) {
    return new Suffix(used, powerOfTen, offset, factor);
  }

  /** Converts a typed number to SI units. */
  double toSi(BigDecimal number) {
    return (number.scaleByPowerOfTen(powerOfTen).doubleValue() - offset) * factor;
  }

  /** Converts a typed step to SI units. */
  double stepToSi(BigDecimal step) {
    return step.scaleByPowerOfTen(powerOfTen).doubleValue() * factor;
  }
}
