package loadwalk.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loadwalk.bench.Mode;
import loadwalk.json.Fields;

/** Reads the steps of one sequence in order, remembering the loads already measured. */
final class StepReader {
  private static final double LEAST_MINUTES = 0.01;
  private static final double MOST_MINUTES = 600;
  private static final int MOST_TARGETS = 50;
  private static final int LONGEST_NOTE = 2000;
  private static final Map<String, Mode> MODES = new LinkedHashMap<>();

  static {
    for (Mode mode : Mode.values()) {
      MODES.put(mode.word(), mode);
    }
  }

  private final List<String> measured = new ArrayList<>();
  private final Map<String, Integer> counts = new HashMap<>();
  private final Map<String, Function<Fields, Optional<Step>>> readers = new LinkedHashMap<>();

  StepReader() {
    readers.put("warm-up", this::warmUp);
    readers.put("idle", fields -> fields.build(Step.Idle::new));
    readers.put("measure", this::measure);
    readers.put("open-load", this::openLoad);
    readers.put("recheck", this::recheck);
    readers.put("music", this::music);
    readers.put("note", this::note);
  }

  /** Reads one step; of an unknown one only that is said. */
  Optional<Step> read(Fields fields) {
    return fields.requiredWord("do", readers).flatMap(reader -> reader.apply(fields));
  }

  private Optional<Step> warmUp(Fields fields) {
    double minutes = fields.requiredNumber("minutes", LEAST_MINUTES, MOST_MINUTES);
    double power =
        fields.number("powerFraction", 0.01, 1).orElse(PlannedStep.DEFAULT_POWER_FRACTION);
    double slope =
        fields
            .number("steadyCelsiusPerMinute", 0.01, 100)
            .orElse(PlannedStep.DEFAULT_STEADY_CELSIUS_PER_MINUTE);
    return fields.build(() -> new Step.WarmUp(minutes, power, slope));
  }

  private Optional<Step> measure(Fields fields) {
    Optional<Mode> mode = fields.requiredWord("mode", MODES);
    double ohms = fields.requiredNumber("ohms", 0.05, 1000);
    boolean optional = fields.flag("optional").orElse(false);
    Optional<Step> step = fields.build(() -> new Step.Measure(mode.orElseThrow(), ohms, optional));
    if (mode.isPresent() && !Double.isNaN(ohms)) {
      measured.add(PlannedStep.numbered(Step.loadId(mode.get(), ohms), counts));
    }
    return step;
  }

  private Optional<Step> openLoad(Fields fields) {
    if (measured.isEmpty()) {
      fields.fault("do", "an open-load step needs a measure step before it to compare with");
    }
    return fields.build(Step.OpenLoad::new);
  }

  private Optional<Step> recheck(Fields fields) {
    fields.require("of");
    int before = fields.faults().count();
    List<String> of = fields.texts("of");
    if (fields.faults().count() == before) {
      checkTargets(fields, of);
    }
    double minutes = fields.number("afterWarmMinutes", 0, MOST_MINUTES).orElse(0);
    return fields.build(() -> new Step.Recheck(of, minutes));
  }

  private void checkTargets(Fields fields, List<String> of) {
    if (fields.node("of").isPresent() && (of.isEmpty() || of.size() > MOST_TARGETS)) {
      fields.fault("of", "«of» must name 1 to " + MOST_TARGETS + " steps");
    }
    if (measured.isEmpty()) {
      fields.fault("do", "a recheck step needs a measure step before it");
      return;
    }
    for (String target : of) {
      if (!target.equals(Step.Recheck.HEAVIEST) && !measured.contains(target)) {
        String known = "«heaviest», «" + String.join("», «", measured) + "»";
        fields.fault(
            "of", "«" + target + "» is no measure step before this one; it can be " + known);
      }
    }
  }

  private Optional<Step> music(Fields fields) {
    double minutes = fields.requiredNumber("minutes", LEAST_MINUTES, MOST_MINUTES);
    return fields.build(() -> new Step.Music(minutes));
  }

  private Optional<Step> note(Fields fields) {
    fields.require("text");
    Optional<String> text = fields.text("text", LONGEST_NOTE, true);
    return fields.build(() -> new Step.Note(text.orElseThrow()));
  }
}
