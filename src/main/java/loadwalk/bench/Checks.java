package loadwalk.bench;

/** Checks the numbers of a record, so that a bug in a reader stops here and not on the bench. */
final class Checks {
  private Checks() {}

  static double positive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number above 0, got " + value);
    }
    return value;
  }

  static double zeroOrMore(double value, String name) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number from 0 up, got " + value);
    }
    return value;
  }

  static String text(String value, String name) {
    if (value == null || value.isBlank()) {
      throw new IllegalArgumentException(name + " must not be empty");
    }
    return value;
  }
}
