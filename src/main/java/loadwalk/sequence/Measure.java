package loadwalk.sequence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Fields;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Raises the tone to the limit into a load and reads volts and amps.
 *
 * @param mode stereo or bridged
 * @param ohms the load, ohms
 * @param optional whether the operator may pass it over without a reason
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

  static Optional<Step> read(Fields fields) {
    Optional<Mode> mode = fields.requiredWord("mode", MODES);
    double ohms = fields.requiredNumber("ohms", 0.05, 1000);
    boolean optional = fields.flag("optional").orElse(false);
    return Double.isNaN(ohms) ? Optional.empty() : mode.map(m -> new Measure(m, ohms, optional));
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
    return atTheLimit(new Load(mode, ohms), context);
  }

  /** Returns what is asked wherever a load is measured at the limit of the sequence. */
  static String atTheLimit(Load load, StepContext context) {
    return Sentence.of(
        "{} Raise {} until THD reads {}, then read.",
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
