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
    assertEquals(Verdict.HEED, bridged.gravity());
    assertEquals(52, bridged.number().orElseThrow());
    assertTrue(told("shock-volts", STEREO_4).text().endsWith("above 50 V: hands off."));
  }

  @Test
  void shock_withoutALoad_isOfTheOpenVolts() {
    Target open = new Target("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, 4, 1);
    bench.reads(ReadingId.OUTPUT_VOLTS, 30, 40, 45);
    assertTrue(bench.find("shock-volts", open).isEmpty());
    bench.reads(ReadingId.OPEN_VOLTS, 40, 48, 55);
    assertEquals(48, told("shock-volts", open).number().orElseThrow());
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
    assertEquals(Verdict.CLEAR, low.gravity());
    bench.tone = 2000;
    assertTrue(told("meter-band", STEREO_4).text().contains("the tone is 2000 Hz"));
    bench.tone = 1000;
    assertTrue(bench.find("meter-band", STEREO_4).isEmpty());
  }

  @Test
  void meter_ofWhichTheToneIsNotKnown_isTold() {
    bench.meters = List.of(meter(new Meter.Band(50, 1000)));
    bench.tone = Double.NaN;
    assertEquals(Verdict.CLEAR, told("meter-band", STEREO_4).gravity());
  }

  @Test
  void meter_isNoMatter_whereNoToneIsDriven() {
    bench.meters = List.of(meter(new Meter.Band(50, 1000)));
    assertTrue(bench.find("meter-band", Target.idle("idle")).isEmpty());
  }

  /** Likely above 65 °C it burns (ISO 13732-1, from memory); that alone holds nothing. */
  @Test
  void heatsink_thatLikelyBurns_isTold() {
    bench.reads(ReadingId.SINK_CELSIUS, 50, 65, 80);
    assertTrue(bench.find("heatsink", STEREO_4).isEmpty());
    bench.reads(ReadingId.SINK_CELSIUS, 50, 66, 80);
    Caution touch = told("heatsink", STEREO_4);
    assertEquals(
        "The heatsink reaches about 66 °C, at worst 80 °C. Touch burns from about 65 °C: hands"
            + " off.",
        touch.text());
    assertEquals(Verdict.CLEAR, touch.gravity());
  }

  @Test
  void heatsink_atWhichAmplifiersCutOut_isHeedWhereItMayAndHaltWhereItLikelyGetsThere() {
    bench.reads(ReadingId.SINK_CELSIUS, 80, 85, 102);
    Caution hot = told("heatsink", STEREO_4);
    assertEquals(Verdict.HEED, hot.gravity());
    assertEquals(1.2, hot.severity(), 1e-12);
    assertTrue(hot.text().endsWith("Amplifiers commonly cut out near 85 °C: stop at 75 °C."));
    bench.reads(ReadingId.SINK_CELSIUS, 80, 86, 102);
    assertEquals(Verdict.HALT, told("heatsink", STEREO_4).gravity());
    assertTrue(told("heatsink", STEREO_4).text().endsWith("Let it cool first."));
  }

  private static Meter meter(Meter.Band band) {
    return new Meter("bench meter", ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01, Optional.of(band));
  }

  private Caution told(String code, Target target) {
    return bench.find(code, target).orElseThrow(() -> new AssertionError(code + " is missing"));
  }
}
