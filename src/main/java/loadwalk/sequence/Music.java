package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A step that plays music and listens.
 *
 * @param minutes how long to play, minutes
 */
public record Music(double minutes) implements Step {
  @Override
  public Step shape(Shape in) {
    return new Music(
        in.number("minutes", minutes, StepReader.LEAST_MINUTES, StepReader.MOST_MINUTES));
  }

  @Override
  public String verb() {
    return "music";
  }

  @Override
  public String instruction(StepContext context) {
    return Sentence.of("Play music for {} min and listen.", Printer.UTF8.exact(minutes, Unit.ONE));
  }

  @Override
  public Optional<Target> target(String id, StepContext context) {
    return Optional.empty();
  }

  @Override
  public List<ReadingId> readings(Mode mode) {
    return List.of();
  }

  @Override
  public List<ReadingId> required() {
    return List.of();
  }
}
