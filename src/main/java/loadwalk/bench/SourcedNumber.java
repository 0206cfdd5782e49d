package loadwalk.bench;

/**
 * A value of a data table with its source.
 *
 * @param value the value, in the unit of its table
 * @param source what states it
 * @param how how it was obtained: read, from memory (with how sure), computed, or common practice
 */
record SourcedNumber(double value, String source, String how) {
  /** Checks the value and that its source is stated. */
  public SourcedNumber {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a table value must be finite, got " + value);
    }
    Checks.text(source, "source");
    Checks.text(how, "how");
  }
}
