package loadwalk.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/** Judges the entries of one step and words the doubts. */
final class StepJudge {
  /** ln of the odds of a slip against none that a doubt of a reading told by itself needs. */
  private static final double NEEDED_LOG_ODDS = -1.3;

  private static final double SAG_TAIL = 0.05;
  private static final double OTHER_CHANNEL_SPREAD = 0.03;
  private static final double LEAST_OUTPUT = 1e-6;

  private final WalkModel model;
  private final Target target;
  private final Map<ReadingId, Double> entries;
  private final boolean soFar;
  private final StepBands bands;
  private final Map<ReadingId, Doubt> doubts = new EnumMap<>(ReadingId.class);

  StepJudge(WalkModel model, Target target, Map<ReadingId, Double> entries, boolean soFar) {
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

  List<Doubt> judge() {
    for (ReadingId id :
        List.of(
            ReadingId.SUPPLY_VOLTS,
            ReadingId.SINK_CELSIUS,
            ReadingId.OPEN_VOLTS,
            ReadingId.FREQUENCY_HERTZ)) {
      judgeAlone(id);
    }
    judgeLoad();
    if (target.kind() == Target.Kind.IDLE) {
      judgeIdle();
    } else if (target.kind() != Target.Kind.OPEN_LOAD && target.ohms() > 0) {
      judgeLoaded();
    }
    return new ArrayList<>(doubts.values());
  }

  private void judgeAlone(ReadingId id) {
    Double entered = entries.get(id);
    Band band = id == ReadingId.FREQUENCY_HERTZ ? tone() : bands.bands().get(id);
    if (entered == null || band == null) {
      return;
    }
    double width = Math.max(1e-4, (band.high() - band.low()) / 4 / Math.abs(band.middle()));
    double center = Math.log(Math.max(1e-6, band.middle()));
    Mixture density = id == ReadingId.SUPPLY_VOLTS ? sagging(center, width) : heavy(center, width);
    double log = Math.log(Math.max(1e-6, entered));
    Hypotheses hypotheses = new Hypotheses();
    hypotheses.honest(density.logDensity(log));
    for (SlipCandidate candidate :
        SlipCandidate.plain(entered, EnteredDecimals.of(model.evidence(), id, entered))) {
      double fit =
          Double.isNaN(candidate.meant()) ? 0 : density.logDensity(Math.log(candidate.meant()));
      hypotheses.add(Set.of(id), candidate.slip(), candidate.meant(), candidate.logWeight() + fit);
    }
    note(hypotheses.find(NEEDED_LOG_ODDS), DoubtWords.Witness.FORECAST);
  }

  private Band tone() {
    double hertz = model.evidence().conditions().toneHertz();
    return hertz > 0 ? new Band(0.95 * hertz, hertz, 1.05 * hertz) : null;
  }

  private void judgeLoad() {
    Double entered = entries.get(ReadingId.LOAD_OHMS);
    if (entered == null || !(target.ohms() > 0)) {
      return;
    }
    Band band = WalkReadings.loadBand(model.evidence().bench(), target.ohms());
    if (!band.holds(entered)) {
      doubts.put(ReadingId.LOAD_OHMS, DoubtWords.load(entered, band, LoadSlip.of(entered, band)));
    }
  }

  private void judgeIdle() {
    Double amps = entries.get(ReadingId.SUPPLY_AMPS);
    if (amps == null) {
      return;
    }
    Mixture density = model.idle().density();
    Hypotheses hypotheses = new Hypotheses();
    hypotheses.honest(density.logDensity(Math.log(Math.max(1e-3, amps))));
    for (SlipCandidate candidate :
        SlipCandidate.supplyAmps(
            amps, null, EnteredDecimals.of(model.evidence(), ReadingId.SUPPLY_AMPS, amps))) {
      double fit =
          Double.isNaN(candidate.meant())
              ? 0
              : density.logDensity(Math.log(Math.max(1e-3, candidate.meant())));
      hypotheses.add(
          Set.of(ReadingId.SUPPLY_AMPS),
          candidate.slip(),
          candidate.meant(),
          candidate.logWeight() + fit);
    }
    note(hypotheses.find(NEEDED_LOG_ODDS), DoubtWords.Witness.FORECAST);
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
   * Returns the density of the other channel's volts: near this channel's where these are entered
   * and not doubted, else as forecast for either channel.
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
    return new Side(forecast.affine(1, loads, OTHER_CHANNEL_SPREAD), DoubtWords.Witness.FORECAST);
  }

  private static Side likeness(double middle) {
    double log = Math.log(Math.max(LEAST_OUTPUT, middle));
    return new Side(heavy(log, OTHER_CHANNEL_SPREAD), DoubtWords.Witness.OTHER_ENTRY);
  }

  /** What an output entry is judged by: the density of its ln, and where it comes from. */
  private record Side(Mixture density, DoubtWords.Witness witness) {}

  /** Judges an output entry by what another entry or the forecast tells of it. */
  private void judgeAgainst(ReadingId id, Side side) {
    Double entered = entries.get(id);
    if (entered == null) {
      return;
    }
    Mixture density = side.density();
    Hypotheses hypotheses = new Hypotheses();
    hypotheses.honest(density.logDensity(Math.log(Math.max(LEAST_OUTPUT, entered))));
    for (SlipCandidate candidate :
        SlipCandidate.output(
            target, id, entered, null, EnteredDecimals.of(model.evidence(), id, entered))) {
      double fit =
          Double.isNaN(candidate.meant())
              ? 0
              : density.logDensity(Math.log(Math.max(LEAST_OUTPUT, candidate.meant())));
      hypotheses.add(Set.of(id), candidate.slip(), candidate.meant(), candidate.logWeight() + fit);
    }
    note(hypotheses.find(NEEDED_LOG_ODDS), side.witness());
  }

  /** Returns the supply volts entered where they can be, else NaN. */
  private double supplyVolts() {
    Double entered = entries.get(ReadingId.SUPPLY_VOLTS);
    boolean credible =
        entered != null && entered > 0 && !doubts.containsKey(ReadingId.SUPPLY_VOLTS);
    return credible ? entered : Double.NaN;
  }

  /** Returns a density with a tail towards a supply that gives way, down to about 10 V of 14. */
  private Mixture sagging(double center, double width) {
    boolean loaded = target.kind() == Target.Kind.LOADED && target.ohms() > 0;
    double tail = loaded ? Math.max(SAG_TAIL, model.outlook(target).asked().overload()) : SAG_TAIL;
    Mixture.Builder builder = new Mixture.Builder();
    heavy(center, width).addTo(builder, 1 - tail);
    double set = Math.log(model.evidence().conditions().supplyVolts());
    for (double down = 0.03; down < 0.36; down += 0.06) {
      builder.add(tail / 6, set - down, 0.03);
    }
    return builder.build();
  }

  private static Mixture heavy(double center, double width) {
    return new Mixture.Builder().add(0.95, center, width).add(0.05, center, 3 * width).build();
  }

  private void note(Hypotheses.Finding finding, DoubtWords.Witness witness) {
    for (ReadingId id : finding.faulty()) {
      doubts.put(
          id, DoubtWords.of(id, entries.get(id), bands.bands().get(id), finding, witness, target));
    }
  }
}
