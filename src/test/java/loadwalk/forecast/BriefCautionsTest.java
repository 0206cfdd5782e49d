package loadwalk.forecast;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.caution.StepCautions;
import org.junit.jupiter.api.Test;

/** The words and edges of the cautions of shock, meters and heat, and how they are sorted. */
class BriefCautionsTest {
  private final BriefedBench bench = new BriefedBench().amps(1, 2);

  @Test
  void shock_isToldWithWhatIsLive() {
    bench.reads(ReadingId.OUTPUT_VOLTS, 40, 52, 60);
    Caution bridged = told("shock-volts", BRIDGED_4);
    assertEquals(
        "The output is about 52 V, at worst 60 V AC, a shock hazard above 50 V. Both bridged"
            + " terminals are live: hands off.",
        bridged.text());
    assertEquals(1.2, bridged.severity(), 1e-12);
    assertTrue(told("shock-volts", STEREO_4).text().endsWith("above 50 V: hands off."));
  }

  @Test
  void shock_withoutALoad_isOfTheOpenVolts() {
    Target open = new Target("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, 4, 1);
    bench.reads(ReadingId.OUTPUT_VOLTS, 30, 40, 45);
    assertTrue(bench.find("shock-volts", open).isEmpty());
    bench.reads(ReadingId.OPEN_VOLTS, 40, 48, 55);
    assertEquals(1.1, told("shock-volts", open).severity(), 1e-12);
    assertTrue(bench.find("shock-volts", STEREO_4).isEmpty());
  }

  @Test
  void meter_outsideItsBand_isToldWithBothEnds() {
    bench.meters = List.of(meter(new Meter.Band(50, 1000)));
    Caution low = told("meter-band", STEREO_4);
    assertEquals(
        "The meter \"bench meter\" is specified from 50 to 1000 Hz; the tone is 40 Hz. Its"
            + " accuracy there is unknown: use another meter or tone.",
        low.text());
    assertEquals(1.25, low.severity(), 1e-12);
    bench.tone = 2000;
    assertEquals(2, told("meter-band", STEREO_4).severity(), 1e-12);
    bench.tone = 1000;
    assertTrue(bench.find("meter-band", STEREO_4).isEmpty());
  }

  /** 0 Hz over 0 Hz is no number; how far off it is cannot be told. */
  @Test
  void meter_ofDirectCurrentAtNoTone_isFarthestOff() {
    bench.meters = List.of(meter(new Meter.Band(0, 0)));
    bench.tone = Double.NaN;
    assertEquals(Double.POSITIVE_INFINITY, told("meter-band", STEREO_4).severity());
  }

  @Test
  void heatsink_atItsEdges_isStillTheLesserWarning() {
    bench.reads(ReadingId.SINK_CELSIUS, 50, 60, 65);
    assertTrue(bench.find("heatsink", STEREO_4).isEmpty());
    bench.reads(ReadingId.SINK_CELSIUS, 80, 85, 102);
    Caution hot = told("heatsink", STEREO_4);
    assertEquals(Verdict.HEED, hot.gravity());
    assertEquals(1.2, hot.severity(), 1e-12);
  }

  private static List<String> codes(StepCautions.Outcome outcome) {
    return outcome.cautions().stream().map(Caution::code).toList();
  }

  private static Caution caution(String code, Verdict gravity, double severity) {
    return new Caution(code, gravity, "Text.", severity);
  }

  private static Meter meter(Meter.Band band) {
    return new Meter("bench meter", ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01, Optional.of(band));
  }

  private Caution told(String code, Target target) {
    return bench.find(code, target).orElseThrow(() -> new AssertionError(code + " is missing"));
  }
}
