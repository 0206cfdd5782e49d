package loadwalk.forecast.model;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_2;
import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_1;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** The bands of a step among each other: power, heat, drop and the supply. */
class StepBandsTest {
  private static final double ROOT = 1.959964;
  private final WalkModel model = Amplifiers.measured(bench(List.of()));

  @Test
  void watts_areVoltsSquaredOverOhms() {
    for (Target target : List.of(STEREO_1, BRIDGED_2)) {
      StepBands bands = model.bands(target);
      Band volts = band(bands, ReadingId.OUTPUT_VOLTS);
      Band watts = bands.demand().loadWatts().orElseThrow();
      assertBand(
          new Band(
              volts.low() * volts.low() / target.ohms(),
              volts.middle() * volts.middle() / target.ohms(),
              volts.high() * volts.high() / target.ohms()),
          watts);
      double loads = target.mode() == Mode.STEREO ? 2 : 1;
      assertBand(times(loads, watts), bands.demand().totalWatts().orElseThrow());
    }
  }

  /** Heat is what goes in and does not come out: P (1/η − 1), and what stands at idle. */
  @Test
  void heat_isInputLessOutput() {
    StepBands bands = model.bands(STEREO_2);
    Band total = bands.demand().totalWatts().orElseThrow();
    Band heat = bands.demand().heatWatts().orElseThrow();
    double amps = band(bands, ReadingId.SUPPLY_AMPS).middle();
    double volts = band(bands, ReadingId.SUPPLY_VOLTS).middle();
    assertEquals(amps * volts - total.middle(), heat.middle(), 0.02 * heat.middle());
    double standing = Amplifiers.IDLE_AMPS * 13.8;
    double down = Math.log(total.middle() / total.low());
    double up = Math.log(total.high() / total.middle());
    double own = ROOT * 0.15;
    double lost = heat.middle() - standing;
    assertEquals(lost * Math.exp(-Math.hypot(down, own)) + standing, heat.low(), 1e-3);
    assertEquals(lost * Math.exp(Math.hypot(up, own)) + standing, heat.high(), 1e-3);
  }

  /** An output above the input is a doubt, not a refrigerator. */
  @Test
  void heat_ofReadingsThatPutOutMoreThanIn_isNeverBelowASmallLoss() {
    List<Observation> walk = new ArrayList<>();
    walk.add(new Observation(IDLE, Map.of(ReadingId.SUPPLY_AMPS, 1.4)));
    for (Target target : List.of(STEREO_4, STEREO_2, STEREO_1)) {
      double amps = 1.4 + 2 * 15 * 15 / target.ohms() / (1.2 * 13.8);
      Map<ReadingId, Double> readings =
          Map.of(ReadingId.OUTPUT_VOLTS, 15.0, ReadingId.SUPPLY_AMPS, amps);
      walk.add(new Observation(target, readings));
    }
    WalkModel model = new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), walk));
    StepBands bands = model.bands(STEREO_4);
    double total = bands.demand().totalWatts().orElseThrow().middle();
    double standing = model.idle().amps() * 13.8;
    assertEquals(0.02 * total + standing, bands.demand().heatWatts().orElseThrow().middle(), 1e-6);
  }

  @Test
  void leads_loseTheCurrentTimesTheirResistance() {
    Bench wired = bench(List.of(new Supply(13.8, 500)));
    Map<ReadingId, Band> bands = Amplifiers.measured(wired).bands(STEREO_1).bands();
    double ohms = new Wire(Tables.stock()).ohms(wired).orElseThrow();
    StepCautions cautions = Stock.cautions();
    assertBand(
        times(ohms, bands.get(ReadingId.SUPPLY_AMPS)),
        cautions.leadVolts(wired, bands).orElseThrow());
    assertTrue(cautions.leadVolts(Bench.unknown(), bands).isEmpty());
    assertTrue(cautions.leadVolts(wired, Map.of()).isEmpty());
  }

  @Test
  void otherChannel_isTheSame_aPercentWider_andOnlyInStereo() {
    StepBands bands = model.bands(STEREO_1);
    Band volts = band(bands, ReadingId.OUTPUT_VOLTS);
    Band other = band(bands, ReadingId.OTHER_OUTPUT_VOLTS);
    double own = ROOT * 0.01;
    double up = Math.hypot(Math.log(volts.high() / volts.middle()), own);
    double down = Math.hypot(Math.log(volts.middle() / volts.low()), own);
    assertEquals(volts.middle(), other.middle(), 1e-12);
    assertEquals(volts.middle() * Math.exp(up), other.high(), 1e-4);
    assertEquals(volts.middle() * Math.exp(-down), other.low(), 1e-4);
    assertFalse(model.bands(BRIDGED_2).bands().containsKey(ReadingId.OTHER_OUTPUT_VOLTS));
  }

  /** 2.5 % and 97.5 % of the density of the current above idle. */
  @Test
  void amps_areIdleAndWhatTheOutputAsks() {
    Mixture above = model.outlook(STEREO_1).asked().logAbove();
    Band amps = band(model.bands(STEREO_1), ReadingId.SUPPLY_AMPS);
    double idle = Amplifiers.IDLE_AMPS;
    assertEquals(0.025, above.cumulative(Math.log(amps.low() - idle)), 1e-3);
    assertEquals(0.5, above.cumulative(Math.log(amps.middle() - idle)), 0.02);
    assertEquals(0.975, above.cumulative(Math.log(amps.high() - idle)), 0.01);
  }

  /** A supply delivers no more than it can, but fuses and leads must bear what is asked. */
  @Test
  void amps_beyondTheSupplies_reachDownToWhatTheyDeliver() {
    // The load of stereo-1 again, which drew 50 A: a little more than 46 A are rated to deliver.
    Band free = ampsOfBridgedTwo(Bench.unknown());
    Band tied = ampsOfBridgedTwo(bench(List.of(new Supply(13.8, 46))));
    assertTrue(free.low() > 0.95 * 46, free.toString());
    assertEquals(0.95 * 46, tied.low(), 1e-9);
    assertEquals(free.middle(), tied.middle(), 0.02 * free.middle());
    assertEquals(free.high(), tied.high(), 0.02 * free.high());
  }

  private static Band ampsOfBridgedTwo(Bench bench) {
    Evidence evidence =
        new Evidence(
            Amplifiers.rated(50),
            bench,
            Amplifiers.CONDITIONS,
            Amplifiers.before(Amplifiers.BRIDGED_2));
    return band(new WalkModel(evidence).bands(Amplifiers.BRIDGED_2), ReadingId.SUPPLY_AMPS);
  }

  @Test
  void supplyVolts_areTheSagAtTheCurrent() {
    StepBands bands = model.bands(STEREO_1);
    Band amps = band(bands, ReadingId.SUPPLY_AMPS);
    Band volts = band(bands, ReadingId.SUPPLY_VOLTS);
    assertEquals(model.sag().volts(amps.middle()), volts.middle(), 1e-12);
    double deviation = model.sag().deviation(amps.middle(), (amps.high() - amps.low()) / 4);
    assertTrue(
        ROOT * deviation > MeterFloor.halfWidth(Bench.unknown(), ReadingId.SUPPLY_VOLTS, 13));
    assertEquals(volts.middle() + ROOT * deviation, volts.high(), 1e-3);
    assertEquals(volts.middle() - ROOT * deviation, volts.low(), 1e-3);
  }

  /** A supply in its limit may sag to where amplifiers give up, 73 % of what is set. */
  @Test
  void supplyVolts_ofASupplyThatMayGiveWay_reachFarDown() {
    WalkModel tied = Amplifiers.measured(bench(List.of(new Supply(13.8, 26))));
    assertEquals(0.73 * 13.8, band(tied.bands(STEREO_1), ReadingId.SUPPLY_VOLTS).low(), 1e-9);
    assertTrue(band(tied.bands(STEREO_2), ReadingId.SUPPLY_VOLTS).low() > 12);
  }

  @Test
  void openVolts_areThoseUnderLoad_andUpToAnEighthMore() {
    Target stereo = new Target("open", Target.Kind.OPEN_LOAD, Mode.STEREO, 1, 1);
    Target bridged = new Target("open", Target.Kind.OPEN_LOAD, Mode.BRIDGED, 2, 1);
    Band loaded = band(model.bands(STEREO_1), ReadingId.OUTPUT_VOLTS);
    Band open = band(model.bands(stereo), ReadingId.OPEN_VOLTS);
    assertEquals(loaded.low(), open.low(), 1e-3);
    assertEquals(1.02 * loaded.middle(), open.middle(), 1e-3);
    assertEquals(1.12 * loaded.high(), open.high(), 1e-3);
    double two = band(model.bands(bridged), ReadingId.OPEN_VOLTS).middle();
    assertEquals(2 * open.middle(), two, 0.01 * two);
    Target noLoad = new Target("open", Target.Kind.OPEN_LOAD, Mode.STEREO, 0, 1);
    assertEquals(Map.of(), model.bands(noLoad).bands());
    assertEquals(Map.of(), model.bands(Target.loaded("x", Mode.STEREO, 0)).bands());
  }

  @Test
  void idle_isTheCurrentAgain_andTheVoltsAtIt() {
    StepBands bands = model.bands(IDLE);
    Band amps = band(bands, ReadingId.SUPPLY_AMPS);
    assertEquals(Amplifiers.IDLE_AMPS, amps.middle(), 1e-3);
    assertEquals(Amplifiers.IDLE_AMPS * Math.exp(ROOT * 0.08), amps.high(), 2e-3);
    Band volts = band(bands, ReadingId.SUPPLY_VOLTS);
    assertEquals(model.sag().volts(Amplifiers.IDLE_AMPS), volts.middle(), 1e-9);
    assertEquals(2, bands.bands().size());
  }

  @Test
  void heatsinkAndLoad_areToldWhereTheyCanBe() {
    Observation warm = new Observation(STEREO_2, Map.of(ReadingId.SINK_CELSIUS, 48.0));
    WalkModel warmed = new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), List.of(warm)));
    assertEquals(49, band(warmed.bands(STEREO_1), ReadingId.SINK_CELSIUS).middle());
    assertFalse(model.bands(STEREO_1).bands().containsKey(ReadingId.SINK_CELSIUS));
    assertEquals(1, band(model.bands(STEREO_1), ReadingId.LOAD_OHMS).middle());
  }

  /** A meter of ±8 % cannot tell volts better than that, however well they are foretold. */
  @Test
  void bands_areNeverNarrowerThanTheMeter() {
    Meter coarse = new Meter("m", ReadingId.OUTPUT_VOLTS, 8, 0, 0.01, Optional.empty());
    Bench bench =
        new Bench(
            "b", List.of(), List.of(), OptionalDouble.empty(), List.of(), List.of(coarse), 0.9);
    Band fine = band(model.bands(STEREO_2), ReadingId.OUTPUT_VOLTS);
    assertTrue(fine.high() < 1.05 * fine.middle(), fine.toString());
    Band told = band(Amplifiers.measured(bench).bands(STEREO_2), ReadingId.OUTPUT_VOLTS);
    assertEquals(1.08 * told.middle(), told.high(), 1e-9);
    assertEquals(0.92 * told.middle(), told.low(), 1e-9);
  }

  private static Band band(StepBands bands, ReadingId id) {
    return bands.bands().get(id);
  }

  private static Band times(double factor, Band band) {
    return new Band(factor * band.low(), factor * band.middle(), factor * band.high());
  }

  private static void assertBand(Band expected, Band actual) {
    assertEquals(expected.low(), actual.low(), 1e-9);
    assertEquals(expected.middle(), actual.middle(), 1e-9);
    assertEquals(expected.high(), actual.high(), 1e-9);
  }

  private static Bench bench(List<Supply> supplies) {
    return new Bench(
        "b",
        supplies,
        List.of(BriefedBench.run("plus", 1, 1)),
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        0.9);
  }
}
