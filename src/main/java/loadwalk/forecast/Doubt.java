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
 * @param reading the reading doubted
 * @param slip the likeliest slip
 * @param text what is off and by how much, and what it was judged by, in short sentences
 * @param lookAt what to look at on the bench, one or two sentences
 * @param earlierStep the step that carries the slip where it is not the one of the reading: this
 *     reading only shows it
 */
public record Doubt(
    ReadingId reading, Slip slip, String text, String lookAt, Optional<String> earlierStep)
    implements Shaped<Doubt> {
  /** Checks that nothing is missing. */
  public Doubt {
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(slip, "slip");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(lookAt, "lookAt");
    Objects.requireNonNull(earlierStep, "earlierStep");
  }

  /** Returns a doubt of nothing, to be read into. */
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

  /** Makes a doubt whose slip is in the reading doubted. */
  public Doubt(ReadingId reading, Slip slip, String text, String lookAt) {
    this(reading, slip, text, lookAt, Optional.empty());
  }

  /** Returns the likeliest slip as a question with a blank behind it; empty where none is known. */
  public String question() {
    if (slip != Slip.UNNAMED) {
      return Sentence.of("{}? ", slipWords());
    }
    return earlierStep.map(step -> Sentence.of("something off in {}? ", step)).orElse("");
  }

  /** Returns the slip in words, with the step where it is an earlier one. */
  public String slipWords() {
    return earlierStep
        .map(step -> Sentence.of("{}, in {}", slip.words(), step))
        .orElse(slip.words());
  }
}
