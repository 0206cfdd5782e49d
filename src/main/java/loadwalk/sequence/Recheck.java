package loadwalk.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;
import loadwalk.text.Sentence;

/**
 * A step that measures earlier steps again after another warm-up. In a walk it becomes that warm-up
 * and one recheck for each step it names.
 *
 * @param of the ids of the steps, or {@link #HEAVIEST}
 * @param afterWarmMinutes the length of the warm-up before it, minutes; 0 for none
 */
public record Recheck(List<String> of, double afterWarmMinutes) implements Step {
  /** Stands for the heaviest step measured so far. */
  public static final String HEAVIEST = "heaviest";

  private static final int MOST_TARGETS = 50;

  /** Copies the list. */
  public Recheck {
    of = List.copyOf(of);
  }

  @Override
  public Step shape(Shape in) {
    List<String> ids = in.texts("of", of);
    if (ids.isEmpty() || ids.size() > MOST_TARGETS) {
      in.refuse("of", Sentence.of("«of» must name 1 to {} steps", MOST_TARGETS));
    }
    double minutes = in.numberOr("afterWarmMinutes", afterWarmMinutes, 0, StepReader.MOST_MINUTES);
    return new Recheck(ids, minutes);
  }

  @Override
  public String verb() {
    return "recheck";
  }

  @Override
  public String instruction(StepContext context) {
    return context.repeatedLoad().isEmpty()
        ? running(context)
        : Sentence.of("{} Put the tips where they were then.", running(context));
  }

  @Override
  public String running(StepContext context) {
    Optional<Load> load = context.repeatedLoad();
    return load.isEmpty()
        ? "There is no measured step to check again. Skip this step."
        : Sentence.of(
            "Measure {} again. {}",
            context.repeated().orElseThrow().id(),
            Measure.atTheLimit(load.get(), context));
  }

  @Override
  public Optional<Target> target(String id, StepContext context) {
    return context.repeatedLoad().map(l -> Target.loaded(id, l.mode(), l.ohms()));
  }

  @Override
  public List<ReadingId> readings(Mode mode) {
    return Measure.readingsIn(mode);
  }

  @Override
  public List<ReadingId> required() {
    return List.of(ReadingId.OUTPUT_VOLTS);
  }

  @Override
  public Optional<String> repeats() {
    return of.stream().findFirst();
  }

  @Override
  public List<Step> walked(Sequence sequence) {
    List<Step> steps = new ArrayList<>();
    if (afterWarmMinutes > 0) {
      steps.add(sequence.warmUpOf(afterWarmMinutes));
    }
    of.forEach(id -> steps.add(new Recheck(List.of(id), 0)));
    return steps;
  }

  @Override
  public List<Misplaced> misplaced(List<String> measured) {
    if (measured.isEmpty()) {
      return List.of(new Misplaced("do", "a recheck step needs a measure step before it"));
    }
    String known = String.join("» or «", measured);
    return of.stream()
        .filter(id -> !id.equals(HEAVIEST) && !measured.contains(id))
        .map(
            id ->
                new Misplaced(
                    "of",
                    Sentence.of(
                        "no measure step «{}» comes before this one; name «heaviest» or «{}»",
                        id,
                        known)))
        .toList();
  }
}
