package loadwalk.forecast;

import java.util.Objects;
import java.util.Optional;
import loadwalk.bench.ReadingId;

/**
 * An entry that the forecast or another reading contradicts.
 *
 * @param reading the reading doubted
 * @param slip the likeliest slip
 * @param text what is off and by how much, and how it was decided, one or two sentences
 * @param lookAt what to look at on the bench, one or two sentences
 * @param earlierStep the step that carries the slip where it is not the one of the reading: this
 *     reading only shows it
 */
public record Doubt(
    ReadingId reading, Slip slip, String text, String lookAt, Optional<String> earlierStep) {
  /** Checks that nothing is missing. */
  public Doubt {
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(slip, "slip");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(lookAt, "lookAt");
    Objects.requireNonNull(earlierStep, "earlierStep");
  }

  /** Makes a doubt whose slip is in the reading doubted. */
  public Doubt(ReadingId reading, Slip slip, String text, String lookAt) {
    this(reading, slip, text, lookAt, Optional.empty());
  }

  /** Returns the likeliest slip as a question with a blank behind it; empty where none is known. */
  public String question() {
    if (slip != Slip.UNNAMED) {
      return slipWords() + "? ";
    }
    return earlierStep.map(step -> "something off in " + step + "? ").orElse("");
  }

  /** Returns the slip in words, with the step where it is an earlier one. */
  public String slipWords() {
    return slip.words() + earlierStep.map(step -> ", in " + step).orElse("");
  }
}
