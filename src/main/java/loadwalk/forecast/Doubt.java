package loadwalk.forecast;

import java.util.Objects;
import loadwalk.bench.ReadingId;

/**
 * An entry that the forecast or another reading contradicts.
 *
 * @param reading the reading doubted
 * @param slip the likeliest slip
 * @param text what is off and by how much, and how it was decided, one or two sentences
 * @param lookAt what to look at on the bench, one sentence
 */
public record Doubt(ReadingId reading, Slip slip, String text, String lookAt) {
  /** Checks that nothing is missing. */
  public Doubt {
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(slip, "slip");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(lookAt, "lookAt");
  }
}
