package loadwalk.report.page;

import java.util.regex.Pattern;
import loadwalk.quantity.Unit;
import loadwalk.text.Visible;

/**
 * Writes CSV by RFC 4180: CRLF ends a line, a cell with a comma, quote or line break stands in
 * quotes, a quote is doubled.
 *
 * <p>A text that a spreadsheet could take for a formula is preceded by an apostrophe; numbers are
 * written as numbers. What would steer a terminal is written as its code.
 */
public final class CsvText {
  private static final Pattern FORMULA =
      Pattern.compile("^\\s*[=+\\-@|%\uff1d\uff0b\uff0d\uff20].*");
  private static final int LONGEST = 32_000;

  private final StringBuilder out = new StringBuilder();

  /** Writes a line of texts. */
  public void row(String... texts) {
    Cells cells = cells();
    for (String text : texts) {
      cells.text(text);
    }
    cells.end();
  }

  /** Begins a line. */
  public Cells cells() {
    return new Cells();
  }

  /** Returns all lines. */
  public String text() {
    return out.toString();
  }

  /** One line in the making. */
  public final class Cells {
    private boolean first = true;

    private Cells() {}

    /** Writes a text that no spreadsheet takes for a formula. */
    public Cells text(String text) {
      String line = Visible.line(text, LONGEST);
      String safe = FORMULA.matcher(line).matches() ? "'" + line : line;
      boolean quoted = safe.indexOf(',') >= 0 || safe.indexOf('"') >= 0;
      return raw(quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe);
    }

    /** Writes a unit, which is ours and no formula: a percent sign stays one. */
    public Cells unit(Unit unit) {
      return raw(unit.symbol());
    }

    /** Writes a number the shortest way that reads back the same; one that is not finite empty. */
    public Cells number(double value) {
      boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
      String text = whole ? String.valueOf((long) value) : String.valueOf(value);
      return raw(Double.isFinite(value) ? text : "");
    }

    private Cells raw(String cell) {
      out.append(first ? "" : ",").append(cell);
      first = false;
      return this;
    }

    /** Ends the line. */
    public void end() {
      out.append("\r\n");
    }
  }
}
