package loadwalk.view.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Menu;
import loadwalk.view.canvas.Style;
import loadwalk.view.canvas.TextField;
import loadwalk.view.form.AmplifierForm;
import loadwalk.view.form.BenchForm;
import loadwalk.view.form.FormRead;
import loadwalk.view.form.UnseenParts;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.ProgramState;

/**
 * A form of one line a field.
 *
 * @param kind what it describes
 * @param fields the lines as typed
 * @param focus the line in focus
 * @param draft the walk it belongs to
 * @param problem what is wrong, where something is
 */
record FormScreen(
    Kind kind, List<TextField> fields, int focus, NewWalk draft, Optional<String> problem)
    implements Screen {
  private static final int LABEL = 22;

  enum Kind {
    AMPLIFIER("Amplifier", AmplifierForm.LABELS, AmplifierForm.HINTS),
    BENCH("Bench", BenchForm.LABELS, BenchForm.HINTS);

    private final String title;
    private final List<String> labels;
    private final List<String> hints;

    Kind(String title, List<String> labels, List<String> hints) {
      this.title = title;
      this.labels = labels;
      this.hints = hints;
    }
  }

  FormScreen {
    fields = List.copyOf(fields);
  }

  static FormScreen of(Kind kind, List<String> texts, NewWalk draft) {
    return new FormScreen(
        kind, texts.stream().map(TextField::holding).toList(), 0, draft, Optional.empty());
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, kind.title, Style.HEADING);
    canvas.text(16, 0, "Leave empty what you do not know; the sheet will say so.", Style.FAINT);
    for (int i = 0; i < fields.size(); i++) {
      boolean focused = i == focus;
      canvas.label(1, 2 + i, kind.labels.get(i), focused);
      fields.get(i).paint(canvas, 1 + LABEL, 2 + i, canvas.columns() - LABEL - 3, focused);
    }
    String hint = kind.hints.get(focus);
    Keys.paintMessage(
        canvas,
        problem
            .or(program::notice)
            .orElse(hint.isEmpty() ? "" : kind.labels.get(focus) + ": " + hint),
        problem.isPresent() ? Style.HEED : Style.FAINT);
    Keys.paint(canvas, "Up Down", "move", "Enter", "next", "F9", "done", "F10", "back");
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    if (Menu.isBack(key)) {
      NewWalkScreen.Stage stage =
          kind == Kind.AMPLIFIER ? NewWalkScreen.Stage.AMPLIFIER : NewWalkScreen.Stage.BENCH;
      return Answer.stay(new NewWalkScreen(stage, 0, left()));
    }
    boolean last = focus == fields.size() - 1;
    if (key.is(Key.Kind.F9) || (key.is(Key.Kind.ENTER) && last)) {
      return done();
    }
    if (key.is(Key.Kind.ENTER)) {
      return Answer.stay(at(focus + 1));
    }
    int moved =
        key.is(Key.Kind.HOME) || key.is(Key.Kind.END)
            ? focus
            : Menu.moved(key, focus, fields.size());
    return moved != focus ? Answer.stay(at(moved)) : Answer.stay(typed(key));
  }

  /** Returns the draft with the form as typed so far, so that going back loses nothing. */
  private NewWalk left() {
    return kind == Kind.AMPLIFIER
        ? draft.withAmplifierLines(texts())
        : draft.withBenchLines(texts());
  }

  private List<String> texts() {
    return fields.stream().map(TextField::text).toList();
  }

  private FormScreen at(int line) {
    return new FormScreen(kind, fields, line, draft, Optional.empty());
  }

  private FormScreen typed(Key key) {
    List<TextField> next = new ArrayList<>(fields);
    next.set(focus, fields.get(focus).after(key));
    return new FormScreen(kind, next, focus, draft, Optional.empty());
  }

  private Answer done() {
    return kind == Kind.AMPLIFIER
        ? after(AmplifierForm.read(texts()), this::amplifierDone)
        : after(BenchForm.read(texts()), this::benchDone);
  }

  private <T> Answer after(FormRead<T> read, Function<T, Answer> next) {
    return read.either(next, this::corrected);
  }

  private Answer corrected(FormRead.Bad<?> bad) {
    int line = bad.line() == FormRead.NO_LINE ? focus : bad.line();
    return Answer.stay(new FormScreen(kind, fields, line, draft, Optional.of(bad.sentence())));
  }

  private Answer amplifierDone(Amplifier amplifier) {
    return Answer.stay(new NewWalkScreen(NewWalkScreen.Stage.BENCH, 0, left().with(amplifier)));
  }

  private Answer benchDone(Bench bench) {
    NewWalk ready = left().with(UnseenParts.kept(draft.bench(), bench));
    return Answer.stay(new NewWalkScreen(NewWalkScreen.Stage.READY, 0, ready));
  }
}
