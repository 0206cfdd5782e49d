package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.GivesFirst;
import loadwalk.forecast.LoadBank;
import loadwalk.forecast.Verdict;
import loadwalk.text.Sentence;

/**
 * Computes the cautions of a step, the same for plan and briefs.
 *
 * <p>A verdict goes by chance. Halt: more likely than not something gives before the limit is
 * reached; or it may give (5 %) and nothing that is read shows it in time; or it may be asked for a
 * third more than it can be counted on for (5 %), which no hand is quick enough for. Heed: it may
 * give (2.5 %), with the reading at which to stop. Every part is judged over the time that the step
 * holds its power ({@link loadwalk.bench.Hold}). A permitted load is no caution.
 *
 * <p>What was not entered is said once, as are shock hazards, lost volts and the band of a meter
 * ({@link loadwalk.forecast.ToldOnce}). Cautions are sorted worst first: by gravity, then by the
 * ratio of demand to limit.
 */
public final class StepCautions {
  /**
   * Tolerance of a load if the stock does not give one, percent: that of common power resistors.
   */
  public static final double DEFAULT_LOAD_TOLERANCE_PERCENT = 5;

  private static final Comparator<Caution> WORST_FIRST =
      Comparator.comparing(Caution::gravity)
          .reversed()
          .thenComparing(Comparator.comparingDouble(Caution::severity).reversed())
          .thenComparing(Caution::code);

  private final Tables tables;
  private final CurrentStresses stresses;
  private final CurrentCautions currents;
  private final SupplyCautions supplies;
  private final LoadCautions loads;

  /**
   * Creates the computation.
   *
   * @param tables wire, fuse and resistor data
   * @param bank works out how loads are wired from the stock
   */
  public StepCautions(Tables tables, LoadBank bank) {
    this.tables = tables;
    Wire wire = new Wire(tables);
    stresses = new CurrentStresses(tables, wire);
    currents = new CurrentCautions(tables, stresses);
    supplies = new SupplyCautions(tables, wire);
    loads = new LoadCautions(tables, bank);
  }

  /**
   * The cautions of a step and the verdict they give.
   *
   * @param cautions the cautions, worst first
   * @param verdict the gravest of them, clear if there are none
   */
  public record Outcome(List<Caution> cautions, Verdict verdict) {
    /** Copies the list. */
    public Outcome {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * Computes the cautions of a step.
   *
   * @param evidence all that is known before the step
   * @param target the step
   * @param readings the forecast band of each reading that can be predicted
   * @param demand what the step asks of the bench
   */
  public Outcome of(
      Evidence evidence, Target target, Map<ReadingId, Band> readings, Forecast.Demand demand) {
    StepQuestion step = new StepQuestion(evidence, target, Map.copyOf(readings), demand);
    List<Caution> found = new ArrayList<>(UnknownCautions.of(step));
    ownColdLoad(evidence, target).ifPresent(found::add);
    found.addAll(currents.of(step));
    found.addAll(supplies.of(step));
    found.addAll(loads.of(step));
    found.addAll(EndedCautions.of(step));
    shock(step).ifPresent(found::add);
    meterBand(step).ifPresent(found::add);
    heatsink(step).ifPresent(found::add);
    return outcome(found);
  }

  /**
   * Returns what the step stresses, worst first, near its limit or not.
   *
   * @param evidence all that is known before the step
   * @param target the step
   * @param readings the forecast band of each reading that can be predicted
   * @param demand what the step asks of the bench
   */
  public List<Stress> stresses(
      Evidence evidence, Target target, Map<ReadingId, Band> readings, Forecast.Demand demand) {
    StepQuestion step = new StepQuestion(evidence, target, Map.copyOf(readings), demand);
    List<Stress> found = new ArrayList<>(stresses.of(step));
    loads.stress(step).map(LoadStress::stress).ifPresent(found::add);
    found.sort(Comparator.comparingDouble(Stress::share).reversed());
    return List.copyOf(found);
  }

  /** Returns what gives first at a step and where to stop; empty if nothing is driven or known. */
  public Optional<GivesFirst> givesFirst(
      Evidence evidence, Target target, Map<ReadingId, Band> readings, Forecast.Demand demand) {
    StepQuestion step = new StepQuestion(evidence, target, Map.copyOf(readings), demand);
    List<Stress> currents = new ArrayList<>(stresses.of(step));
    currents.addAll(EndedCautions.stresses(step));
    return Opening.of(step, currents, loads.stress(step), tables.limit("sink-stop-celsius"));
  }

  /**
   * Returns the volts lost in all lead runs; empty if no leads are entered or the current cannot be
   * predicted.
   *
   * @param readings the forecast band of each reading that can be predicted
   */
  public Optional<Band> leadVolts(Bench bench, Map<ReadingId, Band> readings) {
    return Optional.ofNullable(readings.get(ReadingId.SUPPLY_AMPS))
        .flatMap(amps -> supplies.leadVolts(bench, amps));
  }

  /**
   * Returns the halt for the step's own cold load, which is among the observations under the step's
   * id.
   */
  private Optional<Caution> ownColdLoad(Evidence evidence, Target target) {
    if (!target.kind().drives()) {
      return Optional.empty();
    }
    return evidence.observations().stream()
        .filter(o -> o.target().stepId().equals(target.stepId()))
        .map(o -> o.reading(ReadingId.LOAD_OHMS))
        .filter(OptionalDouble::isPresent)
        .reduce((first, last) -> last)
        .flatMap(ohms -> coldLoad(evidence, target, ohms.getAsDouble()));
  }

  /**
   * Returns the halt for a load that, measured cold, is not the load of the step.
   *
   * @param evidence the bench with its stock and meters
   * @param target the step
   * @param coldOhms the load measured with the amplifier off, ohms
   * @return empty if the load agrees within its tolerance and the meter's
   */
  Optional<Caution> coldLoad(Evidence evidence, Target target, double coldOhms) {
    return loads.mismatch(evidence.bench(), target, coldOhms);
  }

  private static Outcome outcome(List<Caution> found) {
    List<Caution> sorted = found.stream().sorted(WORST_FIRST).toList();
    return new Outcome(sorted, sorted.isEmpty() ? Verdict.CLEAR : sorted.get(0).gravity());
  }

  private Optional<Caution> shock(StepQuestion step) {
    Band volts = step.readings().get(ReadingId.OUTPUT_VOLTS);
    if (step.target().kind() == Target.Kind.OPEN_LOAD) {
      volts = step.readings().getOrDefault(ReadingId.OPEN_VOLTS, volts);
    }
    double limit = tables.limit("shock-volts");
    if (volts == null || !(volts.high() > limit)) {
      return Optional.empty();
    }
    String text =
        Sentence.of(
            step.target().mode() == Mode.BRIDGED
                ? "The output is {} AC, a shock hazard above {} V. Both bridged terminals are live:"
                    + " hands off."
                : "The output is {} AC, a shock hazard above {} V: hands off.",
            StepQuestion.words(volts, "V"),
            Figures.three(limit));
    return Optional.of(Caution.once("shock-volts", "", Verdict.HEED, text, volts.middle()));
  }

  private static Optional<Caution> meterBand(StepQuestion step) {
    double tone = step.evidence().conditions().toneHertz();
    if (step.target().kind() == Target.Kind.IDLE) {
      return Optional.empty();
    }
    Optional<Meter> meter = step.bench().meterFor(ReadingId.OUTPUT_VOLTS);
    Optional<Meter.Band> band = meter.flatMap(Meter::band).filter(b -> !b.holds(tone));
    return band.map(
        b -> {
          String text =
              Sentence.of(
                  "The meter \"{}\" is specified from {} to {} Hz; the tone is {} Hz. Its accuracy"
                      + " there is unknown: use another meter or tone.",
                  meter.get().label(),
                  Figures.three(b.lowHertz()),
                  Figures.three(b.highHertz()),
                  Figures.three(tone));
          return Caution.once("meter-band", meter.get().label(), Verdict.CLEAR, text, 1);
        });
  }

  private Optional<Caution> heatsink(StepQuestion step) {
    Band sink = step.readings().get(ReadingId.SINK_CELSIUS);
    double touch = tables.limit("sink-touch-celsius");
    double most = tables.limit("sink-most-celsius");
    if (sink == null || !(sink.high() > most)) {
      return Optional.ofNullable(sink)
          .filter(band -> band.middle() > touch)
          .map(band -> hot(band, touch));
    }
    boolean likely = sink.middle() > most;
    String reaches = StepQuestion.words(sink, "°C");
    String text =
        likely
            ? Sentence.of(
                "The heatsink reaches {}. Amplifiers commonly cut out near {} °C. Let it cool"
                    + " first.",
                reaches,
                Figures.three(most))
            : Sentence.of(
                "The heatsink reaches {}. Amplifiers commonly cut out near {} °C: stop at {} °C.",
                reaches,
                Figures.three(most),
                Figures.three(tables.limit("sink-stop-celsius")));
    Verdict gravity = likely ? Verdict.HALT : Verdict.HEED;
    double share = sink.high() / most;
    return Optional.of(Caution.giving("heatsink", "", gravity, text, sink.middle(), share));
  }

  private static Caution hot(Band sink, double touch) {
    String text =
        Sentence.of(
            "The heatsink reaches {}. Touch burns from about {} °C: hands off.",
            StepQuestion.words(sink, "°C"),
            Figures.three(touch));
    return Caution.once("heatsink", "touch", Verdict.CLEAR, text, 1);
  }
}
