package loadwalk.experiment;

/** Counts how often something came true. */
final class Tally {
  private long hits;
  private long tries;

  void add(boolean hit) {
    tries++;
    if (hit) {
      hits++;
    }
  }

  void addAll(Tally other) {
    hits += other.hits;
    tries += other.tries;
  }

  long hits() {
    return hits;
  }

  long tries() {
    return tries;
  }

  /** Returns the percentage, NaN where nothing was tried. */
  double percent() {
    return 100.0 * hits / tries;
  }
}
