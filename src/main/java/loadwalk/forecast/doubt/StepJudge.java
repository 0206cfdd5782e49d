package loadwalk.forecast.doubt;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Mixture;
import loadwalk.forecast.model.StepBands;
import loadwalk.forecast.model.WalkModel;
import loadwalk.forecast.model.WalkReadings;

/** Judges the entries of one step and words the doubts. */
public final class StepJudge {
  /**
   * ln of the odds of a slip against none that a doubt of a reading judged alone needs. Set on the
   * experiment.
   */
  private static final double NEEDED_LOG_ODDS = -1.3;

  /** Share of supplies that give way without warning. Chosen by hand. */
  private static final double SAG_TAIL = 0.05;

  /** Standard deviation of ln of one channel over the other, meters included. Chosen by hand. */
  private static final double OTHER_CHANNEL_SPREAD = 0.03;

  /** Smallest output used in calculations, in its unit: keeps the logarithm finite. */
  private static final double LEAST_OUTPUT = 1e-6;

  /** Smallest idle current used in calculations, amperes: keeps the logarithm finite. */
  private static final double LEAST_AMPS = 1e-3;

  /** Smallest standard deviation of ln of a reading judged alone. */
  private static final double LEAST_WIDTH = 1e-4;

  /** Standard deviations across a band of 95 %, rounded. */
  private static final double DEVIATIONS_IN_BAND = 4;

  /** Tolerance of the tone, a fraction. Common practice, no source. */
  private static final double TONE_PART = 0.05;

  private static final double ROUNDING = 1e-9;

  /** Share of honest readings that scatter more. Chosen by hand. */
  private static final double HEAVY_TAIL = 0.05;

  /** Factor by which these scatter more. Chosen by hand. */
  private static final double HEAVY_WIDTH = 3;

  /**
   * Step of ln volts in which a supply that gives way is spread evenly downwards. 0.36 down is 9.6
   * V of 13.8.
   */
  private static final double SAG_STEP = 0.06;

  /** Number of these steps. */
  private static final int SAG_STEPS = 6;

  private final WalkModel model;
  private final Target target;
  private final Map<ReadingId, Double> entries;
  private final boolean soFar;
  private final StepBands bands;
  private final Map<ReadingId, Doubt> doubts = new EnumMap<>(ReadingId.class);

  /** Creates the judge of a step's entries; entries that are not finite are left out. */
  public StepJudge(WalkModel model, Target target, Map<ReadingId, Double> entries, boolean soFar) {
    this.model = model;
    this.target = target;
    this.soFar = soFar;
    this.entries = new EnumMap<>(ReadingId.class);
    entries.forEach(
        (id, value) -> {
          if (value != null && Double.isFinite(value)) {
            this.entries.put(id, value);
          }
        });
    bands = model.bands(target);
  }

  /** Returns the doubts, at most one per reading. */
  public List<Doubt> judge() {
    for (ReadingId id : List.of(ReadingId.SUPPLY_VOLTS, ReadingId.OPEN_VOLTS)) {
      judgeAlone(id);
    }
    judgeTemperature(ReadingId.SINK_CELSIUS);
    judgeTemperature(ReadingId.AMBIENT_CELSIUS);
    judgeTone();
    judgeLoad(ReadingId.LOAD_OHMS);
    judgeLoad(ReadingId.OTHER_LOAD_OHMS);
    if (target.kind() == Target.Kind.IDLE) {
      judgeIdle();
    } else if (target.kind() != Target.Kind.OPEN_LOAD && target.ohms() > 0) {
      judgeLoaded();
    }
    return new ArrayList<>(doubts.values());
  }

  private void judgeAlone(ReadingId id) {
    Double entered = entries.get(id);
    Band band = bands.bands().get(id);
    if (entered == null || band == null) {
      return;
    }
    double width =
        Math.max(
            LEAST_WIDTH, (band.high() - band.low()) / DEVIATIONS_IN_BAND / Math.abs(band.middle()));
    double center = Math.log(Math.max(LEAST_OUTPUT, band.middle()));
    Mixture density = id == ReadingId.SUPPLY_VOLTS ? sagging(center, width) : heavy(center, width);
    judgeBy(
        id,
        new Side(density, LEAST_OUTPUT, DoubtWords.Witness.FORECAST),
        id == ReadingId.SINK_CELSIUS
            ? SlipCandidate.temperature(entered, decimals(id, entered))
            : SlipCandidate.plain(entered, decimals(id, entered)));
  }

  private void judgeTemperature(ReadingId id) {
    if (!entries.containsKey(id)) {
      return;
    }
    Optional<Doubt> impossible =
        TemperatureSlip.of(id, entries, Optional.ofNullable(bands.bands().get(id)), target);
    if (impossible.isPresent()) {
      doubts.put(id, impossible.get());
    } else {
      judgeAlone(id);
    }
  }

  /** Weighs one honest entry against each slip that may have produced it. */
  private void judgeBy(ReadingId id, Side side, List<SlipCandidate> candidates) {
    Hypotheses hypotheses = new Hypotheses();
    hypotheses.honest(side.logDensity(entries.get(id)));
    hypotheses.add(id, candidates, 0, side::logDensity);
    Hypotheses.Finding finding = hypotheses.find(NEEDED_LOG_ODDS);
    if (!finding.faulty().isEmpty()) {
      Band band = bands.bands().get(id);
      doubts.put(id, DoubtWords.of(id, entries.get(id), band, finding, side.witness(), target));
    }
  }

  private int decimals(ReadingId id, double entered) {
    return EnteredDecimals.of(model.evidence(), id, entered);
  }

  /**
   * The density that one entry is judged by.
   *
   * @param density the density of ln of the entry
   * @param least the smallest value used in calculations, in its unit: keeps the logarithm finite
   * @param witness the source of the density
   */
  private record Side(Mixture density, double least, DoubtWords.Witness witness) {
    double logDensity(double value) {
      return density.logDensity(Math.log(Math.max(least, value)));
    }
  }

  /** Doubts a tone that is not the one asked for: the powers of two tones are two things. */
  private void judgeTone() {
    Double entered = entries.get(ReadingId.FREQUENCY_HERTZ);
    double asked = model.evidence().conditions().toneHertz();
    if (entered == null || !(asked > 0) || isTone(entered, asked)) {
      return;
    }
    boolean decimal = isTone(entered * 10, asked) || isTone(entered / 10, asked);
    Slip slip = decimal ? Slip.DECIMAL_POINT : Slip.TONE_OFF;
    doubts.put(ReadingId.FREQUENCY_HERTZ, ConditionDoubts.tone(entered, asked, slip, target));
  }

  private static boolean isTone(double hertz, double asked) {
    return Math.abs(hertz / asked - 1) <= TONE_PART + ROUNDING;
  }

  private void judgeLoad(ReadingId id) {
    Double entered = entries.get(id);
    if (entered == null || !(target.ohms() > 0)) {
      return;
    }
    Band band = WalkReadings.loadBand(model.evidence().bench(), target.ohms());
    if (!band.holds(entered)) {
      doubts.put(id, DoubtWords.load(id, entered, band, LoadSlip.of(entered, band)));
    }
  }

  private void judgeIdle() {
    Double amps = entries.get(ReadingId.SUPPLY_AMPS);
    if (amps == null) {
      return;
    }
    judgeBy(
        ReadingId.SUPPLY_AMPS,
        new Side(model.idle().density(), LEAST_AMPS, DoubtWords.Witness.FORECAST),
        SlipCandidate.supplyAmps(amps, null, decimals(ReadingId.SUPPLY_AMPS, amps)));
  }

  private void judgeLoaded() {
    Double amps = entries.get(ReadingId.SUPPLY_AMPS);
    ReadingId outputId = WalkReadings.output(entries);
    Double output = entries.get(outputId);
    double ohms = WalkReadings.loadOhms(model.evidence().bench(), target, entries);
    if (output != null || amps != null) {
      judgeTogether();
    }
    judgeAgainst(ReadingId.OTHER_OUTPUT_VOLTS, otherOutput(ohms));
    if (outputId == ReadingId.OUTPUT_VOLTS && output != null) {
      judgeAgainst(ReadingId.OUTPUT_WATTS, likeness(output * output / ohms));
    }
  }

  /** Judges the output and the supply current by the forecast and by each other. */
  private void judgeTogether() {
    LoadedSearch.Found found =
        new LoadedSearch(model, target, entries, supplyVolts(), soFar).find();
    boolean amps = entries.containsKey(ReadingId.SUPPLY_AMPS);
    DoubtWords.Witness witness =
        amps ? DoubtWords.Witness.SUPPLY_AMPS : DoubtWords.Witness.FORECAST;
    for (ReadingId id : found.finding().faulty()) {
      Band band = bands.bands().get(id);
      doubts.put(id, DoubtWords.loaded(id, entries.get(id), band, found, witness, target));
    }
  }

  /**
   * Returns the density of the other channel's volts: near this channel's volts if these are
   * entered and not doubted, otherwise as forecast for either channel.
   */
  private Side otherOutput(double ohms) {
    double volts = WalkReadings.volts(entries, ohms);
    boolean doubted =
        doubts.containsKey(ReadingId.OUTPUT_VOLTS) || doubts.containsKey(ReadingId.OUTPUT_WATTS);
    if (volts > 0 && !doubted) {
      return likeness(volts);
    }
    double loads = target.mode() == Mode.BRIDGED ? Math.log(2) : 0;
    Mixture forecast = model.outlook(target).logVolts();
    return new Side(
        forecast.affine(1, loads, OTHER_CHANNEL_SPREAD), LEAST_OUTPUT, DoubtWords.Witness.FORECAST);
  }

  private static Side likeness(double middle) {
    double log = Math.log(Math.max(LEAST_OUTPUT, middle));
    return new Side(heavy(log, OTHER_CHANNEL_SPREAD), LEAST_OUTPUT, DoubtWords.Witness.OTHER_ENTRY);
  }

  /** Judges an output entry against another entry or the forecast. */
  private void judgeAgainst(ReadingId id, Side side) {
    Double entered = entries.get(id);
    if (entered != null) {
      judgeBy(id, side, SlipCandidate.output(target, id, entered, null, decimals(id, entered)));
    }
  }

  /** Returns the supply volts entered if they are plausible, otherwise NaN. */
  private double supplyVolts() {
    Double entered = entries.get(ReadingId.SUPPLY_VOLTS);
    boolean credible =
        entered != null && entered > 0 && !doubts.containsKey(ReadingId.SUPPLY_VOLTS);
    return credible ? entered : Double.NaN;
  }

  /** Returns a density with a tail for a supply that gives way, down to about 10 V of 14. */
  private Mixture sagging(double center, double width) {
    boolean loaded = target.kind() == Target.Kind.LOADED && target.ohms() > 0;
    double tail = loaded ? Math.max(SAG_TAIL, model.outlook(target).asked().overload()) : SAG_TAIL;
    Mixture.Builder builder = new Mixture.Builder();
    heavy(center, width).addTo(builder, 1 - tail);
    double set = Math.log(model.evidence().conditions().supplyVolts());
    for (double down = SAG_STEP / 2; down < SAG_STEPS * SAG_STEP; down += SAG_STEP) {
      builder.add(tail / SAG_STEPS, set - down, SAG_STEP / 2);
    }
    return builder.build();
  }

  private static Mixture heavy(double center, double width) {
    return new Mixture.Builder()
        .add(1 - HEAVY_TAIL, center, width)
        .add(HEAVY_TAIL, center, HEAVY_WIDTH * width)
        .build();
  }
}
