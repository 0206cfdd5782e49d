package loadwalk.cautions;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.caution.StepCautions;

/**
 * Forecasts what a situation says of its step, so that its limits can be reckoned by hand; the
 * cautions are the program's. Everything else is asked of the program's own rules.
 *
 * @param rules the program's rules
 * @param cautions the program's cautions, with its tables and its wiring of loads
 * @param step the step of which the forecast is stated
 * @param bands its bands
 */
record StatedForecast(
    Forecaster rules, StepCautions cautions, String step, Map<ReadingId, Band> bands)
    implements Forecaster {
  /** What stands for a forecast of nothing. */
  private static final String UNKNOWN = "unknown";

  private static final Pattern BAND =
      Pattern.compile("(?<open>open )?(?<likely>[\\d.]+)–(?<worst>[\\d.]+) (?<unit>A|V|W|°C)");
  private static final double LOW = 0.9;

  /** Reads bands such as {@code 34–40 A, 60–75 W}: the likely value, then the worst. */
  static Map<ReadingId, Band> bands(String cell) {
    Map<ReadingId, Band> bands = new HashMap<>();
    if (!cell.equals(UNKNOWN)) {
      Words.list(cell, ",", BandOf::read).forEach(each -> bands.put(each.id, each.band));
    }
    return bands;
  }

  private record BandOf(ReadingId id, Band band) {
    static BandOf read(String text) {
      Matcher found = Words.match(BAND, text, "a band such as 34–40 A or open 12–15 V");
      double likely = Words.number(found, "likely", 0);
      ReadingId id =
          switch (found.group("unit")) {
            case "A" -> ReadingId.SUPPLY_AMPS;
            case "W" -> ReadingId.OUTPUT_WATTS;
            case "V" -> found.group("open") == null ? ReadingId.OUTPUT_VOLTS : ReadingId.OPEN_VOLTS;
            default -> ReadingId.SINK_CELSIUS;
          };
      return new BandOf(id, new Band(LOW * likely, likely, Words.number(found, "worst", 0)));
    }
  }

  @Override
  public Forecast forecast(Evidence evidence, Target target) {
    if (!target.stepId().equals(step)) {
      return rules.forecast(evidence, target);
    }
    Map<ReadingId, Band> readings = new EnumMap<>(ReadingId.class);
    readings.putAll(bands);
    Forecast.Demand demand =
        new Forecast.Demand(
            Optional.ofNullable(bands.get(ReadingId.OUTPUT_WATTS)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    StepCautions.Outcome outcome = cautions.of(evidence, target, readings, demand);
    return new Forecast(
        step,
        Band.LEVEL,
        readings,
        demand,
        outcome.cautions(),
        outcome.verdict(),
        cautions.givesFirst(evidence, target, readings, demand),
        "As stated.");
  }

  @Override
  public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return rules.judge(evidence, target, entries);
  }

  @Override
  public List<Doubt> judgeSoFar(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return rules.judgeSoFar(evidence, target, entries);
  }
}
