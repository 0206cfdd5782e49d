package loadwalk.wave.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.wave.CaptureException;

/**
 * Reads a scope's CSV file of time and one or more voltages: delimiter, decimal sign, header and
 * units are recognised; where they are unclear, a sentence asks for them.
 */
public final class ScopeCsv implements AudioSource {
  private static final int MOST_ROWS = 20_000_000;
  private static final int MOST_HEADER_LINES = 200;
  private static final int MOST_COLUMNS = 64;
  private static final long MOST_NUMBERS = 2L * MOST_ROWS;

  /** Time stamps may deviate from even steps by this fraction of a step. */
  private static final double UNEVEN = 0.6;

  private final double samplesPerSecond;
  private final double[][] rows;
  private final List<String> notes;
  private int at;

  private ScopeCsv(double samplesPerSecond, double[][] rows, List<String> notes) {
    this.samplesPerSecond = samplesPerSecond;
    this.rows = rows;
    this.notes = List.copyOf(notes);
  }

  /**
   * What the operator states about the file.
   *
   * @param secondsPerUnit seconds for 1 in the time column
   * @param voltsPerUnit volts for 1 in the voltage columns
   * @param delimiter between the columns
   */
  public record Given(
      Optional<Double> secondsPerUnit,
      Optional<Double> voltsPerUnit,
      Optional<Character> delimiter) {
    /** Nothing is stated. */
    public static final Given NOTHING =
        new Given(Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * Reads the whole file.
   *
   * @throws CaptureException if the file is not a table of time and volts or leaves something
   *     unclear, in a sentence
   */
  public static ScopeCsv read(InputStream in, Given given) throws IOException, CaptureException {
    TableLines lines = new TableLines(new InputStreamReader(in, StandardCharsets.UTF_8));
    List<String> header = new ArrayList<>();
    String line = lines.next();
    Optional<CsvForm> form = Optional.empty();
    String second = null;
    while (line != null && header.size() < MOST_HEADER_LINES) {
      second = lines.next();
      form = CsvForm.of(line, second, given.delimiter());
      if (form.isPresent()) {
        break;
      }
      header.add(line);
      line = second;
    }
    if (form.isEmpty()) {
      throw new CaptureException(
          header.isEmpty()
              ? "The file is empty."
              : "The file has no rows of numbers. Give a scope's CSV of time and volts.");
    }
    ColumnUnits units = ColumnUnits.of(header, form.get(), given);
    return table(lines, line, second, header.size(), form.get(), units);
  }

  private static ScopeCsv table(
      TableLines lines, String first, String second, int above, CsvForm form, ColumnUnits units)
      throws IOException, CaptureException {
    int columns = form.columns();
    if (columns > MOST_COLUMNS) {
      throw new CaptureException(
          Sentence.of("The file has {} columns. Export {} or fewer.", columns, MOST_COLUMNS));
    }
    double[][] table = new double[columns][1024];
    int count = 0;
    int number = above;
    String line = first;
    while (line != null) {
      number++;
      if (!line.isBlank()) {
        if (count == MOST_ROWS || (count + 1L) * columns > MOST_NUMBERS) {
          throw new CaptureException(
              "The file has more than 20 million rows or 40 million numbers. Export less of it.");
        }
        if (count == table[0].length) {
          for (int c = 0; c < columns; c++) {
            table[c] = Arrays.copyOf(table[c], 2 * count);
          }
        }
        double[] cells = form.numbers(line);
        if (cells == null) {
          throw new CaptureException(
              Sentence.of("Line {} must be {} numbers like the lines before it.", number, columns));
        }
        for (int c = 0; c < columns; c++) {
          table[c][count] = cells[c];
        }
        count++;
      }
      line = number == above + 1 ? second : lines.next();
    }
    return source(table, count, units);
  }

  private static ScopeCsv source(double[][] table, int count, ColumnUnits units)
      throws CaptureException {
    if (count < 2) {
      throw new CaptureException("The file has one row: too few to judge a wave.");
    }
    double[] time = table[0];
    double step = (time[count - 1] - time[0]) / (count - 1);
    if (!(step > 0)) {
      throw new CaptureException("The first column does not rise. It must be the time.");
    }
    for (int i = 0; i < count; i++) {
      if (!(Math.abs(time[i] - time[0] - i * step) <= UNEVEN * step + 1e-6 * count * step)) {
        throw new CaptureException(
            Sentence.of(
                "The time steps are uneven at row {}. Export evenly sampled points.", i + 1));
      }
    }
    double[][] rows = new double[table.length - 1][];
    for (int c = 0; c < rows.length; c++) {
      rows[c] = Arrays.copyOf(table[c + 1], count);
      for (int i = 0; i < count; i++) {
        rows[c][i] *= units.voltsPerUnit();
      }
    }
    return new ScopeCsv(1 / (step * units.secondsPerUnit()), rows, units.notes());
  }

  @Override
  public double samplesPerSecond() {
    return samplesPerSecond;
  }

  @Override
  public boolean isInVolts() {
    return true;
  }

  @Override
  public int channels() {
    return rows.length;
  }

  /** Returns what was assumed about the file, one sentence each. */
  public List<String> notes() {
    return notes;
  }

  @Override
  public int read(double[][] block) {
    if (at >= rows[0].length) {
      return -1;
    }
    int count = Math.min(block[0].length, rows[0].length - at);
    for (int c = 0; c < rows.length; c++) {
      System.arraycopy(rows[c], at, block[c], 0, count);
    }
    at += count;
    return count;
  }

  /** The units of the columns, from the header or as given. */
  private record ColumnUnits(double secondsPerUnit, double voltsPerUnit, List<String> notes) {
    static ColumnUnits of(List<String> header, CsvForm form, Given given) throws CaptureException {
      Optional<Double> seconds = given.secondsPerUnit();
      Optional<Double> volts = given.voltsPerUnit();
      List<String> notes = new ArrayList<>();
      int last = header.size() - 1;
      for (int i = last; i >= Math.max(0, last - 2); i--) {
        String[] cells = form.cells(header.get(i));
        if (cells.length >= 2) {
          seconds = seconds.or(() -> unit(cells[0], 's', "second"));
          volts = volts.or(() -> unit(cells[1], 'v', "volt"));
        }
      }
      if (seconds.isEmpty() && volts.isPresent() && last >= 0) {
        notes.add("The time column names no unit: taken as seconds (time-unit).");
        seconds = Optional.of(1.0);
      }
      if (seconds.isEmpty() || volts.isEmpty()) {
        throw new CaptureException(
            seconds.isEmpty()
                ? "The file names no unit for its time column: give time-unit (s, ms, us or ns)."
                : "The file names no unit for its voltage column: give volt-unit (V or mV).");
      }
      return new ColumnUnits(seconds.get(), volts.get(), notes);
    }

    /** Finds a unit in a heading such as "Time (ms)", "CH1[V]", "mV", "Volts". */
    private static Optional<Double> unit(String cell, char letter, String word) {
      String text =
          cell.toLowerCase(Locale.ROOT)
              .replace("\"", "")
              .replace('\u00b5', 'u')
              .replace('\u03bc', 'u');
      for (String part : text.split("[^a-z]+")) {
        if (part.startsWith(word)) {
          return Optional.of(1.0);
        }
        if (part.length() <= 2 && part.endsWith(String.valueOf(letter))) {
          int prefix = part.length() == 1 ? 3 : "num".indexOf(part.charAt(0));
          if (prefix >= 0) {
            return Optional.of(new double[] {1e-9, 1e-6, 1e-3, 1}[prefix]);
          }
          if (part.equals("kv")) {
            return Optional.of(1e3);
          }
        }
      }
      return Optional.empty();
    }
  }
}
