package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.walk.fact.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the fill keys put into a step from its connected meters, and what they say of it. */
class MeterFillTest {

  /** Runs stereo-4 with these meters connected, each of its own resolution. */
  private static Desk running() {
    return Desk.atHome()
        .opens(Shelf.SHORT, Shelf.STRONG, Shelf.STOUT)
        .press("F3", "text:later", "Enter", "text:4", "Enter");
  }

  private static Meter meter(ReadingId id, double resolution) {
    Connection by =
        new Connection(
            new Connection.Tcp("192.0.2.1", 5025), "READ?", id.unit().asciiSymbol(), 1, 1000);
    return new Meter(id.label() + " meter", id, 0.5, 2, resolution, Optional.empty())
        .connectedBy(by);
  }

  private static MeterWatch says(Desk desk, Meter meter, double... values) {
    MeterWatch watch = MeterWatch.begin(meter, desk.millis());
    long at = desk.millis() - 300L * values.length;
    for (double value : values) {
      at += 300;
      watch = watch.after(MeterSituations.value(meter.reads(), value), at);
    }
    return watch;
  }

  private static Desk hears(Desk desk, MeterWatch... watches) {
    return desk.hears(
        new ProgramEvent.MetersRead(
            new ConnectedMeters(List.of(watches), desk.millis(), desk.wall(), Optional.empty())));
  }

  private static String notice(Desk desk) {
    return desk.program().state().notice().orElse("");
  }

  @Test
  void loadOhms_areNeverTakenFromALiveOutput() {
    Desk desk = running();
    hears(
        desk,
        says(desk, meter(ReadingId.LOAD_OHMS, 0.001), 3.99),
        says(desk, meter(ReadingId.SUPPLY_AMPS, 0.1), 33));
    desk.press("F8");
    assertTrue(desk.step().latest(ReadingId.LOAD_OHMS).isEmpty());
    assertEquals(33, desk.step().latest(ReadingId.SUPPLY_AMPS).orElseThrow().value(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "0.01, 13.746, 13.75 V",
    "0.1, 13.746, 13.7 V",
    "1, 13.746, 14 V",
    "10, 13.746, 14 V",
    "0.001, 13.7, 13.700 V",
    "0.0, 13.7461239, 13.74612 V"
  })
  void reading_isEnteredAsFinelyAsTheMeterShowsIt(double resolution, double volts, String text) {
    Desk desk = running();
    hears(desk, says(desk, meter(ReadingId.SUPPLY_VOLTS, resolution), volts)).press("F8");
    Entry entry = desk.step().latest(ReadingId.SUPPLY_VOLTS).orElseThrow();
    assertEquals(text, entry.text());
    assertEquals("supply volts meter", entry.instrument().orElseThrow().meter());
  }

  @Test
  void spreadAndCount_areTold_forOneMeterAndForSeveral() {
    Desk desk = running();
    Meter volts = meter(ReadingId.SUPPLY_VOLTS, 0.01);
    hears(desk, says(desk, volts, 13.70)).press("F8");
    assertEquals("Entered: supply volts (one reading).", notice(desk));
    Desk more = running();
    hears(more, says(more, volts, 13.70, 13.72, 13.74)).press("F8");
    assertEquals("Entered. Spread of the last 3: supply volts 40 mV.", notice(more));
    Desk two = running();
    hears(
            two,
            says(two, volts, 13.70, 13.72),
            says(two, meter(ReadingId.SUPPLY_AMPS, 0.1), 33.0, 33.4))
        .press("F8");
    assertEquals(
        "Entered. Spread of the last 2: supply volts 20 mV, supply amps 0.40 A; read within 0.0 s.",
        notice(two));
  }

  @Test
  void timesApart_areToldInTenths_roundedUp() {
    Desk desk = running();
    MeterWatch volts = says(desk, meter(ReadingId.SUPPLY_VOLTS, 0.01), 13.7);
    MeterWatch amps =
        MeterWatch.begin(meter(ReadingId.SUPPLY_AMPS, 0.1), desk.millis())
            .after(MeterSituations.value(ReadingId.SUPPLY_AMPS, 33), desk.millis() - 310);
    hears(desk, volts, amps).press("F8");
    assertTrue(notice(desk).endsWith("; read within 0.4 s."), notice(desk));
    long later =
        desk.step()
            .latest(ReadingId.SUPPLY_AMPS)
            .orElseThrow()
            .instrument()
            .orElseThrow()
            .wallMillis();
    assertEquals(desk.wall() - 310, later);
  }

  /** 15 A of 60 to 75 is more than a tenth and far outside the meter's specification. */
  @ParameterizedTest
  @CsvSource({"33, 33.4, false", "33, 36, false", "33, 37, true", "30, 60, true"})
  void readingThatMoves_isToldAsNotSettled(double first, double second, boolean moving) {
    Desk desk = running();
    hears(desk, says(desk, meter(ReadingId.SUPPLY_AMPS, 0.1), first, second)).press("F8");
    assertEquals(moving, notice(desk).startsWith("NOT SETTLED: supply amps. Wait, "), notice(desk));
  }

  @Test
  void smallCurrent_thatJittersWithinTheMetersSpecification_isSettled() {
    Desk desk = running();
    hears(desk, says(desk, meter(ReadingId.SUPPLY_AMPS, 0.1), 0.5, 0.7)).press("F8");
    assertTrue(notice(desk).startsWith("Entered."), notice(desk));
  }

  @Test
  void fieldKey_takesTheReadingInFocus_outputVoltsFromItsNearestMeter() {
    Desk desk = running();
    hears(desk, says(desk, meter(ReadingId.OUTPUT_VOLTS, 0.01), 24.5));
    desk.press("Down", "F11");
    assertEquals(24.5, desk.step().latest(ReadingId.OTHER_OUTPUT_VOLTS).orElseThrow().value());
    assertTrue(desk.step().latest(ReadingId.OUTPUT_VOLTS).isEmpty());
  }

  @Test
  void meterThatGivesNoNumber_isTold_besidesWhatWasEntered() {
    Desk desk = running();
    MeterWatch silent =
        MeterWatch.begin(meter(ReadingId.SUPPLY_VOLTS, 0.01), desk.millis())
            .after(new MeterReading.Silent("the cable was pulled"), desk.millis());
    hears(desk, silent, says(desk, meter(ReadingId.SUPPLY_AMPS, 0.1), 33)).press("F8");
    List<String> parts = new ArrayList<>(List.of(notice(desk).split("(?<=\\.) (?=Entered)")));
    assertEquals(2, parts.size(), notice(desk));
    assertTrue(parts.get(0).contains("supply volts meter"), notice(desk));
    assertEquals("Entered: supply amps (one reading).", parts.get(1));
  }

  @Test
  void warmUp_takesATemperatureEachTimeTheFillKeyIsPressed() {
    Desk desk = Desk.atHome().opens(Shelf.LADDER, Shelf.NAMED, Shelf.STOUT);
    desk.press("F7", "text:small", "Enter", "text:4", "Enter");
    for (int i = 1; i <= 2; i++) {
      desk.press("wait:1");
      hears(desk, says(desk, meter(ReadingId.SINK_CELSIUS, 0.1), 30 + i)).press("F8");
      assertEquals(i, desk.step().entries().get(ReadingId.SINK_CELSIUS).size(), notice(desk));
    }
  }

  @Test
  void oneReadingOfAStep_isNotTakenTwice_byTheFillKey() {
    Desk desk = running();
    MeterWatch amps = says(desk, meter(ReadingId.SUPPLY_AMPS, 0.1), 33);
    hears(desk, amps).press("F8", "F8");
    assertEquals(1, desk.step().entries().get(ReadingId.SUPPLY_AMPS).size());
    assertEquals("Every reading with a meter is in; F11 takes one again.", notice(desk));
  }
}
