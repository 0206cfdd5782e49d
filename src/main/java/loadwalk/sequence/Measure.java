package loadwalk.sequence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A step that raises the tone to the limit into a load and reads volts and amps.
 *
 * @param mode stereo or bridged
 * @param ohms the load, ohms
 * @param optional whether the operator may skip it without giving a reason
 */
public record Measure(Mode mode, double ohms, boolean optional) implements Step {
  private static final Map<String, Mode> MODES = new LinkedHashMap<>();

  private static final List<ReadingId> BRIDGED =
      List.of(
          ReadingId.LOAD_OHMS,
          ReadingId.OUTPUT_VOLTS,
          ReadingId.SUPPLY_VOLTS,
          ReadingId.SUPPLY_AMPS,
          ReadingId.THD_PERCENT,
          ReadingId.SINK_CELSIUS,
          ReadingId.FREQUENCY_HERTZ);

  private static final List<ReadingId> STEREO =
      List.of(
          ReadingId.LOAD_OHMS,
          ReadingId.OTHER_LOAD_OHMS,
          ReadingId.OUTPUT_VOLTS,
          ReadingId.OTHER_OUTPUT_VOLTS,
          ReadingId.SUPPLY_VOLTS,
          ReadingId.SUPPLY_AMPS,
          ReadingId.THD_PERCENT,
          ReadingId.SINK_CELSIUS,
          ReadingId.FREQUENCY_HERTZ);

  static {
    for (Mode mode : Mode.values()) {
      MODES.put(mode.word(), mode);
    }
  }

  /** Returns a measurement with neither mode nor load set. */
  static Measure blank() {
    return new Measure(null, Double.NaN, false);
  }

  /**
   * Describes the keys of the step. A step with a faulty mode or load has no id, so its position is
   * not checked.
   */
  @Override
  public Step shape(Shape in) {
    Mode its = in.word("mode", mode, BenchFiles.MODES);
    double load = in.number("ohms", ohms, 0.05, 1000);
    Measure read = new Measure(its, load, in.flagOr("optional", optional));
    if (its == null || Double.isNaN(load)) {
      throw new IllegalArgumentException("a measurement needs its mode and its load");
    }
    return read;
  }

  @Override
  public String verb() {
    return "measure";
  }

  @Override
  public String baseId() {
    return new Load(mode, ohms).id();
  }

  @Override
  public String instruction(StepContext context) {
    return Sentence.of("{} {}", running(context), new Load(mode, ohms).tips());
  }

  @Override
  public String running(StepContext context) {
    return atTheLimit(new Load(mode, ohms), context);
  }

  /** Returns the instruction for measuring a load at the limit of the sequence. */
  static String atTheLimit(Load load, StepContext context) {
    return Sentence.of(
        "{} Raise the {} tone to {} THD, then read.",
        load.connect(),
        Printer.UTF8.exact(context.sequence().toneHertz(), Unit.HERTZ),
        Printer.UTF8.exact(context.sequence().limitThdPercent(), Unit.PERCENT));
  }

  @Override
  public Optional<Target> target(String id, StepContext context) {
    return Optional.of(Target.loaded(id, mode, ohms));
  }

  @Override
  public List<ReadingId> readings(Mode connected) {
    return readingsIn(connected);
  }

  /** Returns the readings of a load at the limit. */
  static List<ReadingId> readingsIn(Mode mode) {
    return switch (mode) {
      case STEREO -> STEREO;
      case BRIDGED -> BRIDGED;
    };
  }

  @Override
  public List<ReadingId> required() {
    return List.of(ReadingId.OUTPUT_VOLTS);
  }

  @Override
  public Optional<Load> load() {
    return Optional.of(new Load(mode, ohms));
  }

  @Override
  public boolean isOptional() {
    return optional;
  }
}
