package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Style;
import loadwalk.view.canvas.TextField;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Every reading of the walk: amend any of them, stand by a doubted one.
 *
 * @param focus the reading in focus
 * @param prompt the question that is open, with what is typed
 */
record ReadingsScreen(int focus, Optional<Open> prompt) implements Screen {

  /** A question that is open. */
  record Open(Prompt prompt, TextField field) {}

  /** One reading as the list shows it. */
  private record Row(String step, ReadingId id, List<Entry> entries, boolean counts) {
    Entry latest() {
      return entries.get(entries.size() - 1);
    }

    /** A doubt on volts that were replaced by watts, or the reverse, has had its answer. */
    boolean isOpen() {
      return counts && latest().isOpen();
    }
  }

  /** Opens the list at the first doubt that waits for its answer. */
  static ReadingsScreen of(WalkState state) {
    List<Row> rows = rows(state);
    int open = 0;
    while (open < rows.size() && !rows.get(open).isOpen()) {
      open++;
    }
    return new ReadingsScreen(open < rows.size() ? open : 0, Optional.empty());
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, "Readings", Style.HEADING);
    List<Row> rows = rows(program.walk().orElseThrow().state());
    int room = canvas.rows() - 6;
    int top = Math.max(0, focus - room + 1);
    for (int i = 0; i < room && top + i < rows.size(); i++) {
      paintRow(canvas, rows.get(top + i), 1 + i, top + i == focus);
    }
    if (rows.isEmpty()) {
      canvas.text(1, 2, "No readings yet.", Style.TEXT);
    }
    if (prompt.isPresent()) {
      canvas.rule(canvas.rows() - 4);
      prompt.get().prompt().paint(canvas, program.walk().flatMap(Model::message));
      prompt.get().field().paint(canvas, 1, canvas.rows() - 2, canvas.columns() - 2, true);
      Keys.paint(canvas, "Enter", "keep", "F10", "back", "Esc", "STOP");
      return;
    }
    String message =
        program.walk().flatMap(w -> w.message()).or(program::notice).orElse(doubtText(rows));
    Keys.paintMessage(canvas, message, Style.HEED);
    Keys.paint(
        canvas,
        "Up Down",
        "move",
        "Enter",
        "amend",
        "F7",
        "stand by",
        "F10",
        "back",
        "Esc",
        "STOP");
  }

  private String doubtText(List<Row> rows) {
    boolean doubted = focus < rows.size() && rows.get(focus).isOpen();
    return doubted
        ? rows.get(focus).latest().doubts().get(0).text()
            + " "
            + rows.get(focus).latest().doubts().get(0).lookAt()
        : "";
  }

  private static void paintRow(Canvas canvas, Row row, int at, boolean focus) {
    Style style = focus ? Style.FOCUS : Style.TEXT;
    canvas.text(1, at, row.step(), style);
    canvas.text(16, at, row.id().label(), style);
    String values =
        row.entries().stream()
            .map(e -> Printer.UTF8.reading(e.value(), row.id().unit(), e.resolution()))
            .collect(Collectors.joining(", then "));
    Entry latest = row.latest();
    String mark =
        row.isOpen()
            ? Sentence.of("  DOUBT: {}", latest.doubts().get(0).slip().words())
            : latest.stoodBy().map(why -> Sentence.of("  stood by: {}", why)).orElse("");
    canvas.text(
        37,
        at,
        canvas.shortened(values + mark, canvas.columns() - 38),
        row.isOpen() ? Style.HEED : style);
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    List<Row> rows = rows(program.walk().orElseThrow().state());
    if (prompt.isPresent()) {
      return prompted(key, prompt.get());
    }
    switch (key.kind()) {
      case UP:
        return Answer.stay(new ReadingsScreen(Math.max(0, focus - 1), prompt));
      case DOWN:
        return Answer.stay(
            new ReadingsScreen(Math.max(0, Math.min(rows.size() - 1, focus + 1)), prompt));
      case ENTER:
        return rows.isEmpty()
            ? Answer.say(this, "No readings yet.")
            : asking(Prompt.Kind.AMEND, rows.get(focus));
      case F7:
        boolean open = focus < rows.size() && rows.get(focus).isOpen();
        return open
            ? asking(Prompt.Kind.STAND_BY, rows.get(focus))
            : Answer.say(this, "This reading is not in doubt.");
      case F10:
        return Answer.stay(WalkScreen.fresh());
      default:
        return Answer.stay(this);
    }
  }

  private Answer asking(Prompt.Kind kind, Row row) {
    Prompt question = Prompt.of(kind, row.step(), row.id());
    return Answer.stay(new ReadingsScreen(focus, Optional.of(new Open(question, TextField.EMPTY))));
  }

  private Answer prompted(Key key, Open open) {
    if (key.is(Key.Kind.F10)) {
      return Answer.stay(new ReadingsScreen(focus, Optional.empty()));
    }
    if (key.is(Key.Kind.ENTER)) {
      return Answer.want(
          new ReadingsScreen(focus, Optional.empty()), open.prompt().answered(open.field().text()));
    }
    return Answer.stay(
        new ReadingsScreen(focus, Optional.of(new Open(open.prompt(), open.field().after(key)))));
  }

  private static List<Row> rows(WalkState state) {
    List<Row> rows = new ArrayList<>();
    for (PlannedStep planned : state.plan()) {
      StepState step = state.step(planned.id());
      for (Map.Entry<ReadingId, List<Entry>> e : step.entries().entrySet()) {
        boolean counts = step.latest(e.getKey()).isPresent();
        rows.add(new Row(planned.id(), e.getKey(), e.getValue(), counts));
      }
    }
    return rows;
  }
}
