package loadwalk.result;

import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.named;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of several runs at one load a sheet states, and the reason it gives. */
class PublicationTest {
  private static final String OTHERS = "; runs under other conditions or in doubt do not count";

  /** Runs in the order they were done: L at the THD limit, C at the onset of clipping, B below. */
  @ParameterizedTest(name = "[{index}] {0} states run {1}: {2}")
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "L20, 1, \"\"",
        "B20, 1, \"\"",
        "L20 L20.01, 1 2, the mean of 2 runs that agree",
        "L20 L20.01 L20, 1 2 3, the mean of 3 runs that agree",
        "L20 L19.5, 2, the lowest of 2 runs that disagree",
        "L19.5 L20, 1, the lowest of 2 runs that disagree",
        "L20 L20.01 L19.5, 3, the lowest of 3 runs that disagree",
        "L20 L19.5 L19.5, 2, the lowest of 3 runs that disagree",
        "C20 L21, 2, the only run read at the THD limit" + OTHERS,
        "L21 C20, 1, the only run read at the THD limit" + OTHERS,
        "B20 C18, 2, the only run read at the onset of clipping" + OTHERS,
        "C19 L20 L20.01, 2 3, the mean of 2 runs that agree" + OTHERS,
        "L20 C18 L19.5, 3, the lowest of 2 runs that disagree" + OTHERS,
        "B20 B25, 1, \"the first of 2 runs, all read below the limit\"",
        "C20 C20, 1 2, the mean of 2 runs that agree",
      })
  void runsAtOneLoad(String runs, String stated, String why) {
    String[] words = runs.split(" ");
    MeasuredStep[] steps = new MeasuredStep[words.length];
    for (int i = 0; i < words.length; i++) {
      steps[i] =
          named(loaded(Mode.BRIDGED, 1, criterion(words[i]), volts(read(words[i]))), "" + (i + 1));
    }
    PublishedPower published = walk(usual(), steps).published().get("1");
    List<String> from = List.of(stated.split(" "));
    List<String> chosen = from.stream().map(id -> words[Integer.parseInt(id) - 1]).toList();
    assertEquals(from, published.runs());
    assertEquals(why, published.why());
    assertEquals(
        chosen.stream().mapToDouble(w -> read(w) * read(w)).average().orElseThrow(),
        published.totalWatts().value(),
        1e-9);
    assertEquals(criterion(chosen.get(0)), published.criterion());
  }

  private static double read(String run) {
    return Double.parseDouble(run.substring(1));
  }

  @Test
  void bothChannelsRead_stateTheirMeanPerLoad() {
    PublishedPower published =
        walk(usual(), stereo(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 18)))
            .published()
            .get("stereo-4");
    assertEquals((100 + 81) / 2.0, published.meanWatts().orElseThrow().value(), 1e-9);
    assertEquals(181, published.totalWatts().value(), 1e-9);
  }

  /**
   * Gain and load are the runs' common ones; digits and setting are each run's own: 1/√2 is left.
   */
  @Test
  void mean_keepsWhatTheRunsShare_andHalvesTheVarianceOfTheirOwn() {
    Repeatability repeatability = new Repeatability(0.004, 0);
    MeasuredStep first = named(bridged(1, volts(20)), "1");
    MeasuredStep second = named(bridged(1, volts(20)), "2");
    WalkResult both =
        ResultComputation.walk(
            Readings.plain(),
            usual(),
            1,
            14.4,
            40,
            Readings.WIRE,
            repeatability,
            List.of(first, second));
    Map<String, Double> parts = both.published().get("1").totalWatts().contributions();
    Map<String, Double> one = both.steps().get(0).totalWatts().orElseThrow().contributions();
    assertEquals(one.get("DMM output volts gain"), parts.get("DMM output volts gain"), 1e-9);
    assertEquals(one.get("load 1.0 ohm"), parts.get("load 1.0 ohm"), 1e-9);
    assertEquals(2 * 400 * 0.004, one.get("setting the limit, 1"), 1e-9);
    for (String run : List.of("1", "2")) {
      assertEquals(400 * 0.004, parts.get("setting the limit, " + run), 1e-9);
    }
  }

  @Test
  void budget_ofAMean_addsUpToTheUncertaintyOfTheHeadline() {
    PublishedPower published =
        walk(usual(), named(stereo(4, volts(20)), "1"), named(stereo(4, volts(20.01)), "2"))
            .published()
            .get("1");
    assertEquals(2, published.runs().size());
    double squares = 0;
    for (BudgetLine line : published.budget()) {
      squares += line.contribution() * line.contribution();
      assertEquals(
          line.contribution(), Math.abs(line.sensitivity()) * line.inputU(), 1e-12, line.source());
    }
    assertEquals(published.totalWatts().u(), Math.sqrt(squares), 1e-9);
  }

  /** What both runs read is averaged, what one of them lacks is unknown; their marks add up. */
  @Test
  void conditionsOfAMean_areThoseOfAllItsRuns() {
    MeasuredStep first =
        bridged(1, volts(20), of(ReadingId.SUPPLY_VOLTS, 14.4), of(ReadingId.THD_PERCENT, 0.9));
    MeasuredStep second = bridged(1, volts(20.01), of(ReadingId.SUPPLY_VOLTS, 14.16));
    PublishedPower published =
        walk(usual(), named(first, "1"), named(second, "2")).published().get("1");
    assertEquals(14.28, published.conditions().supplyVolts().orElseThrow(), 1e-9);
    assertEquals(OptionalDouble.empty(), published.conditions().thdPercent());
    assertTrue(published.conditions().said());
    assertEquals(List.of(Mark.SUPPLY_OFF), published.marks());
  }

  /** 14.1 V is 2.1 % below 14.4 V, and off from what is asked for. */
  @Test
  void runAtOtherSupplyVolts_isNotTakenIntoTheMean() {
    MeasuredStep first = bridged(1, volts(20), of(ReadingId.SUPPLY_VOLTS, 14.1));
    MeasuredStep second = bridged(1, volts(20.01), of(ReadingId.SUPPLY_VOLTS, 14.4));
    PublishedPower published =
        walk(usual(), named(first, "1"), named(second, "2")).published().get("1");
    assertEquals(List.of("2"), published.runs());
    assertEquals(List.of(), published.marks());
  }

  /** The mean of 100 W and 100.2 W is judged, at the mean of their supply volts. */
  @Test
  void ratingOfAMean_isSetAgainstTheMean() {
    MeasuredStep first = bridged(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 14.4));
    MeasuredStep second = bridged(4, volts(20.02), of(ReadingId.SUPPLY_VOLTS, 14.4));
    RatingComparison rating =
        walk(
                Readings.rated(Readings.rating(Mode.BRIDGED, 4, 80, 14.4, 1)),
                usual(),
                named(first, "1"),
                named(second, "2"))
            .published()
            .get("1")
            .rating()
            .orElseThrow();
    assertEquals((100 + 20.02 * 20.02 / 4) / 2, rating.measured().value(), 1e-9);
    assertEquals(RatingComparison.Verdict.MEETS, rating.verdict());
  }

  @Test
  void oneChannelRead_statesThatChannelPerLoad() {
    PublishedPower published = walk(usual(), stereo(4, volts(20))).published().get("stereo-4");
    assertEquals(100, published.watts().value(), 1e-9);
  }

  @Test
  void bridged_statesItsOneLoadPerLoad() {
    PublishedPower published =
        walk(usual(), bridged(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 18)))
            .published()
            .get("bridged-4");
    assertEquals(100, published.watts().value(), 1e-9);
  }

  /** Loads count as one up to 1 in 1000 apart. */
  @Test
  void loadsAlmostTheSame_areOneLoad() {
    assertEquals(
        List.of("a"),
        List.copyOf(
            walk(usual(), named(stereo(4, volts(20)), "a"), named(stereo(4.0039, volts(20)), "b"))
                .published()
                .keySet()));
    assertEquals(
        List.of("a", "b"),
        List.copyOf(
            walk(usual(), named(stereo(4, volts(20)), "a"), named(stereo(4.0041, volts(20)), "b"))
                .published()
                .keySet()));
  }

  @Test
  void stereoAndBridged_areNeverOneLoad() {
    assertEquals(2, walk(usual(), stereo(4, volts(20)), bridged(4, volts(20))).published().size());
  }

  private static Criterion criterion(String run) {
    return switch (run.charAt(0)) {
      case 'L' -> Criterion.THD_LIMIT;
      case 'C' -> Criterion.CLIPPING_ONSET;
      default -> Criterion.BELOW_LIMIT;
    };
  }
}
