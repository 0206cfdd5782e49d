package loadwalk.view.home;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Menu;
import loadwalk.view.canvas.Style;
import loadwalk.view.form.AmplifierForm;
import loadwalk.view.form.BenchForm;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.Library;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;

/**
 * Puts a new walk together: sequence, amplifier, bench, then the plan or the start.
 *
 * @param stage what is being chosen
 * @param chosen the line chosen
 * @param draft what has been chosen so far
 */
public record NewWalkScreen(Stage stage, int chosen, NewWalk draft) implements Screen {
  enum Stage {
    SEQUENCE("Which sequence?"),
    AMPLIFIER("Which amplifier? Enter opens its form, where you can edit it."),
    BENCH("Which bench? Enter opens its form, where you can edit it."),
    READY("Ready");

    private final String question;

    Stage(String question) {
      this.question = question;
    }
  }

  /** Returns the screen of a new walk, nothing chosen yet. */
  static NewWalkScreen fresh() {
    return new NewWalkScreen(Stage.SEQUENCE, 0, NewWalk.empty());
  }

  /** Returns the screen of a new walk on a sequence, its amplifier and bench not described yet. */
  public static NewWalkScreen on(String sequence) {
    return new NewWalkScreen(Stage.AMPLIFIER, 0, NewWalk.empty().on(sequence));
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, "New walk", Style.HEADING);
    canvas.text(1, 2, stage.question, Style.STRONG);
    Menu.paint(canvas, 4, canvas.rows() - 9, lines(program), chosen);
    String refused = stage == Stage.SEQUENCE ? program.library().notOffered() : "";
    Keys.paintMessage(canvas, program.notice().orElse(refused), Style.HEED);
    Keys.paint(canvas, "Up Down", "move", "Enter", "choose", "F10", "back");
  }

  private List<String> lines(ProgramState program) {
    Library library = program.library();
    return switch (stage) {
      case SEQUENCE -> library.sequences().stream().map(s -> s.name() + "  " + s.title()).toList();
      case AMPLIFIER ->
          behind(
              draft.amplifierLines().isEmpty() ? "a new amplifier" : "the amplifier just typed",
              library.amplifiers().stream().map(Amplifier::name));
      case BENCH ->
          behind(
              draft.benchLines().isEmpty() ? "a new bench" : "the bench just typed",
              library.benches().stream().map(Bench::name));
      case READY -> List.of("start the walk", "see the plan first");
    };
  }

  private static List<String> behind(String first, Stream<String> names) {
    return Stream.concat(Stream.of(first), names).toList();
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    if (Menu.isBack(key)) {
      return stage == Stage.SEQUENCE
          ? Answer.stay(new HomeScreen(1))
          : Answer.stay(new NewWalkScreen(Stage.values()[stage.ordinal() - 1], 0, draft));
    }
    int count = lines(program).size();
    if (!key.is(Key.Kind.ENTER)) {
      return Answer.stay(new NewWalkScreen(stage, Menu.moved(key, chosen, count), draft));
    }
    return chosen < count
        ? taken(program)
        : Answer.say(this, "There is nothing to choose from yet.");
  }

  private Answer taken(ProgramState program) {
    return switch (stage) {
      case SEQUENCE -> {
        String name = program.library().sequences().get(chosen).name();
        yield Answer.stay(new NewWalkScreen(Stage.AMPLIFIER, 0, draft.on(name)));
      }
      case AMPLIFIER -> {
        List<String> amplifier =
            chosen == 0
                ? typedOr(draft.amplifierLines(), AmplifierForm.blank())
                : AmplifierForm.texts(program.library().amplifiers().get(chosen - 1));
        yield Answer.stay(FormScreen.of(FormScreen.Kind.AMPLIFIER, amplifier, draft));
      }
      case BENCH -> {
        if (chosen == 0) {
          List<String> typed = typedOr(draft.benchLines(), BenchForm.blank());
          yield Answer.stay(FormScreen.of(FormScreen.Kind.BENCH, typed, draft));
        }
        Bench earlier = program.library().benches().get(chosen - 1);
        yield Answer.stay(
            FormScreen.of(FormScreen.Kind.BENCH, BenchForm.texts(earlier), draft.with(earlier)));
      }
      case READY -> ready();
    };
  }

  private static List<String> typedOr(List<String> typed, List<String> blank) {
    return typed.isEmpty() ? blank : typed;
  }

  private Answer ready() {
    String sequence = draft.sequence().orElseThrow();
    Amplifier amplifier = draft.amplifier().orElseThrow();
    Bench bench = draft.bench().orElseThrow();
    return chosen == 0
        ? Answer.ask(this, new Effect.OpenWalk(sequence, amplifier, bench, OptionalLong.empty(), 1))
        : Answer.ask(this, new Effect.ShowPlan(sequence, amplifier, bench));
  }
}
