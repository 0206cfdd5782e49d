package loadwalk.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
 */
public record Tables(
    Map<Lead.Gauge, SourcedNumber> wires,
    Map<Lead.Gauge, SourcedNumber> ampacities,
    List<FuseCurve> fuses,
    Map<String, SourcedNumber> limits) {

  /** The names of the table files, in the jar and in the data folder of the data home. */
  public static final List<String> FILE_NAMES = TableReader.FILE_NAMES;

  /** Copies the maps. */
  public Tables {
    wires = Collections.unmodifiableMap(new LinkedHashMap<>(wires));
    ampacities = Collections.unmodifiableMap(new LinkedHashMap<>(ampacities));
    fuses = List.copyOf(fuses);
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
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
