package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;

/**
 * A step that shows a text for the operator to confirm.
 *
 * @param text what to read or do
 */
public record Note(String text) implements Step {
  private static final int LONGEST = 2000;

  @Override
  public Step shape(Shape in) {
    return new Note(in.text("text", text, LONGEST, true));
  }

  @Override
  public String verb() {
    return "note";
  }

  @Override
  public String instruction(StepContext context) {
    return text;
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

  @Override
  public boolean isConfirmed() {
    return true;
  }
}
