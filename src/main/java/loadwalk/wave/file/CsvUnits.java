package loadwalk.wave.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the units that an operator gives for a scope's file. */
public final class CsvUnits {
  private static final List<String> TIMES = List.of("s", "ms", "us", "ns");
  private static final List<String> VOLTS = List.of("V", "mV", "kV");
  private static final Map<String, Double> FACTORS =
      Map.of("s", 1.0, "ms", 1e-3, "us", 1e-6, "ns", 1e-9, "V", 1.0, "mV", 1e-3, "kV", 1e3);

  private CsvUnits() {}

  /**
   * Returns what the operator states about a file; an empty text states nothing.
   *
   * @param time the unit of its time column
   * @param volts the unit of its voltage columns
   * @param prefix the text before both names in a sentence
   * @throws IllegalArgumentException if a unit is not known, in a sentence
   */
  public static ScopeCsv.Given given(String time, String volts, String prefix) {
    return new ScopeCsv.Given(
        factor(time, TIMES, prefix + "time-unit"),
        factor(volts, VOLTS, prefix + "volt-unit"),
        Optional.empty());
  }

  private static Optional<Double> factor(String text, List<String> units, String name) {
    String unit = text.strip().replace('µ', 'u');
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    if (!units.contains(unit)) {
      throw new IllegalArgumentException(
          name + " must be one of " + String.join(", ", units) + "; got " + text.strip() + ".");
    }
    return Optional.of(FACTORS.get(unit));
  }

  /** Returns the text of a time or voltage unit from its factor; empty for none. */
  public static String text(Optional<Double> factor, boolean time) {
    return (time ? TIMES : VOLTS)
        .stream().filter(u -> factor.equals(Optional.of(FACTORS.get(u)))).findFirst().orElse("");
  }
}
