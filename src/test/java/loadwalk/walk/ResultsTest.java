package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.result.MeasuredStep;
import loadwalk.result.TakenReading;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Instrument;
import org.junit.jupiter.api.Test;

/** What of a walk goes into its results: the readings as typed, each with what it rests on. */
class ResultsTest {
  private final Floor floor = new Floor();

  private List<MeasuredStep> taken() {
    return Results.taken(floor.model.state());
  }

  private Floor typed(String step, ReadingId id, String text) {
    return floor.at(step).hear(new Intent.Begin()).hear(new Intent.Enter(step, id, text));
  }

  @Test
  void stepsWithoutReadings_orSkipped_giveNothing() {
    floor.at("stereo-4");
    assertEquals(List.of(), taken());
    typed("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V");
    assertEquals(1, taken().size());
    floor.hear(new Intent.Skip("spoilt"));
    assertEquals(List.of(), taken());
  }

  @Test
  void steps_areTakenWithWhatTheyAre() {
    typed("idle", ReadingId.SUPPLY_AMPS, "1.9").hear(new Intent.Finish());
    typed("bridged-4", ReadingId.OUTPUT_VOLTS, "26").hear(new Intent.Finish());
    typed("recheck", ReadingId.OUTPUT_VOLTS, "25.9");
    List<MeasuredStep> steps = taken();
    assertEquals(
        List.of(Target.Kind.IDLE, Target.Kind.LOADED, Target.Kind.LOADED),
        steps.stream().map(MeasuredStep::kind).toList());
    assertEquals(
        List.of(Mode.STEREO, Mode.BRIDGED, Mode.BRIDGED),
        steps.stream().map(MeasuredStep::mode).toList());
    assertEquals(Optional.empty(), steps.get(1).recheckOf());
    assertEquals(Optional.of("bridged-4"), steps.get(2).recheckOf());
    TakenReading volts = steps.get(1).readings().get(ReadingId.OUTPUT_VOLTS);
    assertEquals(new TakenReading(ReadingId.OUTPUT_VOLTS, 26, 1), volts);
  }

  /** JCGM 100:2008, 4.2.6: a scatter of n readings has n − 1 degrees of freedom. */
  @Test
  void readingOfAMeterAskedAgainAndAgain_bringsItsScatter() {
    floor.at("stereo-4").hear(new Intent.Begin());
    ask(new Instrument("clamp", "", "17.0", 0, 8, 0.02));
    TakenReading many = taken().get(0).readings().get(ReadingId.SUPPLY_AMPS);
    assertEquals(0.02, many.scatter());
    assertEquals(7, many.scatterDegrees());
    assertEquals(17, many.value());
    ask(new Instrument("clamp", "", "17.0", 0, 1, 0));
    TakenReading once = taken().get(0).readings().get(ReadingId.SUPPLY_AMPS);
    assertEquals(0, once.scatter());
    assertTrue(Double.isInfinite(once.scatterDegrees()));
    Entry two = entry(new Instrument("clamp", "", "17.0", 0, 2, 0.03));
    assertEquals(1, Results.taken(ReadingId.SUPPLY_AMPS, two).scatterDegrees());
  }

  private static Entry entry(Instrument from) {
    return new Entry(
        "17.0",
        17,
        0.1,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        1,
        0,
        Optional.of(from),
        OptionalDouble.empty(),
        false);
  }

  private void ask(Instrument from) {
    Fact read =
        new Fact.Entered(
            "stereo-4",
            ReadingId.SUPPLY_AMPS,
            "17.0",
            17,
            0.1,
            List.of(),
            0,
            Optional.of(from),
            OptionalDouble.empty());
    floor.model = floor.model.with(read.applyTo(floor.model.state(), 0));
  }

  /** The scatter of a wave is of its volts; its THD has none of its own. */
  @Test
  void readingOfAWave_bringsTheWavesOwnUncertainty() {
    floor.at("stereo-4").hear(new Intent.Begin());
    Capture capture = CapturesTest.capture(1, true, OptionalDouble.of(0.005));
    floor.hear(new Intent.TakeCapture("stereo-4", capture, 0));
    Map<ReadingId, TakenReading> readings = taken().get(0).readings();
    assertEquals(0.01, readings.get(ReadingId.OUTPUT_VOLTS).scatter());
    assertEquals(0, readings.get(ReadingId.THD_PERCENT).scatter());
    TakenReading.Captured calibration =
        readings.get(ReadingId.OUTPUT_VOLTS).captured().orElseThrow();
    assertEquals(
        "volts per full scale and divider ratio, 42.0 V per unit", calibration.calibration());
    assertEquals(capture.calibrationU(), calibration.calibrationU());
  }
}
