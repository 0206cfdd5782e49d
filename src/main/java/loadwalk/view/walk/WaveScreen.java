package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Menu;
import loadwalk.view.canvas.Scope;
import loadwalk.view.canvas.Style;
import loadwalk.view.canvas.TextField;
import loadwalk.view.form.FormLines;
import loadwalk.view.form.FormProblem;
import loadwalk.view.form.FormRead;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.ProgramState;
import loadwalk.view.state.WaveFound;
import loadwalk.view.state.Waves;
import loadwalk.walk.Effect;
import loadwalk.wave.file.CaptureCaution;
import loadwalk.wave.file.CaptureSetup;
import loadwalk.wave.file.CsvUnits;

/**
 * A captured wave on its way into a step: the cautions once, where it lies and what its samples
 * stand for, what it shows, and only then the step.
 *
 * @param step the step's id
 * @param stage what the operator is doing now
 * @param fields the lines of the form as typed
 * @param focus the line in focus
 * @param asked what is being read, or was
 * @param problem what is wrong, where something is
 * @param back where to return to
 */
record WaveScreen(
    String step,
    Stage stage,
    List<TextField> fields,
    int focus,
    Optional<Effect.ReadCapture> asked,
    Optional<String> problem,
    Screen back)
    implements Screen {
  private static final int LABEL = 21;
  private static final int CHANNEL = 5;
  private static final List<String> LABELS =
      List.of(
          "File",
          "Full scale, volts",
          "Divider",
          "Known volts",
          "Uncertainty",
          "Channel",
          "Time unit",
          "Volt unit");
  private static final List<String> HINTS =
      List.of(
          "a WAV file, or a scope's CSV file. Its name and hash are kept with the reading.",
          "peak volts at the input for full scale of a sound file. A scope's file needs none.",
          "volts at the amplifier for each volt at the input, for example 21 for 20 kΩ over 1 kΩ.",
          "in place of these two: the rms volts a meter showed during the capture.",
          "standard uncertainty of the volts, in percent. Leave empty if unknown.",
          "which channel, counted from 1.",
          "s, ms, us or ns, if the scope's file does not say.",
          "V, mV or kV, if the scope's file does not say.");

  enum Stage {
    CAUTIONS,
    CAUTIONS_OF_LIVE,
    FORM,
    READING,
    FOUND
  }

  WaveScreen {
    fields = List.copyOf(fields);
  }

  /** Returns the screen for a step; the cautions come first until they are confirmed. */
  static WaveScreen of(String step, Waves waves, Screen back) {
    CaptureSetup kept = waves.setup();
    List<TextField> fields =
        List.of(
            TextField.EMPTY,
            holding(kept.fullScaleVolts()),
            holding(kept.divider()),
            TextField.EMPTY,
            holding(kept.calibrationPercent()),
            TextField.holding(Integer.toString(kept.channel())),
            TextField.holding(CsvUnits.text(kept.given().secondsPerUnit(), true)),
            TextField.holding(CsvUnits.text(kept.given().voltsPerUnit(), false)));
    Stage first = waves.cautioned() ? Stage.FORM : Stage.CAUTIONS;
    return new WaveScreen(step, first, fields, 0, Optional.empty(), Optional.empty(), back);
  }

  /** Returns the cautions, behind which the sound input is listened to. */
  static WaveScreen beforeListening(String step, Waves waves, Screen back) {
    return of(step, waves, back).at(Stage.CAUTIONS_OF_LIVE);
  }

  /** Returns the screen with its file named, a file of one channel. */
  WaveScreen holding(String file) {
    List<TextField> next = new ArrayList<>(fields);
    next.set(0, TextField.holding(file));
    next.set(CHANNEL, TextField.holding("1"));
    return new WaveScreen(step, stage, next, Math.max(1, focus), asked, problem, back);
  }

  /** A held wave that was still being written when the form was opened is named in it. */
  @Override
  public Optional<Screen> withHeld(String heldAt, String file, ProgramState program) {
    String named = fields.get(0).text();
    boolean open = stage == Stage.FORM || stage == Stage.CAUTIONS;
    boolean free = open && step.equals(heldAt) && (named.isEmpty() || named.equals(file));
    return free ? Optional.of(named.isEmpty() ? holding(file) : this) : Optional.empty();
  }

  private static TextField holding(OptionalDouble number) {
    return number.isPresent()
        ? TextField.holding(Double.toString(number.getAsDouble()).replaceAll("\\.0$", ""))
        : TextField.EMPTY;
  }

  @Override
  public boolean awaits(Effect.ReadCapture answered) {
    return stage == Stage.READING && asked.equals(Optional.of(answered));
  }

  @Override
  public Screen afterCapture(WaveFound found) {
    return found.capture().isPresent()
        ? at(Stage.FOUND)
        : at(Stage.FORM).troubled(focus, String.join(" ", found.lines()));
  }

  private WaveScreen at(Stage next) {
    return new WaveScreen(step, next, fields, focus, asked, Optional.empty(), back);
  }

  private WaveScreen on(int line) {
    return new WaveScreen(step, stage, fields, line, asked, Optional.empty(), back);
  }

  private WaveScreen troubled(int line, String sentence) {
    return new WaveScreen(step, stage, fields, line, asked, Optional.of(sentence), back);
  }

  private WaveScreen typed(Key key) {
    List<TextField> next = new ArrayList<>(fields);
    next.set(focus, fields.get(focus).after(key));
    return new WaveScreen(step, stage, next, focus, asked, Optional.empty(), back);
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    if (key.is(Key.Kind.F10)) {
      return Answer.stay(stage == Stage.FOUND ? at(Stage.FORM) : back);
    }
    boolean enter = key.is(Key.Kind.ENTER);
    return switch (stage) {
      case CAUTIONS ->
          enter ? Answer.ask(at(Stage.FORM), new Effect.ConfirmCautions()) : Answer.stay(this);
      case CAUTIONS_OF_LIVE ->
          enter
              ? Answer.ask(back, new Effect.ConfirmCautions(), new Effect.Listen(true))
              : Answer.stay(this);
      case FORM -> inForm(key);
      case FOUND -> enter ? Answer.ask(back, new Effect.TakeCapture(step)) : Answer.stay(this);
      case READING -> Answer.say(this, "The wave is being read; F10 goes back without it.");
    };
  }

  private Answer inForm(Key key) {
    boolean last = focus == fields.size() - 1;
    if (key.is(Key.Kind.F9) || key.is(Key.Kind.ENTER) && last) {
      return read();
    }
    if (key.is(Key.Kind.ENTER)) {
      return Answer.stay(on(focus + 1));
    }
    boolean within = key.is(Key.Kind.HOME) || key.is(Key.Kind.END);
    int moved = within ? focus : Menu.moved(key, focus, fields.size());
    return Answer.stay(moved != focus ? on(moved) : typed(key));
  }

  private Answer read() {
    List<String> texts = fields.stream().map(TextField::text).toList();
    FormRead<Effect.ReadCapture> read =
        FormLines.read(texts, 1, WaveScreen::asked, asked -> List.of());
    return read.either(this::asking, this::corrected);
  }

  private Answer asking(Effect.ReadCapture asking) {
    WaveScreen reading =
        new WaveScreen(
            step, Stage.READING, fields, focus, Optional.of(asking), Optional.empty(), back);
    return Answer.ask(reading, asking);
  }

  private Answer corrected(FormRead.Bad<Effect.ReadCapture> bad) {
    int line = bad.line() == FormRead.NO_LINE ? focus : bad.line();
    return Answer.stay(troubled(line, bad.sentence()));
  }

  private static Effect.ReadCapture asked(FormLines lines) {
    String file = lines.requiredText(0, "The path of a file is required.");
    OptionalDouble channel = lines.optionalNumber(CHANNEL, Unit.ONE);
    double number = channel.orElse(1);
    if (number != Math.rint(number)) {
      throw new FormProblem(CHANNEL, "The channel must be a whole number.");
    }
    CaptureSetup setup =
        new CaptureSetup(
            lines.optionalNumber(1, Unit.VOLT),
            lines.optionalNumber(2, Unit.ONE),
            lines.optionalNumber(3, Unit.VOLT),
            lines.optionalNumber(4, Unit.PERCENT),
            (int) number,
            CsvUnits.given(lines.text(CHANNEL + 1), lines.text(CHANNEL + 2), ""));
    return new Effect.ReadCapture(file, setup, false);
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, Sentence.of("Captured wave for {}", step), Style.HEADING);
    BiConsumer<Canvas, ProgramState> body =
        switch (stage) {
          case CAUTIONS, CAUTIONS_OF_LIVE -> this::paintCautions;
          case FORM, READING -> this::paintForm;
          case FOUND -> this::paintFound;
        };
    body.accept(canvas, program);
  }

  private void paintCautions(Canvas canvas, ProgramState program) {
    int row = 2;
    for (String line : CaptureCaution.LINES) {
      int width = canvas.columns() - 4;
      row = canvas.paragraph(2, row, width, canvas.rows() - 4 - row, line, Style.HEED) + 1;
    }
    Keys.paintMessage(canvas, program.notice().orElse(""), Style.HEED);
    Keys.paint(canvas, "Enter", "read and understood", "F10", "back", "Esc", "STOP");
  }

  private void paintForm(Canvas canvas, ProgramState program) {
    for (int i = 0; i < fields.size(); i++) {
      boolean focused = i == focus && stage == Stage.FORM;
      canvas.label(1, 2 + i, LABELS.get(i), focused);
      fields.get(i).paint(canvas, 1 + LABEL, 2 + i, canvas.columns() - LABEL - 3, focused);
    }
    canvas.paragraph(
        1,
        3 + fields.size(),
        canvas.columns() - 2,
        4,
        "A tone that rises or steps through the limit gives the volts at the limit. A steady tone"
            + " gives its volts and THD.",
        Style.FAINT);
    String hint = LABELS.get(focus) + ": " + HINTS.get(focus);
    Keys.paintMessage(
        canvas,
        problem.or(program::notice).orElse(hint),
        problem.isPresent() ? Style.HEED : Style.FAINT);
    Keys.paint(
        canvas, "Up Down", "move", "Enter", "next", "F9", "read it", "F10", "back", "Esc", "STOP");
  }

  private void paintFound(Canvas canvas, ProgramState program) {
    int row = 2;
    int bottom = canvas.rows() - 4;
    for (String line : program.waves().lines()) {
      row = canvas.paragraph(2, row, canvas.columns() - 4, bottom - row, line, Style.TEXT);
    }
    int height = Math.min(12, bottom - row - 1);
    program
        .waves()
        .found()
        .flatMap(WaveFound::capture)
        .ifPresent(
            c ->
                Scope.paint(
                    canvas, c.cycle(), new Area(2, bottom - height, width(canvas), height)));
    Keys.paintMessage(canvas, program.notice().orElse(""), Style.HEED);
    Keys.paint(canvas, "Enter", "take it as the reading", "F10", "another file", "Esc", "STOP");
  }

  private static int width(Canvas canvas) {
    return Math.min(canvas.columns() - 4, 72);
  }
}
