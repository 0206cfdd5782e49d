package loadwalk.forecast.caution;

import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import loadwalk.text.Sentence;

/** The input from which the cautions of one step are computed. */
record StepQuestion(
    Evidence evidence, Target target, Map<ReadingId, Band> readings, Forecast.Demand demand) {

  /**
   * Load per channel at or below which a step counts as heavy, ohms. Common practice, no source.
   */
  private static final double HEAVY_CHANNEL_OHMS = 2.0;

  /** Allowance for rounding in a file: 2.001 Ω counts as 2 Ω. */
  private static final double ROUNDING = 1.001;

  Amplifier amplifier() {
    return evidence.amplifier();
  }

  Bench bench() {
    return evidence.bench();
  }

  /** Returns whether the amplifier is driven into a load. */
  boolean driven() {
    return target.kind().drives();
  }

  /** Returns whether a channel drives a heavy load. */
  boolean heavy() {
    boolean light = target.mode().channelOhms(target.ohms()) > HEAVY_CHANNEL_OHMS * ROUNDING;
    return driven() && !light;
  }

  /** Returns whether the supply current is read while the output is raised, as far as is known. */
  boolean watchesAmps() {
    return bench().meterFor(ReadingId.SUPPLY_AMPS).isPresent()
        || evidence.observations().stream()
            .anyMatch(o -> o.reading(ReadingId.SUPPLY_AMPS).isPresent())
        || evidence.ended().stream()
            .anyMatch(ended -> ended.reading(ReadingId.SUPPLY_AMPS).isPresent());
  }

  Optional<Band> amps() {
    return Optional.ofNullable(readings.get(ReadingId.SUPPLY_AMPS));
  }

  /** Returns the watts in one load, from the demand or, failing that, from the predicted output. */
  Optional<Band> loadWatts() {
    if (demand.loadWatts().isPresent()) {
      return demand.loadWatts();
    }
    Band watts = readings.get(ReadingId.OUTPUT_WATTS);
    Band volts = readings.get(ReadingId.OUTPUT_VOLTS);
    if (watts != null || volts == null || !(target.ohms() > 0)) {
      return Optional.ofNullable(watts);
    }
    double ohms = target.ohms();
    return Optional.of(
        new Band(
            volts.low() * volts.low() / ohms,
            volts.middle() * volts.middle() / ohms,
            volts.high() * volts.high() / ohms));
  }

  /** Returns the gravity of an unknown value: clear on a light step, heed on a heavy one. */
  Verdict unknownGravity() {
    return heavy() ? Verdict.HEED : Verdict.CLEAR;
  }

  /** Returns a band in words: "about 95 A, at worst 120 A". */
  static String words(Band band, String unit) {
    return Sentence.of(
        "about {} {}, at worst {} {}",
        Figures.three(band.middle()),
        unit,
        Figures.three(band.high()),
        unit);
  }
}
