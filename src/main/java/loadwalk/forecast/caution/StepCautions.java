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
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.LoadBank;
import loadwalk.forecast.Verdict;
import loadwalk.text.Sentence;

/**
 * Computes the cautions of a step, the same for plan and briefs.
 *
 * <p>The rules, and why:
 *
 * <ul>
 *   <li>Supply: halt when the upper end of the forecast current exceeds the current that the
 *       supplies can be counted on for, because the whole band is likely and a supply that limits
 *       at full output ends the step badly; heed from 80 % of that current.
 *   <li>Fuses: halt when the upper end is so far above the rating that the fuse may blow within the
 *       minute a reading takes, or, in a warm-up, when it is above the rating at all; heed from 75
 *       %, the share for continuous use. An unknown supply, or no known fuse at all, is a heed: a
 *       step whose current nothing bounds is never clear.
 *   <li>Leads: halt when the middle of the forecast exceeds the ampacity of a run; heed when the
 *       upper end reaches 80 % of it, when 3 % of the supply volts are lost, or when the bench fuse
 *       is rated above 150 % of the ampacity. Short bursts warm a lead less than the table assumes,
 *       so the upper end alone does not halt.
 *   <li>Load resistors: halt when the hottest is beyond the largest overload with a known burst
 *       time (in a warm-up, beyond its rating); heed above its continuous share.
 *   <li>Load: halt below the amplifier's minimum load (each bridged channel drives half the load),
 *       or when the cold load is off by more than its tolerance and the meter's; heed when the load
 *       is heavy: bridged, or 2 Ω or less per channel.
 *   <li>Heatsink: halt when the middle is above the temperature at which amplifiers cut out; heed
 *       from the temperature at which touching burns.
 *   <li>Heed: output above 50 V AC, a meter outside its band, a current that cannot be predicted.
 * </ul>
 *
 * <p>Cautions are sorted worst first: by gravity, then by the ratio of demand to limit.
 */
public final class StepCautions {
  /**
   * Fraction of a limit from which the upper end of a forecast raises a caution. Common practice,
   * no source.
   */
  static final double NEAR = 0.8;

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
  private final CurrentCautions currents;
  private final LoadCautions loads;

  /**
   * Creates the computation.
   *
   * @param tables wire, fuse and resistor data
   * @param bank works out how loads are wired from the stock
   */
  public StepCautions(Tables tables, LoadBank bank) {
    this.tables = tables;
    currents = new CurrentCautions(tables);
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
    List<Caution> found = new ArrayList<>();
    if (step.driven() && step.amps().isEmpty()) {
      found.add(
          new Caution(
              "unknown-forecast",
              Verdict.HEED,
              "The current of this step cannot be forecast. Raise the output slowly and watch the"
                  + " supply.",
              Double.POSITIVE_INFINITY));
    }
    ownColdLoad(evidence, target).ifPresent(found::add);
    found.addAll(currents.of(step));
    found.addAll(loads.of(step));
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
    List<Stress> found = new ArrayList<>(currents.stresses(step));
    loads.stress(step).ifPresent(found::add);
    found.sort(Comparator.comparingDouble(Stress::share).reversed());
    return List.copyOf(found);
  }

  /**
   * Returns the volts lost in all lead runs; empty if no leads are entered or the current cannot be
   * predicted.
   *
   * @param readings the forecast band of each reading that can be predicted
   */
  public Optional<Band> leadVolts(Bench bench, Map<ReadingId, Band> readings) {
    return Optional.ofNullable(readings.get(ReadingId.SUPPLY_AMPS))
        .flatMap(amps -> currents.leadVolts(bench, amps));
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
    return Optional.of(new Caution("shock-volts", Verdict.HEED, text, volts.high() / limit));
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
          double off = tone > b.highHertz() ? tone / b.highHertz() : b.lowHertz() / tone;
          double severity = Double.isNaN(off) ? Double.POSITIVE_INFINITY : off;
          return new Caution("meter-band", Verdict.HEED, text, severity);
        });
  }

  private Optional<Caution> heatsink(StepQuestion step) {
    Band sink = step.readings().get(ReadingId.SINK_CELSIUS);
    double touch = tables.limit("sink-touch-celsius");
    double most = tables.limit("sink-most-celsius");
    if (sink == null || !(sink.high() > touch)) {
      return Optional.empty();
    }
    Verdict gravity = sink.middle() > most ? Verdict.HALT : Verdict.HEED;
    String text =
        Sentence.of(
            gravity == Verdict.HALT
                ? "The heatsink reaches {}. Touch burns from about {} °C; amplifiers commonly cut"
                    + " out near {} °C. Let it cool first."
                : "The heatsink reaches {}. Touch burns from about {} °C; amplifiers commonly cut"
                    + " out near {} °C. Hands off.",
            StepQuestion.words(sink, "°C"),
            Figures.three(touch),
            Figures.three(most));
    return Optional.of(new Caution("heatsink", gravity, text, sink.high() / most));
  }
}
