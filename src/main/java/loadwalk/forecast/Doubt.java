package loadwalk.forecast;

import java.util.Objects;
import java.util.Optional;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.ReadingId;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;

/**
 * An entry that the forecast or another reading contradicts.
 *
 * @param reading the doubted reading
 * @param slip the likeliest slip
 * @param text what is off, by how much, and what it was judged by, in short sentences
 * @param lookAt what to check on the bench, in one or two sentences
 * @param earlierStep the earlier step where the slip was made, if this reading only reveals it
 */
public record Doubt(
    ReadingId reading, Slip slip, String text, String lookAt, Optional<String> earlierStep)
    implements Shaped<Doubt> {
  /** Checks that no field is null. */
  public Doubt {
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(slip, "slip");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(lookAt, "lookAt");
    Objects.requireNonNull(earlierStep, "earlierStep");
  }

  /** Returns an empty doubt to read a kept one into. */
  public static Doubt blank() {
    return new Doubt(ReadingId.OUTPUT_VOLTS, Slip.UNNAMED, "", "");
  }

  @Override
  public Doubt shape(Shape in) {
    return new Doubt(
        in.word("reading", reading, BenchFiles.READINGS),
        in.word("slip", slip, ForecastWords.SLIPS),
        in.text("text", text),
        in.text("lookAt", lookAt),
        in.text("earlierStep", earlierStep));
  }

  /** Creates a doubt whose slip is in the doubted reading itself. */
  public Doubt(ReadingId reading, Slip slip, String text, String lookAt) {
    this(reading, slip, text, lookAt, Optional.empty());
  }

  /** Returns the likeliest slip as a question followed by a space; empty if no slip is named. */
  public String question() {
    if (slip != Slip.UNNAMED) {
      return Sentence.of("{}? ", slipWords());
    }
    return earlierStep.map(step -> Sentence.of("something off in {}? ", step)).orElse("");
  }

  /** Returns the slip in words, with its step if that is an earlier one. */
  public String slipWords() {
    return earlierStep
        .map(step -> Sentence.of("{}, in {}", slip.words(), step))
        .orElse(slip.words());
  }
}
