package loadwalk.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import loadwalk.text.Sentence;

/**
 * The wire, fuse and resistor data behind the plan and the cautions, each value with its source.
 *
 * <p>{@link #stock()} gives the tables that come with Loadwalk; {@link #with(String, String)}
 * replaces them row by row with the operator's tables of the same form.
 *
 * @param wires resistance at 20 °C by gauge, ohms per kilometre; a missing AWG size is computed
 * @param ampacities current a single conductor may carry continuously, amperes
 * @param fuses the kinds of fuse, smallest first
 * @param limits single values by key
 * @param insulations current a single conductor may carry continuously by the rating of its
 *     insulation, amperes
 */
public record Tables(
    Map<Lead.Gauge, SourcedNumber> wires,
    Map<Lead.Gauge, SourcedNumber> ampacities,
    List<FuseCurve> fuses,
    Map<String, SourcedNumber> limits,
    Map<Insulated, SourcedNumber> insulations) {

  /** The names of the table files, in the jar and in the data folder of the data home. */
  public static final List<String> FILE_NAMES = TableReader.FILE_NAMES;

  /** Copies the maps. */
  public Tables {
    wires = Collections.unmodifiableMap(new LinkedHashMap<>(wires));
    ampacities = Collections.unmodifiableMap(new LinkedHashMap<>(ampacities));
    fuses = List.copyOf(fuses);
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    insulations = Collections.unmodifiableMap(new LinkedHashMap<>(insulations));
  }

  /**
   * A conductor in its insulation.
   *
   * @param gauge the conductor's size
   * @param celsius what the insulation is rated for, °C, above the room of the tables
   */
  record Insulated(Lead.Gauge gauge, double celsius) {
    /** The temperature of the air about the conductor in the tables, °C. */
    static final double ROOM_CELSIUS = 30;

    /** Checks the temperature. */
    Insulated {
      if (!(celsius > ROOM_CELSIUS)) {
        throw new IllegalArgumentException(
            Sentence.of(
                "celsius must lie above the 30 °C of the tables, got {}", Figures.three(celsius)));
      }
    }
  }

  Tables withWires(Map<Lead.Gauge, SourcedNumber> others) {
    return new Tables(others, ampacities, fuses, limits, insulations);
  }

  Tables withAmpacities(Map<Lead.Gauge, SourcedNumber> others) {
    return new Tables(wires, others, fuses, limits, insulations);
  }

  Tables withFuses(List<FuseCurve> others) {
    return new Tables(wires, ampacities, others, limits, insulations);
  }

  Tables withLimits(Map<String, SourcedNumber> others) {
    return new Tables(wires, ampacities, fuses, others, insulations);
  }

  Tables withInsulations(Map<Insulated, SourcedNumber> others) {
    return new Tables(wires, ampacities, fuses, limits, others);
  }

  /** Returns the tables that come with Loadwalk. */
  public static Tables stock() {
    return Stock.TABLES;
  }

  /**
   * Returns these tables with rows replaced by those of one of the operator's files: a gauge, a
   * kind of fuse with all its points, or a key at a time.
   *
   * @param fileName one of {@link #FILE_NAMES}
   * @param text the text of the file
   * @throws IllegalArgumentException with one sentence that names file, line and column
   */
  public Tables with(String fileName, String text) {
    return TableReader.with(this, fileName, text);
  }

  /** Returns a single value by its key; throws where the tables lack the key. */
  public double limit(String key) {
    SourcedNumber value = limits.get(key);
    if (value == null) {
      throw new IllegalStateException("limits.csv has no " + key);
    }
    return value.value();
  }

  /** Returns the values whose keys are a prefix and a number, by that number. */
  SortedMap<Double, Double> byNumber(String prefix) {
    SortedMap<Double, Double> found = new TreeMap<>();
    limits.forEach(
        (key, value) -> {
          if (key.startsWith(prefix)) {
            found.put(Double.valueOf(key.substring(prefix.length())), value.value());
          }
        });
    return found;
  }

  /**
   * Returns the smallest kind of fuse made in a rating, amperes; for a rating above them all, the
   * largest kind.
   */
  public FuseCurve fuseFor(double ratingAmps) {
    Checks.positive(ratingAmps, "fuse.amps");
    return fuses.stream()
        .filter(fuse -> ratingAmps <= fuse.upToAmps())
        .findFirst()
        .orElse(fuses.get(fuses.size() - 1));
  }

  /** Holds the stock tables once they have been read. */
  private static final class Stock {
    private static final Tables TABLES = TableReader.stock();

    private Stock() {}
  }
}
