package loadwalk.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Polls a faulty instrument for long in time that is only counted. */
class DialogueScenarioTest {
  private static final long HOUR = 3_600_000;
  private static final double AMPS_FROM = 1_000_000;

  @Test
  void faultyInstrument_forSixHours_neverGivesAReadingThatIsNotOfItsQuestion() {
    poll(8, 6);
  }

  @Test
  @Tag("long")
  void faultyInstruments_ofFiftySeeds_forADay_behave() {
    for (long seed = 1; seed <= 50; seed++) {
      poll(seed, 24);
    }
  }

  /** Each reading is the second of its question, so that a reply to another question shows. */
  private static void poll(long seed, int hours) {
    VirtualLine[] line = new VirtualLine[1];
    SimulatedInstrument instrument =
        Connections.instrument(
            query ->
                OptionalDouble.of(
                    query.equals("MEAS:VOLT:AC?") ? stamp(line) : AMPS_FROM + stamp(line)),
            OptionalLong.of(seed));
    line[0] = new VirtualLine(instrument, List.of(Connections.VOLTS, Connections.AMPS));
    Set<Class<?>> kinds = new HashSet<>();
    int values = 0;
    for (int minute = 1; minute <= 60 * hours; minute++) {
      String message = "seed " + seed + ", minute " + minute;
      line[0].runTo(minute * (HOUR / 60));
      for (VirtualLine.Told told : line[0].heard) {
        kinds.add(told.reading().getClass());
        if (told.reading() instanceof MeterReading.Value value) {
          values++;
          double asked = value.value() - (told.question() == 0 ? 0 : AMPS_FROM);
          double age = told.atMillis() / 1000.0 - asked;
          assertTrue(age >= 0 && age <= Connections.PATIENCE / 1000.0, () -> message + ": " + told);
        }
      }
      assertTrue(line[0].mostDue < 20, message);
      assertTrue(line[0].dialogue().partial().length() < 5000, message);
    }
    String message = "seed " + seed + ": " + kinds + " " + line[0].phases;
    assertTrue(values > 1000 * hours, values + " values, " + message);
    assertEquals(Set.of(Dialogue.Phase.values()), line[0].phases.keySet(), message);
    assertTrue(
        kinds.containsAll(
            Set.of(
                MeterReading.Value.class,
                MeterReading.Overload.class,
                MeterReading.NotANumber.class,
                MeterReading.Late.class,
                MeterReading.Garbage.class,
                MeterReading.Silent.class)),
        message);
    assertEquals(
        Set.of("*IDN?", "SYST:ERR?", "MEAS:VOLT:AC?", "MEAS:CURR:DC?"), line[0].sent, message);
    assertTrue(line[0].opened - line[0].closed <= 1, message);
  }

  private static double stamp(VirtualLine[] line) {
    return line[0].now / 1000.0;
  }
}
