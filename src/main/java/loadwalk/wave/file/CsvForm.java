package loadwalk.wave.file;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import loadwalk.wave.CaptureException;

/**
 * How the rows of a table of numbers are written.
 *
 * @param delimiter between the columns; a space stands for any run of blanks
 * @param decimalComma whether numbers have a decimal comma
 * @param columns how many, 2 or more
 */
record CsvForm(char delimiter, boolean decimalComma, int columns) {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

  /**
   * Finds the form in which a line and the next one are numbers.
   *
   * @param next the line after it, null at the end
   * @param given the delimiter the operator named
   * @throws CaptureException if two forms fit equally well
   */
  static Optional<CsvForm> of(String line, String next, Optional<Character> given)
      throws CaptureException {
    for (char delimiter : new char[] {';', '\t', ',', ' '}) {
      if (given.isPresent() && given.get() != delimiter) {
        continue;
      }
      for (boolean comma : new boolean[] {false, true}) {
        if (comma && delimiter == ',') {
          continue;
        }
        CsvForm form = new CsvForm(delimiter, comma, cells(line, delimiter).length);
        boolean second = next == null || next.isBlank() || form.numbers(next) != null;
        if (form.columns >= 2 && form.numbers(line) != null && second) {
          requireClear(line, form);
          return Optional.of(form);
        }
      }
    }
    return Optional.empty();
  }

  private static void requireClear(String line, CsvForm form) throws CaptureException {
    boolean commas = form.delimiter == ',' && form.columns >= 4 && form.columns % 2 == 0;
    if (commas && !line.contains(".") && !line.toLowerCase(Locale.ROOT).contains("e")) {
      throw new CaptureException(
          "The commas may be delimiters or decimal signs. Export with semicolons or tabs between"
              + " columns.");
    }
  }

  String[] cells(String line) {
    return cells(line, delimiter);
  }

  /** Returns the numbers of a line, or null if it does not hold exactly one for each column. */
  double[] numbers(String line) {
    String[] cells = cells(line);
    if (cells.length != columns) {
      return null;
    }
    double[] numbers = new double[columns];
    for (int i = 0; i < columns; i++) {
      String cell = cells[i].replace("\"", "").strip();
      cell = decimalComma ? cell.replace(',', '.') : cell;
      if (!NUMBER.matcher(cell).matches()) {
        return null;
      }
      numbers[i] = Double.parseDouble(cell);
      if (!Double.isFinite(numbers[i])) {
        return null;
      }
    }
    return numbers;
  }

  private static String[] cells(String line, char delimiter) {
    String text = line.strip();
    if (!text.isEmpty() && text.charAt(0) == '\ufeff') {
      text = text.substring(1);
    }
    if (delimiter == ' ') {
      return text.split("\\s+");
    }
    // A delimiter at the end of a line does not start a column.
    String trimmed =
        text.endsWith(String.valueOf(delimiter)) ? text.substring(0, text.length() - 1) : text;
    return trimmed.split(Pattern.quote(String.valueOf(delimiter)), -1);
  }
}
