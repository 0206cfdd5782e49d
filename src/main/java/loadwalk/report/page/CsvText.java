package loadwalk.report.page;

import java.util.regex.Pattern;
import loadwalk.quantity.Unit;
import loadwalk.text.Visible;

/**
 * Writes CSV by RFC 4180: CRLF ends a line, a cell with a comma, quote or line break is quoted, a
 * quote is doubled.
 *
 * <p>A text that a spreadsheet could take for a formula gets an apostrophe in front; numbers are
 * written as numbers. A character that would steer a terminal is written as its code.
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

  /** Starts a line. */
  public Cells cells() {
    return new Cells();
  }

  /** Returns all lines. */
  public String text() {
    return out.toString();
  }

  /** A line being written, cell by cell. */
  public final class Cells {
    private boolean first = true;

    private Cells() {}

    /** Writes a text so that no spreadsheet takes it for a formula. */
    public Cells text(String text) {
      String line = Visible.line(text, LONGEST);
      String safe = FORMULA.matcher(line).matches() ? "'" + line : line;
      boolean quoted = safe.indexOf(',') >= 0 || safe.indexOf('"') >= 0;
      return raw(quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe);
    }

    /** Writes a unit as it is: it is never a formula, so a percent sign stays. */
    public Cells unit(Unit unit) {
      return raw(unit.symbol());
    }

    /**
     * Writes a number in the shortest form that reads back the same; a number that is not finite
     * gives an empty cell.
     */
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
