package loadwalk.numeric;

/** Checks rows of numbers before anything is computed from them: no NaN passes. */
final class Samples {
  private Samples() {}

  /** Refuses a row that is too short or holds a number that is not finite. */
  static double[] finite(double[] values, int atLeast, String name) {
    if (values.length < atLeast) {
      throw new IllegalArgumentException(
          name + " needs at least " + atLeast + " numbers, got " + values.length);
    }
    for (int i = 0; i < values.length; i++) {
      // Naming every element would cost more than the sums, so only a bad one is named.
      if (!Double.isFinite(values[i])) {
        finite(values[i], name + "[" + i + "]");
      }
    }
    return values;
  }

  static double finite(double value, String name) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite, got " + value);
    }
    return value;
  }

  static double zeroOrMore(double value, String name) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number from 0 up, got " + value);
    }
    return value;
  }

  static double positive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number above 0, got " + value);
    }
    return value;
  }

  static void sameLength(double[] first, double[] second, String names) {
    if (first.length != second.length) {
      throw new IllegalArgumentException(
          names + " must have equal lengths, got " + first.length + " and " + second.length);
    }
  }
}
