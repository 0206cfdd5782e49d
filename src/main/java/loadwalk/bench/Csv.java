package loadwalk.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import loadwalk.text.Sentence;

/** Reads the small comma-separated data tables (RFC 4180 quoting, one line a row, # comments). */
final class Csv {
  private static final int MAX_ROWS = 10_000;

  private Csv() {}

  /**
   * A row of a table.
   *
   * @param where file and line, for messages
   * @param cells the cells by column name
   */
  record Row(String where, Map<String, String> cells) {
    String text(String column) {
      String cell = cells.get(column);
      if (cell == null || cell.isBlank()) {
        throw new IllegalArgumentException(where + ": column " + column + " must not be empty");
      }
      return cell.strip();
    }

    boolean has(String column) {
      return !cells.getOrDefault(column, "").isBlank();
    }

    double number(String column) {
      String text = text(column);
      double value;
      try {
        value = Double.parseDouble(text);
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            where + ": column " + column + " must be a number, got \"" + text + "\"", e);
      }
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(
            where + ": column " + column + " must be finite, got \"" + text + "\"");
      }
      return value;
    }

    double positive(String column) {
      double value = number(column);
      if (!(value > 0)) {
        throw new IllegalArgumentException(
            where + ": column " + column + " must be above 0, got " + text(column));
      }
      return value;
    }

    /** Builds a value from the row; a refusal is reported with the row's file and line. */
    <T> T make(Supplier<T> made) {
      try {
        return made.get();
      } catch (IllegalArgumentException refused) {
        throw new IllegalArgumentException(where + ": " + refused.getMessage(), refused);
      }
    }

    SourcedNumber sourced(double value) {
      return new SourcedNumber(value, text("source"), text("how"));
    }
  }

  /**
   * Reads all rows.
   *
   * @throws IllegalArgumentException with one sentence naming file and line
   */
  static List<Row> rows(String name, String text, List<String> columns) {
    List<Row> rows = new ArrayList<>();
    List<String> header = null;
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String where = Sentence.of("{} line {}", name, number);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells =
          cells(where, number == 1 && line.startsWith("\uFEFF") ? line.substring(1) : line);
      if (header == null) {
        header = checkedHeader(where, cells, columns);
        continue;
      }
      if (cells.size() != header.size()) {
        throw new IllegalArgumentException(
            where + ": expected " + header.size() + " columns, got " + cells.size());
      }
      if (rows.size() == MAX_ROWS) {
        throw new IllegalArgumentException(
            where + ": a table may hold at most " + MAX_ROWS + " rows");
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        row.put(header.get(i), cells.get(i));
      }
      rows.add(new Row(where, row));
    }
    if (header == null) {
      throw new IllegalArgumentException(name + ": the table is empty");
    }
    return rows;
  }

  private static List<String> checkedHeader(
      String where, List<String> cells, List<String> columns) {
    List<String> header = cells.stream().map(String::strip).toList();
    if (!header.equals(columns)) {
      throw new IllegalArgumentException(
          where + ": the header must be " + String.join(",", columns));
    }
    return header;
  }

  private static List<String> cells(String where, String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      boolean doubled = quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"';
      if (doubled) {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      throw new IllegalArgumentException(where + ": a quote is not closed");
    }
    cells.add(cell.toString());
    return cells;
  }
}
