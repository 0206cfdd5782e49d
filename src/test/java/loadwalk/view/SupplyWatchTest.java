package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.forecast.Band;
import loadwalk.meter.MeterReading;
import loadwalk.view.state.Alarm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The watch over supply current and terminal volts while a step runs. */
class SupplyWatchTest {
  private static final double VOLTS = 13.8;

  /** Runs the idle step of an amplifier with 25 A of fuses, or none, on a bench. */
  private static Desk running(String suppliesAmps, String sourceAmps, String ownAmps) {
    Amplifier named = Shelf.NAMED;
    Amplifier amplifier =
        new Amplifier(
            named.maker(),
            named.model(),
            named.serial(),
            named.year(),
            named.amplifierClass(),
            named.channels(),
            named.ratings(),
            named.minimumStereoOhms(),
            named.minimumBridgedOhms(),
            ownAmps == null ? List.of() : List.of(Double.parseDouble(ownAmps)),
            named.regulated());
    Bench bench =
        new Bench(
            "Bench",
            suppliesAmps == null
                ? List.of()
                : List.of(new Supply(VOLTS, Double.parseDouble(suppliesAmps))),
            List.of(),
            sourceAmps == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(sourceAmps)),
            List.of(),
            List.of(Shelf.meter(ReadingId.SUPPLY_VOLTS), Shelf.meter(ReadingId.SUPPLY_AMPS)),
            0.9);
    return Desk.atHome().opens(Shelf.SHORT, amplifier, bench).press("Enter", "text:4", "Enter");
  }

  private static String told(Desk desk) {
    return desk.program().state().meters().alarm().map(Alarm::what).orElse("");
  }

  private static Band brief(ReadingId id) {
    Desk desk = running("100", null, null);
    return desk.step().brief().orElseThrow().band(id).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10|  |   | 9.00 |''",
        "10|  |   | 9.01 |SUPPLY AMPS 9.01 A, above the 9.00 A usable from the supplies.",
        "  |10|   |10.00 |''",
        "  |10|   |10.01 |SUPPLY AMPS 10.01 A, above the 10.0 A of the fuse at the source.",
        "  |  |10 |10.00 |''",
        "  |  |10 |10.01 |SUPPLY AMPS 10.01 A, above the 10.0 A of the amplifier's own fuses.",
        "20|10|12 |15.00 |SUPPLY AMPS 15.00 A, above the 10.0 A of the fuse at the source.",
        "20|14|12 |18.50 |SUPPLY AMPS 18.50 A, above the 12.0 A of the amplifier's own fuses.",
        "10|14|12 |18.50 |SUPPLY AMPS 18.50 A, above the 9.00 A usable from the supplies."
      })
  void current_aboveALimit_isToldWithTheLeastOfThoseItPasses(
      String supplies, String source, String own, double amps, String told) {
    Desk desk = MeterSituations.say(running(supplies, source, own), VOLTS, amps);
    String alarm = told(desk);
    assertEquals(told, alarm.contains("forecast maximum") ? "" : alarm);
  }

  @Test
  void currentAndVolts_outsideTheBrief_areTold_andJustInsideAreNot() {
    Band amps = brief(ReadingId.SUPPLY_AMPS);
    Band volts = brief(ReadingId.SUPPLY_VOLTS);
    double middle = volts.middle();
    Desk desk = running("100", null, null);
    assertEquals("", told(MeterSituations.say(desk, middle, amps.high() - 0.01)));
    assertEquals(
        Optional.of(Alarm.Kind.AMPS_ABOVE_THE_BRIEF),
        kind(MeterSituations.say(desk, middle, amps.high() + 0.01)));
    assertEquals("", told(MeterSituations.say(desk, volts.low() + 0.001, 1)));
    assertEquals(
        Optional.of(Alarm.Kind.VOLTS_BELOW_THE_BRIEF),
        kind(MeterSituations.say(desk, volts.low() - 0.001, 1)));
    assertEquals("", told(MeterSituations.say(desk, volts.high() - 0.001, 1)));
    assertEquals(
        Optional.of(Alarm.Kind.VOLTS_ABOVE_THE_BRIEF),
        kind(MeterSituations.say(desk, volts.high() + 0.001, 1)));
  }

  private static Optional<Alarm.Kind> kind(Desk desk) {
    return desk.program().state().meters().alarm().map(Alarm::kind);
  }

  @Test
  void meterThatIsHeld_warnsAllTheSame() {
    Desk desk = running("10", null, null);
    MeterReading volts = MeterSituations.value(ReadingId.SUPPLY_VOLTS, 13.80123);
    MeterReading amps = MeterSituations.value(ReadingId.SUPPLY_AMPS, 9.41234);
    for (int i = 0; i < 12; i++) {
      MeterSituations.say(desk, volts, amps);
    }
    assertEquals(
        "held? 9.41 A",
        desk.program().state().meterWords(ReadingId.SUPPLY_AMPS).orElseThrow(),
        "the meter counts as held");
    assertEquals("SUPPLY AMPS 9.41 A, above the 9.00 A usable from the supplies.", told(desk));
    MeterReading low = MeterSituations.value(ReadingId.SUPPLY_VOLTS, 9.01234);
    MeterReading little = MeterSituations.value(ReadingId.SUPPLY_AMPS, 0.51234);
    for (int i = 0; i < 12; i++) {
      MeterSituations.say(desk, low, little);
    }
    assertEquals(Optional.of(Alarm.Kind.VOLTS_BELOW_THE_BRIEF), kind(desk));
  }

  @Test
  void overload_isAnAlarm_andABlindMeterIsNamed() {
    Desk desk = running("100", null, null);
    MeterReading volts = MeterSituations.value(ReadingId.SUPPLY_VOLTS, VOLTS);
    MeterSituations.say(desk, volts, new MeterReading.Overload("9.9E37"));
    assertEquals("SUPPLY AMPS: the meter shows overload.", told(desk));
    MeterSituations.say(desk, volts, MeterSituations.value(ReadingId.SUPPLY_AMPS, 1));
    assertEquals("", told(desk));
    MeterSituations.say(
        desk,
        new MeterReading.Silent("unplugged"),
        MeterSituations.value(ReadingId.SUPPLY_AMPS, 1));
    assertEquals("SUPPLY VOLTS not watched: no answer from supply volts meter.", told(desk));
    MeterSituations.say(
        desk, new MeterReading.Silent("unplugged"), new MeterReading.Silent("unplugged"));
    assertEquals("SUPPLY AMPS not watched: no answer from supply amps meter.", told(desk));
  }

  @Test
  void beforeAStepRuns_nothingIsWatched() {
    Desk desk = Desk.atHome().opens(Shelf.SHORT, Shelf.STRONG, Shelf.STOUT);
    assertEquals("", told(MeterSituations.say(desk, 5, 500)));
    assertEquals("", told(MeterSituations.say(Desk.atHome(), 5, 500)));
  }
}
