package loadwalk.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loadwalk.json.Fields;

/** Reads the steps of one sequence in order, remembering the loads already measured. */
final class StepReader {
  static final double LEAST_MINUTES = 0.01;
  static final double MOST_MINUTES = 600;

  private final List<String> measured = new ArrayList<>();
  private final Map<String, Integer> counts = new HashMap<>();

  /** Each kind by the word of its {@code do} key; a kind makes what its fields allow. */
  private final Map<String, Function<Fields, Optional<Step>>> kinds = new LinkedHashMap<>();

  StepReader() {
    kinds.put("warm-up", WarmUp::read);
    kinds.put("idle", fields -> Optional.of(new Idle()));
    kinds.put("measure", Measure::read);
    kinds.put("open-load", fields -> Optional.of(new OpenLoad()));
    kinds.put("recheck", Recheck::read);
    kinds.put("music", Music::read);
    kinds.put("note", Note::read);
  }

  /** Reads one step; of an unknown one only that is said. */
  Optional<Step> read(Fields fields) {
    Optional<Function<Fields, Optional<Step>>> kind = fields.requiredWord("do", kinds);
    Optional<Step> step = kind.flatMap(known -> known.apply(fields));
    step.ifPresent(made -> place(made, fields));
    return kind.flatMap(known -> fields.build(step::orElseThrow));
  }

  /** A step at fault in a key of its own is placed all the same, so that all is said at once. */
  private void place(Step step, Fields fields) {
    step.misplaced(measured).forEach(fault -> fields.fault(fault.key(), fault.sentence()));
    if (step.load().isPresent()) {
      measured.add(PlannedStep.numbered(step.baseId(), counts));
    }
  }
}
