package loadwalk.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Battery;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.Metal;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Source;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Observation;
import loadwalk.sequence.Idle;
import loadwalk.sequence.Measure;
import loadwalk.sequence.OpenLoad;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.WarmUp;
import org.junit.jupiter.api.Test;

/** Whatever stands on the bench, no plan shows a number that no bench can have. */
class PossibleNumbersPropertyTest {
  private static final long SEED = 20_261_201;
  private static final int TRIALS = 2000;
  private static final double ROUNDING = 1 + 1e-9;
  private static final List<String> CLASSES = List.of("A", "AB", "B", "D", "G", "class d", "XR");
  private static final Sequence WALK =
      new Sequence(
          "walk",
          "A walk",
          40,
          1,
          13.8,
          List.of(
              new WarmUp(15, 0.5, 0.5),
              new Idle(),
              new Measure(Mode.STEREO, 4, false),
              new Measure(Mode.STEREO, 1, false),
              new Measure(Mode.BRIDGED, 0.5, false),
              new OpenLoad()),
          "0");

  private final SplittableRandom random = new SplittableRandom(SEED);

  @Test
  void plan_neverShowsWhatCannotBe() {
    int starved = 0;
    for (int i = 0; i < TRIALS; i++) {
      Bench bench = bench();
      Amplifier amplifier = amplifier();
      String told = "seed " + SEED + ", trial " + i + ": " + amplifier + " on " + bench;
      BenchPlan plan = StockRules.RULES.plan(WALK, amplifier, bench, read());
      for (StepPlan step : plan.steps()) {
        forecast(step.forecast(), told);
        double most = bench.source().map(Source::volts).orElse(13.8) * ROUNDING;
        step.terminalVolts().ifPresent(v -> within(v, most, "terminals", told));
        step.forecast().demand().leadVolts().ifPresent(v -> within(v, most, "leads", told));
        double lost = 0;
        for (StepPlan.LeadLoss lead : step.leads()) {
          within(lead.watts(), Double.MAX_VALUE, "lead watts", told);
          lost += lead.volts().high();
        }
        assertTrue(lost <= most, lost + " V lost in the leads, " + told);
        starved += step.terminalVolts().filter(v -> v.low() == 0).isPresent() ? 1 : 0;
      }
      assertTrue(!PlanJson.text(plan, StockRules.RULES.tables()).contains("NaN"), told);
    }
    assertTrue(starved > 100, "steps whose bench gives nothing at worst: " + starved);
  }

  private static void forecast(Forecast forecast, String told) {
    forecast
        .readings()
        .forEach(
            (id, band) -> {
              if (id != ReadingId.SINK_CELSIUS) {
                within(band, Double.MAX_VALUE, id.key(), told);
              }
            });
    forecast.demand().heatWatts().ifPresent(h -> within(h, Double.MAX_VALUE, "heat", told));
    Optional<Band> out = forecast.demand().totalWatts();
    Optional<Band> volts = forecast.band(ReadingId.SUPPLY_VOLTS);
    Optional<Band> amps = forecast.band(ReadingId.SUPPLY_AMPS);
    if (out.isPresent() && volts.isPresent() && amps.isPresent()) {
      balance(out.get().low(), volts.get().low() * amps.get().low(), "low", told);
      balance(out.get().middle(), volts.get().middle() * amps.get().middle(), "middle", told);
      balance(out.get().high(), volts.get().high() * amps.get().high(), "high", told);
    }
  }

  private static void balance(double out, double in, String end, String told) {
    assertTrue(out <= in * ROUNDING, end + ": " + out + " W of " + in + " W, " + told);
  }

  private static void within(Band band, double most, String what, String told) {
    assertTrue(band.low() >= 0 && band.high() <= most, what + " " + band + ", " + told);
  }

  private double between(double least, double most) {
    return Math.exp(Math.log(least) + random.nextDouble() * Math.log(most / least));
  }

  private Amplifier amplifier() {
    List<Rating> ratings = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      Mode mode = random.nextBoolean() ? Mode.STEREO : Mode.BRIDGED;
      double ohms = Math.pow(2, random.nextInt(4));
      OptionalDouble none = OptionalDouble.empty();
      ratings.add(new Rating(mode, ohms, between(2, 3000), none, none));
    }
    return new Amplifier(
        "Brightmoor",
        "B1",
        Optional.empty(),
        OptionalInt.empty(),
        random.nextInt(4) == 0
            ? Optional.empty()
            : Optional.of(CLASSES.get(random.nextInt(CLASSES.size()))),
        OptionalInt.of(2),
        ratings,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        random.nextBoolean() ? List.of() : List.of(between(5, 60)),
        random.nextBoolean() ? Optional.empty() : Optional.of(random.nextBoolean()));
  }

  private Bench bench() {
    List<Supply> supplies = new ArrayList<>();
    boolean battery = random.nextInt(4) == 0;
    for (int i = random.nextInt(3); i > 0; i--) {
      supplies.add(battery ? Supply.of(battery()) : new Supply(between(12, 15), between(3, 300)));
    }
    List<Lead> leads = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      Lead lead = new Lead("run " + i, new Lead.Awg(random.nextInt(-3, 25)), between(0.1, 50), 1);
      leads.add(random.nextBoolean() ? lead : lead.of(Metal.CCA).insulatedFor(105));
    }
    return new Bench(
        "b",
        supplies,
        leads,
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(between(5, 300)),
        List.of(),
        List.of(),
        0.9);
  }

  private Battery battery() {
    return new Battery(
        between(11.5, 13.2), new Battery.Milliohms(between(2, 60)), OptionalDouble.of(60));
  }

  /** A first load read now and then, with volts and amperes that need not fit each other. */
  private List<Observation> read() {
    if (random.nextInt(3) > 0) {
      return List.of();
    }
    Map<ReadingId, Double> readings =
        Map.of(
            ReadingId.OUTPUT_VOLTS, between(3, 60),
            ReadingId.SUPPLY_AMPS, between(2, 100),
            ReadingId.SUPPLY_VOLTS, between(10, 14.5));
    return List.of(new Observation(Target.loaded("stereo-4", Mode.STEREO, 4), readings));
  }
}
