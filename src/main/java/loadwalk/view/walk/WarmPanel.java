package loadwalk.view.walk;

import java.util.List;
import java.util.Locale;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.WarmUp;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.BigDigits;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;
import loadwalk.walk.WarmClock;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;

/** A running warm-up: the time left in big digits, the temperatures, whether it is steady. */
final class WarmPanel {
  private static final int FIELD_AT = 17;
  private static final int FIELD = 14;

  private WarmPanel() {}

  static void paint(
      Canvas canvas, ProgramState program, PlannedStep planned, WalkScreen screen, Area area) {
    Model model = program.walk().orElseThrow();
    WarmUp warm = planned.step().warmUp().orElseThrow();
    StepState step = model.state().step(planned.id());
    double left = warm.minutes() * 60 - model.clock().warmSeconds();
    int column = area.column();
    String title = planned.id() + "  " + (left > 0 ? "time left" : "time is up, over by");
    canvas.text(column, area.row(), title, Style.HEADING);
    BigDigits.paint(
        canvas,
        column + 4,
        area.row() + 2,
        (left > 0 ? "" : "+") + clock(Math.abs(left)),
        left > 0 ? Style.STRONG : Style.GOOD);
    int row = area.row() + 3 + BigDigits.ROWS;
    row =
        canvas.paragraph(
            column,
            row,
            area.columns(),
            2,
            planned.instruction(model.state().context(planned)),
            Style.TEXT);
    row = canvas.paragraph(column, row, area.columns(), 2, standing(model, planned), Style.STRONG);
    canvas.text(column, row, temperatures(step), Style.FAINT);
    boolean focus = screen.prompt().isEmpty();
    canvas.text(column, area.bottom() - 2, "> heatsink now", focus ? Style.STRONG : Style.TEXT);
    screen.field().paint(canvas, column + FIELD_AT, area.bottom() - 2, FIELD, focus);
    program
        .meterWords(ReadingId.SINK_CELSIUS)
        .map(meter -> canvas.shortened("meter " + meter, area.columns() - FIELD_AT - FIELD - 2))
        .ifPresent(
            meter ->
                canvas.text(column + FIELD_AT + FIELD + 2, area.bottom() - 2, meter, Style.FAINT));
    canvas.text(
        column,
        area.bottom() - 1,
        "Enter keeps a temperature, or ends a warm-up that is due. F7 ends it early.",
        Style.KEY);
  }

  /** Returns minutes and seconds, rounded up so that zero means over. */
  static String clock(double seconds) {
    long whole = (long) Math.ceil(seconds - 1e-9);
    return String.format(Locale.ROOT, "%02d:%02d", Math.min(whole / 60, 999), whole % 60);
  }

  private static String standing(Model model, PlannedStep planned) {
    WarmClock.Steadiness now =
        WarmClock.steadiness(model.state(), planned, model.clock().warmSeconds());
    String slope =
        now.celsiusPerMinute()
            .map(
                s ->
                    "The heatsink moves "
                        + String.format(Locale.ROOT, "%+.2f", s)
                        + " °C a minute. ")
            .orElse("Without three temperatures in five minutes the clock alone decides. ");
    if (now.isSteady()) {
      return slope + "Warm: Enter goes on.";
    }
    return now.clockDone() ? slope + "Not steady yet." : slope;
  }

  private static String temperatures(StepState step) {
    List<Entry> all = step.entries().getOrDefault(ReadingId.SINK_CELSIUS, List.of());
    StringBuilder line = new StringBuilder(all.isEmpty() ? "No temperature entered yet." : "");
    for (Entry e : all.subList(Math.max(0, all.size() - 5), all.size())) {
      line.append(clock(e.warmSeconds()))
          .append(' ')
          .append(Printer.UTF8.reading(e.value(), ReadingId.SINK_CELSIUS.unit(), e.resolution()))
          .append("   ");
    }
    return line.toString();
  }
}
