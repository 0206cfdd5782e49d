package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;

/** A step that reads the idle current with no tone. */
public record Idle() implements Step {
  @Override
  public Step shape(Shape in) {
    return this;
  }

  @Override
  public String verb() {
    return "idle";
  }

  @Override
  public String instruction(StepContext context) {
    return "No tone. Read the supply current at idle.";
  }

  @Override
  public Optional<Target> target(String id, StepContext context) {
    return Optional.of(Target.idle(id));
  }

  @Override
  public List<ReadingId> readings(Mode mode) {
    return List.of(
        ReadingId.SUPPLY_AMPS,
        ReadingId.SUPPLY_VOLTS,
        ReadingId.SINK_CELSIUS,
        ReadingId.AMBIENT_CELSIUS);
  }

  @Override
  public List<ReadingId> required() {
    return List.of(ReadingId.SUPPLY_AMPS);
  }
}
