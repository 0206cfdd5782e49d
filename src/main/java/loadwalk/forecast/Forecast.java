package loadwalk.forecast;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.ReadingId;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * The expected readings of a step and its demand on the bench.
 *
 * @param stepId the step
 * @param level the probability that a reading falls in its band, such as 0.95
 * @param readings the band of each reading that can be predicted
 * @param demand the load that the step puts on the bench
 * @param cautions the cautions, worst first
 * @param verdict the gravest verdict among the cautions
 * @param givesFirst what gives first and where to stop; empty if nothing is driven or known
 * @param basis one sentence: what the forecast is based on and, if it is wide, why
 */
public record Forecast(
    String stepId,
    double level,
    Map<ReadingId, Band> readings,
    Demand demand,
    List<Caution> cautions,
    Verdict verdict,
    Optional<GivesFirst> givesFirst,
    String basis)
    implements Shaped<Forecast> {
  /** Copies the maps and lists. */
  public Forecast {
    Map<ReadingId, Band> copy = new EnumMap<>(ReadingId.class);
    copy.putAll(readings);
    readings = Collections.unmodifiableMap(copy);
    cautions = List.copyOf(cautions);
  }

  /** Creates a forecast of which nothing is known that could give. */
  public Forecast(
      String stepId,
      double level,
      Map<ReadingId, Band> readings,
      Demand demand,
      List<Caution> cautions,
      Verdict verdict,
      String basis) {
    this(stepId, level, readings, demand, cautions, verdict, Optional.empty(), basis);
  }

  /** Returns an empty forecast to read a kept one into. */
  public static Forecast blank() {
    return new Forecast("", 0, Map.of(), Demand.unknown(), List.of(), Verdict.CLEAR, "");
  }

  /** Returns this forecast for another step. */
  public Forecast of(String step) {
    return new Forecast(step, level, readings, demand, cautions, verdict, givesFirst, basis);
  }

  /** Returns this forecast with other cautions and their verdict. */
  public Forecast with(List<Caution> others, Verdict theirs) {
    return new Forecast(stepId, level, readings, demand, others, theirs, givesFirst, basis);
  }

  /** Reads or writes every field except the step, which the enclosing record names. */
  @Override
  public Forecast shape(Shape in) {
    double itsLevel = in.number("level", level);
    Verdict itsVerdict = in.word("verdict", verdict, ForecastWords.VERDICTS);
    String itsBasis = in.text("basis", basis);
    Map<ReadingId, Band> bands = in.part("readings", new Readings(readings)).bands;
    Demand itsDemand = in.part("demand", demand);
    List<Caution> its = in.list("cautions", cautions, Caution.blank());
    Optional<GivesFirst> first = in.part("givesFirst", givesFirst, GivesFirst.BLANK);
    return new Forecast(stepId, itsLevel, bands, itsDemand, its, itsVerdict, first, itsBasis);
  }

  private record Readings(Map<ReadingId, Band> bands) implements Shaped<Readings> {
    @Override
    public Readings shape(Shape in) {
      Map<ReadingId, Band> read = new EnumMap<>(ReadingId.class);
      for (ReadingId id : in.keys(BenchFiles.READINGS, bands.keySet())) {
        read.put(id, Band.shape(in, id.key(), bands.getOrDefault(id, Band.BLANK)));
      }
      return new Readings(read);
    }
  }

  /** Returns the band of a reading, if it can be predicted. */
  public Optional<Band> band(ReadingId id) {
    return Optional.ofNullable(readings.get(id));
  }

  /**
   * The demand of a step on the bench; an unknown part is empty.
   *
   * @param loadWatts the watts in one load
   * @param totalWatts the watts in all loads
   * @param heatWatts the watts the amplifier turns into heat
   * @param leadVolts the volts lost in all lead runs
   */
  public record Demand(
      Optional<Band> loadWatts,
      Optional<Band> totalWatts,
      Optional<Band> heatWatts,
      Optional<Band> leadVolts)
      implements Shaped<Demand> {
    @Override
    public Demand shape(Shape in) {
      return new Demand(
          Band.shape(in, "loadWatts", loadWatts),
          Band.shape(in, "totalWatts", totalWatts),
          Band.shape(in, "heatWatts", heatWatts),
          Band.shape(in, "leadVolts", leadVolts));
    }

    /** Returns this demand with the volts lost in the leads filled in. */
    public Demand losing(Optional<Band> inLeads) {
      return new Demand(loadWatts, totalWatts, heatWatts, inLeads);
    }

    /** Returns a demand with every part unknown. */
    public static Demand unknown() {
      return new Demand(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
  }
}
