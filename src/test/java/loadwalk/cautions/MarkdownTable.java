package loadwalk.cautions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads the tables of a Markdown text strictly; what stands between them is prose. */
final class MarkdownTable {
  /** What stands in a cell of which nothing is to be said. */
  static final String NONE = "–";

  private MarkdownTable() {}

  /**
   * One row.
   *
   * @param file the name of the file
   * @param line its line in it, from 1
   * @param text the line as it stands
   * @param cells what stands in it by column, never blank
   */
  record Row(String file, int line, String text, Map<String, String> cells) {
    /** Returns a cell; {@link #NONE} where nothing is said. */
    String cell(String column) {
      return Objects.requireNonNull(cells.get(column), column);
    }

    /** Returns the fault of this row as an exception. */
    IllegalArgumentException fault(String what) {
      return new IllegalArgumentException(file + ":" + line + ": " + what);
    }

    /** Returns the row with other cells, as a line to copy. */
    String with(Map<String, String> others) {
      List<String> all = new ArrayList<>();
      cells.forEach((column, cell) -> all.add(others.getOrDefault(column, cell)));
      return "| " + String.join(" | ", all) + " |";
    }
  }

  /**
   * Returns the rows of all tables of a text.
   *
   * @param columns the columns that every table must have, in this order
   */
  static List<Row> read(String file, String text, List<String> columns) {
    List<Row> rows = new ArrayList<>();
    int inTable = 0;
    int line = 0;
    for (String each : text.split("\n", -1)) {
      line++;
      if (!each.startsWith("|")) {
        inTable = 0;
        continue;
      }
      inTable++;
      Row row = new Row(file, line, each, cells(file, line, each, columns));
      if (inTable == 1 && !List.copyOf(row.cells.values()).equals(columns)) {
        throw row.fault("the columns must be " + columns + ", found " + row.cells.values());
      }
      if (inTable == 2 && !row.cells.values().stream().allMatch(c -> c.matches("-{3,}"))) {
        throw row.fault("a line of hyphens must follow the columns");
      }
      if (inTable > 2) {
        rows.add(row);
      }
    }
    return rows;
  }

  private static Map<String, String> cells(
      String file, int line, String text, List<String> columns) {
    String where = file + ":" + line + ": ";
    String row = text.strip();
    if (row.length() < 2 || !row.endsWith("|")) {
      throw new IllegalArgumentException(where + "a row must end with |");
    }
    String[] found = row.substring(1, row.length() - 1).split("\\|", -1);
    if (found.length != columns.size()) {
      throw new IllegalArgumentException(
          where + "a row has " + columns.size() + " cells, found " + found.length);
    }
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < found.length; i++) {
      if (found[i].isBlank()) {
        throw new IllegalArgumentException(
            where + "the cell of \"" + columns.get(i) + "\" is blank; write " + NONE);
      }
      cells.put(columns.get(i), found[i].strip());
    }
    return cells;
  }
}
