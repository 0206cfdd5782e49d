package loadwalk.view.walk;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.quantity.Printer;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Bar;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.view.canvas.TextField;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;

/**
 * A row of a running step: a reading with its forecast, its bar and where it landed.
 *
 * @param asked the reading that the step asks for
 * @param shown the reading that is shown: the watts where they were typed in place of volts
 * @param entry what was entered
 * @param band what was forecast
 */
record ReadingRow(ReadingId asked, ReadingId shown, Optional<Entry> entry, Optional<Band> band) {
  /** How many columns the name takes, and how many the value behind it. */
  static final int LABEL = 22;

  static final int VALUE = 15;
  private static final int RANGE = 20;

  static ReadingRow of(StepState step, ReadingId asked) {
    boolean watts =
        asked == ReadingId.OUTPUT_VOLTS
            && step.latest(asked).isEmpty()
            && step.latest(ReadingId.OUTPUT_WATTS).isPresent();
    ReadingId shown = watts ? ReadingId.OUTPUT_WATTS : asked;
    Optional<Band> band = step.brief().flatMap(brief -> brief.band(shown));
    return new ReadingRow(asked, shown, step.latest(shown), band);
  }

  /**
   * Paints the row at the top of an area.
   *
   * @param field what is being typed, where the reading is in focus
   */
  void paint(Canvas canvas, ProgramState program, Area area, Optional<TextField> field) {
    int row = area.row();
    int at = area.column() + LABEL;
    boolean focus = field.isPresent();
    canvas.label(area.column(), row, shown.label(), focus);
    boolean empty = field.filter(f -> !f.text().isEmpty()).isEmpty();
    if (focus && (entry.isEmpty() || !empty)) {
      field.get().paint(canvas, at, row, VALUE - 1, true);
    }
    if (empty) {
      paintValue(canvas, program, at, row, focus);
    }
    if (focus && empty) {
      canvas.cursor(at, row);
    }
    band.ifPresent(forecast -> paintForecast(canvas, forecast, area));
  }

  private void paintForecast(Canvas canvas, Band forecast, Area area) {
    int at = area.column() + LABEL + VALUE;
    String range = canvas.shortened(BriefPanel.range(shown, forecast), RANGE);
    canvas.text(at, area.row(), range, Style.FAINT);
    int barAt = at + RANGE + 1;
    OptionalDouble value =
        entry.map(e -> OptionalDouble.of(e.value())).orElse(OptionalDouble.empty());
    Bar.paint(canvas, barAt, area.row(), area.column() + area.columns() - barAt, forecast, value);
  }

  /** Paints what was entered, or else what the meter shows. */
  private void paintValue(Canvas canvas, ProgramState program, int column, int row, boolean focus) {
    if (entry.isPresent()) {
      Entry e = entry.get();
      String text = Printer.UTF8.reading(e.value(), shown.unit(), e.resolution());
      String mark = e.isOpen() ? "? " : e.doubts().isEmpty() ? "" : "! ";
      Style style = focus ? Style.FOCUS : e.isOpen() ? Style.HEED : Style.STRONG;
      canvas.text(column, row, canvas.shortened(mark + text, VALUE - 1), style);
      return;
    }
    Optional<String> meter = program.meterWords(asked);
    if (meter.isPresent()) {
      String named = Sentence.of("meter {}", meter.get());
      String text = named.length() < VALUE ? named : meter.get();
      canvas.text(column, row, canvas.shortened(text, VALUE - 1), Style.FAINT);
    }
  }
}
