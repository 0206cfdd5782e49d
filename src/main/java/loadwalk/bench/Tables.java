package loadwalk.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The wire, fuse and resistor data that the plan and the cautions rest on, each value with its
 * source.
 *
 * <p>{@link #stock()} are the tables that come with Loadwalk; the operator's own tables of the same
 * form take their place row by row through {@link #with(String, String)}.
 *
 * @param wires resistance at 20 °C by gauge, ohms per kilometre; an AWG size that is missing is
 *     computed
 * @param ampacities current a single conductor may carry for ever, amperes
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
   * Returns these tables with the rows of one file of the operator in place of the stock ones: a
   * gauge, a kind of fuse with all its points, or a key at a time.
   *
   * @param fileName one of {@link #FILE_NAMES}
   * @param text the text of the file
   * @throws IllegalArgumentException with one sentence that names file, line and column
   */
  public Tables with(String fileName, String text) {
    return TableReader.with(this, fileName, text);
  }

  /** Returns a single value by its key; a missing key is a fault of the tables. */
  public double limit(String key) {
    SourcedNumber value = limits.get(key);
    if (value == null) {
      throw new IllegalStateException("limits.csv has no " + key);
    }
    return value.value();
  }

  /**
   * Returns the smallest kind of fuse made in a rating, amperes; above all ratings, the largest
   * kind.
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
