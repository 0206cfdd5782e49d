package loadwalk.cautions;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Named things of a table, each of which a situation may vary: {@code Sound; bench fuse: 40 A}.
 *
 * @param <T> what a row of the table becomes
 */
final class Catalogue<T> {
  private final String kind;
  private final List<String> columns;
  private final Function<Map<String, String>, T> maker;
  private final Map<String, Map<String, String>> rows = new LinkedHashMap<>();

  /**
   * Reads the table.
   *
   * @param columns its columns; the first one names the row
   * @param maker makes the thing of its cells
   */
  Catalogue(
      String file, String text, List<String> columns, Function<Map<String, String>, T> maker) {
    this.kind = columns.get(0);
    this.columns = columns;
    this.maker = maker;
    for (MarkdownTable.Row row : MarkdownTable.read(file, text, columns)) {
      if (rows.put(row.cell(kind), row.cells()) != null) {
        throw row.fault("there are two of «" + row.cell(kind) + "»");
      }
      try {
        maker.apply(row.cells());
      } catch (IllegalArgumentException fault) {
        throw row.fault(fault.getMessage());
      }
    }
  }

  /** Returns the thing that a cell names, varied as the cell says. */
  T of(String cell) {
    String[] parts = cell.split(";", -1);
    String name = parts[0].strip();
    if (!rows.containsKey(name)) {
      throw new IllegalArgumentException(
          "there is no " + kind + " «" + name + "»; known are " + rows.keySet());
    }
    Map<String, String> cells = new LinkedHashMap<>(rows.get(name));
    for (int i = 1; i < parts.length; i++) {
      String[] change = parts[i].split(":", 2);
      String column = change[0].strip();
      if (change.length < 2 || !columns.contains(column)) {
        throw new IllegalArgumentException(
            "«" + parts[i].strip() + "» must name one of " + columns + " and what it is");
      }
      cells.put(column, change[1].strip());
    }
    return maker.apply(cells);
  }
}
