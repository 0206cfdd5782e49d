package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;
import loadwalk.text.Sentence;

/**
 * A step that reads the volts across the first load of the sequence, then the volts with that load
 * disconnected.
 */
public record OpenLoad() implements Step {
  @Override
  public Step shape(Shape in) {
    return this;
  }

  @Override
  public String verb() {
    return "open-load";
  }

  @Override
  public String instruction(StepContext context) {
    Optional<Load> load = context.sequence().firstLoad();
    return load.isEmpty()
        ? "This sequence names no load to take off. Skip this step."
        : Sentence.of(
            "{} Set a level below the limit and read the output. Take the load off, generator"
                + " untouched, and read again.",
            load.get().connect());
  }

  @Override
  public Optional<Target> target(String id, StepContext context) {
    return context
        .sequence()
        .firstLoad()
        .map(l -> new Target(id, Target.Kind.OPEN_LOAD, l.mode(), l.ohms(), 1));
  }

  @Override
  public List<ReadingId> readings(Mode mode) {
    return List.of(ReadingId.OUTPUT_VOLTS, ReadingId.OPEN_VOLTS);
  }

  @Override
  public List<ReadingId> required() {
    return List.of(ReadingId.OPEN_VOLTS);
  }

  @Override
  public List<Misplaced> misplaced(List<String> measured) {
    return measured.isEmpty()
        ? List.of(
            new Misplaced("do", "an open-load step needs a measure step before it to compare with"))
        : List.of();
  }
}
