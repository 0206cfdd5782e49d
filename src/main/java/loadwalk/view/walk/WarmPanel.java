package loadwalk.view.walk;

import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.WarmUp;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.BigDigits;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;
import loadwalk.walk.Steadiness;
import loadwalk.walk.SteadinessWords;
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
    String title =
        Sentence.of(left > 0 ? "{}  time left" : "{}  time is up, over by", planned.id());
    canvas.text(column, area.row(), title, Style.HEADING);
    OpeningLine.paint(canvas, program, step, area, area.row() + 1);
    BigDigits.paint(
        canvas,
        column + 4,
        area.row() + 2,
        (left > 0 ? "" : "+") + SteadinessWords.clock(Math.abs(left)),
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
    row = canvas.paragraph(column, row, area.columns(), 3, standing(model, planned), Style.STRONG);
    canvas.text(column, row, temperatures(step), Style.FAINT);
    boolean focus = screen.prompt().isEmpty();
    canvas.text(column, area.bottom() - 2, "> heatsink now", focus ? Style.STRONG : Style.TEXT);
    screen.field().paint(canvas, column + FIELD_AT, area.bottom() - 2, FIELD, focus);
    program
        .meterWords(ReadingId.SINK_CELSIUS)
        .map(
            meter ->
                canvas.shortened(
                    Sentence.of("meter {}", meter), area.columns() - FIELD_AT - FIELD - 2))
        .ifPresent(
            meter ->
                canvas.text(column + FIELD_AT + FIELD + 2, area.bottom() - 2, meter, Style.FAINT));
    canvas.text(
        column,
        area.bottom() - 1,
        "Enter keeps a temperature, or ends the warm-up when due. F7 ends it early.",
        Style.KEY);
  }

  private static String standing(Model model, PlannedStep planned) {
    Steadiness now = Steadiness.of(model.state(), planned, model.clock().warmSeconds());
    String told = SteadinessWords.now(now);
    return now.isSteady() ? Sentence.of("{} Warm: Enter goes on.", told) : told;
  }

  private static String temperatures(StepState step) {
    List<Entry> all = step.entries().getOrDefault(ReadingId.SINK_CELSIUS, List.of());
    StringBuilder line = new StringBuilder(all.isEmpty() ? "No temperature yet." : "");
    for (Entry e : all.subList(Math.max(0, all.size() - 5), all.size())) {
      line.append(SteadinessWords.clock(e.warmSeconds()))
          .append(' ')
          .append(Printer.UTF8.reading(e.value(), ReadingId.SINK_CELSIUS.unit(), e.resolution()))
          .append("   ");
    }
    return line.toString();
  }
}
