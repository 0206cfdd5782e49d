package loadwalk.report.page;

/** The sizes that a picture may state: a page that shows it makes room for every point of it. */
final class PictureSize {
  /** More than any camera takes today, and what a browser can still hold. */
  static final long MOST_POINTS = 250_000_000;

  private PictureSize() {}

  /** Tells whether a picture can be so wide and so high. */
  static boolean isPossible(long wide, long high) {
    return wide > 0 && high > 0 && wide <= MOST_POINTS / high;
  }
}
