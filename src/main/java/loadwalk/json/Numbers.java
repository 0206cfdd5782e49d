package loadwalk.json;

/** Writes numbers the shortest way. */
final class Numbers {
  private static final double LARGEST_WHOLE = 1e15;

  private Numbers() {}

  static boolean isWhole(double value) {
    return value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE;
  }

  static String text(double value) {
    return isWhole(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
