package loadwalk.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.json.Words;

/** Reads the steps of one sequence in order and keeps track of the loads already measured. */
final class StepReader {
  static final double LEAST_MINUTES = 0.01;
  static final double MOST_MINUTES = 600;

  /** A blank step of each kind, by the value of its {@code do} key. */
  static final Words<Step> KINDS =
      Words.of(
          List.of(
              WarmUp.lasting(LEAST_MINUTES),
              new Idle(),
              Measure.blank(),
              new OpenLoad(),
              new Recheck(List.of(Recheck.HEAVIEST), 0),
              new Music(LEAST_MINUTES),
              new Note("")),
          Step::verb);

  private final List<String> measured = new ArrayList<>();
  private final Map<String, Integer> counts = new HashMap<>();

  /** Reads or writes the steps under a key. */
  static List<Step> steps(Shape in, String key, List<Step> steps) {
    StepReader before = new StepReader();
    List<Placed> placed = steps.stream().map(step -> before.new Placed(step)).toList();
    return in.list(key, placed, before.new Placed(null)).stream().map(each -> each.step).toList();
  }

  private final class Placed implements Shaped<Placed> {
    private final Step step;

    Placed(Step step) {
      this.step = step;
    }

    /**
     * Describes the keys of the step. Its position is checked even if a key is faulty, so that all
     * faults are reported at once.
     */
    @Override
    public Placed shape(Shape in) {
      Step read = in.kind("do", step, KINDS);
      if (read != null) {
        read.misplaced(measured).forEach(fault -> in.refuse(fault.key(), fault.sentence()));
        if (read.load().isPresent()) {
          measured.add(PlannedStep.numbered(read.baseId(), counts));
        }
      }
      return new Placed(read);
    }
  }
}
