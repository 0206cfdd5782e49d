package loadwalk.experiment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;

/**
 * Does what a careful spreadsheet does: ±50 % of the rating, power at most doubles where the load
 * is halved, never falls by more than half, output below input, 55 % efficiency. It names no slip.
 */
final class SpreadsheetForecaster implements Forecaster {
  private static final double EFFICIENCY = 0.55;
  private static final double SPREAD = 0.5;

  @Override
  public Forecast forecast(Evidence evidence, Target target) {
    Map<ReadingId, Band> bands = new EnumMap<>(ReadingId.class);
    Verdict verdict = Verdict.HEED;
    Optional<Band> watts = watts(evidence, target);
    if (watts.isPresent()) {
      bands.put(ReadingId.OUTPUT_WATTS, watts.get());
      bands.put(
          ReadingId.OUTPUT_VOLTS,
          new Band(
              Math.sqrt(watts.get().low() * target.ohms()),
              Math.sqrt(watts.get().middle() * target.ohms()),
              Math.sqrt(watts.get().high() * target.ohms())));
      double volts = evidence.conditions().supplyVolts();
      double amps = watts.get().middle() * target.mode().loads() / EFFICIENCY / volts;
      bands.put(ReadingId.SUPPLY_AMPS, new Band(amps * (1 - SPREAD), amps, amps * (1 + SPREAD)));
      bands.put(ReadingId.SUPPLY_VOLTS, new Band(0.9 * volts, volts, 1.02 * volts));
      verdict = amps > borne(evidence) ? Verdict.HALT : Verdict.CLEAR;
    }
    return new Forecast(
        target.stepId(),
        0.95,
        bands,
        Forecast.Demand.unknown(),
        List.of(),
        verdict,
        "rating ±50 %, power at most doubles");
  }

  @Override
  public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    List<Doubt> doubts = new ArrayList<>();
    forecast(evidence, target)
        .readings()
        .forEach(
            (id, band) -> {
              if (entries.containsKey(id) && !band.holds(entries.get(id))) {
                doubts.add(doubt(id, Slip.UNNAMED, "outside the range of the rating"));
              }
            });
    if (outputAboveInput(target, entries)) {
      doubts.add(doubt(ReadingId.OUTPUT_VOLTS, Slip.OUTPUT_ABOVE_INPUT, "output above input"));
    }
    return doubts;
  }

  private static boolean outputAboveInput(Target target, Map<ReadingId, Double> entries) {
    Double volts = entries.get(ReadingId.OUTPUT_VOLTS);
    Double supplyVolts = entries.get(ReadingId.SUPPLY_VOLTS);
    Double supplyAmps = entries.get(ReadingId.SUPPLY_AMPS);
    if (volts == null || supplyVolts == null || supplyAmps == null) {
      return false;
    }
    double output = target.mode().loads() * volts * volts / target.ohms();
    return output > supplyVolts * supplyAmps;
  }

  private static Doubt doubt(ReadingId id, Slip slip, String text) {
    return new Doubt(id, slip, text, "Look at the meter again.");
  }

  private static double borne(Evidence evidence) {
    return DoubleStream.of(
            evidence.bench().usableAmps().orElse(Double.POSITIVE_INFINITY),
            evidence.bench().fuseAmps().orElse(Double.POSITIVE_INFINITY),
            evidence.amplifier().fuseAmps().orElse(Double.POSITIVE_INFINITY))
        .min()
        .orElseThrow();
  }

  /** Watts of one load: from the step with the next higher load, else from the rating. */
  private static Optional<Band> watts(Evidence evidence, Target target) {
    if (target.kind() != Target.Kind.LOADED) {
      return Optional.empty();
    }
    OptionalDouble before = measured(evidence, target.mode(), 2 * target.ohms());
    if (before.isPresent()) {
      double watts = before.getAsDouble();
      return Optional.of(new Band(0.5 * watts, 1.5 * watts, 2 * watts));
    }
    OptionalDouble stereo = measured(evidence, Mode.STEREO, target.ohms() / 2);
    if (target.mode() == Mode.BRIDGED && stereo.isPresent()) {
      return Optional.of(around(2 * stereo.getAsDouble()));
    }
    return rated(evidence.amplifier(), target).map(SpreadsheetForecaster::around);
  }

  private static Band around(double watts) {
    return new Band(watts * (1 - SPREAD), watts, watts * (1 + SPREAD));
  }

  private static OptionalDouble measured(Evidence evidence, Mode mode, double ohms) {
    for (Observation o : evidence.observations()) {
      Target target = o.target();
      boolean same = target.kind() == Target.Kind.LOADED && target.mode() == mode;
      if (same && Math.abs(target.ohms() / ohms - 1) < 0.01) {
        OptionalDouble volts = o.reading(ReadingId.OUTPUT_VOLTS);
        return volts.isPresent()
            ? OptionalDouble.of(volts.getAsDouble() * volts.getAsDouble() / ohms)
            : o.reading(ReadingId.OUTPUT_WATTS);
      }
    }
    return OptionalDouble.empty();
  }

  /** The rating for the load, or the stereo one worked up by doubling. */
  private static Optional<Double> rated(Amplifier amplifier, Target target) {
    Optional<Rating> direct = amplifier.rating(target.mode(), target.ohms());
    if (direct.isPresent()) {
      return direct.map(Rating::watts);
    }
    double channelOhms = target.mode().channelOhms(target.ohms());
    double channels = target.mode() == Mode.BRIDGED ? 2 : 1;
    return amplifier.ratings().stream()
        .filter(r -> r.mode() == Mode.STEREO)
        .findFirst()
        .map(r -> channels * r.watts() * r.ohms() / channelOhms * 0.8);
  }
}
