package loadwalk.view.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Menu;
import loadwalk.view.canvas.Style;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Help;
import loadwalk.view.screen.Screen;
import loadwalk.view.screen.TextScreen;
import loadwalk.view.state.LedgerRows;
import loadwalk.view.state.Library;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;

/**
 * The first screen: practise, start a walk, resume one, compare.
 *
 * @param chosen the line chosen
 */
public record HomeScreen(int chosen) implements Screen {
  private static final List<Choice> FIXED = List.of(Choice.values());

  /** What can always be chosen, above the kept walks. */
  private enum Choice {
    PRACTICE("Practice  a simulated amplifier on a simulated bench"),
    NEW_WALK("New walk  an amplifier on your bench"),
    LEDGER("Ledger    all walks side by side"),
    HELP("Help"),
    LEAVE("Leave");

    private final String line;

    Choice(String line) {
      this.line = line;
    }
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, "Loadwalk", Style.HEADING);
    canvas.text(11, 0, "what a car amplifier really delivers", Style.FAINT);
    canvas.rule(1);
    Menu.paint(canvas, 3, canvas.rows() - 9, lines(program), chosen);
    canvas.text(
        1,
        canvas.rows() - 5,
        canvas.shortened(Sentence.of("Walks are kept in {}", program.home()), canvas.columns() - 2),
        Style.FAINT);
    Keys.paintMessage(
        canvas,
        program
            .notice()
            .orElse(
                "Loadwalk controls nothing on the bench and never says that something is safe."
                    + " safety-notes.md lists the dangers."),
        program.notice().isPresent() ? Style.HEED : Style.FAINT);
    Keys.paint(canvas, "Up Down", "move", "Enter", "choose", "F1", "help", "F10", "leave");
  }

  private static List<String> lines(ProgramState program) {
    List<String> lines = new ArrayList<>();
    for (Choice choice : FIXED) {
      lines.add(choice.line);
    }
    for (Library.KeptWalk walk : program.library().walks()) {
      lines.add(
          Sentence.of(
              walk.isOpen() ? "Resume    {}, {}, {}  ({})" : "Sheet     {}, {}, {}  ({})",
              walk.amplifier(),
              walk.sequence(),
              walk.standing(),
              walk.name()));
    }
    return lines;
  }

  @Override
  public Optional<Screen> withLedger(LedgerRows ledger) {
    return Optional.of(LedgerScreen.of(ledger, List.of()));
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    int count = lines(program).size();
    if (key.is(Key.Kind.ENTER)) {
      return open(program);
    }
    if (key.is(Key.Kind.F1)) {
      return Answer.stay(TextScreen.of("Help", Help.home(), this));
    }
    if (key.is(Key.Kind.ESCAPE)) {
      return Answer.ask(this, new Effect.StopWork());
    }
    return key.is(Key.Kind.F10)
        ? Answer.ask(this, new Effect.Leave())
        : Answer.stay(new HomeScreen(Menu.moved(key, chosen, count)));
  }

  private Answer open(ProgramState program) {
    int kept = chosen - FIXED.size();
    if (kept < 0) {
      return open(FIXED.get(chosen));
    }
    List<Library.KeptWalk> walks = program.library().walks();
    if (kept >= walks.size()) {
      return Answer.say(new HomeScreen(0), "That walk is no longer in the list.");
    }
    Library.KeptWalk walk = walks.get(kept);
    return walk.isOpen()
        ? Answer.ask(this, new Effect.ResumeWalk(walk.name()))
        : Answer.ask(this, new Effect.ShowSheet(walk.name()));
  }

  private Answer open(Choice choice) {
    return switch (choice) {
      case PRACTICE -> Answer.stay(PracticeScreen.fresh());
      case NEW_WALK -> Answer.stay(NewWalkScreen.fresh());
      case LEDGER -> Answer.ask(this, new Effect.ShowLedger(0, ""));
      case HELP -> Answer.stay(TextScreen.of("Help", Help.home(), this));
      case LEAVE -> Answer.ask(this, new Effect.Leave());
    };
  }
}
