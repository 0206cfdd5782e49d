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
  private static final int FIXED = 5;

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
    lines.add("Practice  a simulated amplifier on a simulated bench");
    lines.add("New walk  an amplifier on your bench");
    lines.add("Ledger    all walks side by side");
    lines.add("Help");
    lines.add("Leave");
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
      return taken(program);
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

  private Answer taken(ProgramState program) {
    switch (chosen) {
      case 0:
        return Answer.stay(PracticeScreen.fresh());
      case 1:
        return Answer.stay(NewWalkScreen.fresh());
      case 2:
        return Answer.ask(this, new Effect.ShowLedger(0, ""));
      case 3:
        return Answer.stay(TextScreen.of("Help", Help.home(), this));
      case 4:
        return Answer.ask(this, new Effect.Leave());
      default:
        List<Library.KeptWalk> walks = program.library().walks();
        if (chosen - FIXED >= walks.size()) {
          return Answer.say(new HomeScreen(0), "That walk is no longer in the list.");
        }
        Library.KeptWalk walk = walks.get(chosen - FIXED);
        return walk.isOpen()
            ? Answer.ask(this, new Effect.ResumeWalk(walk.name()))
            : Answer.ask(this, new Effect.ShowSheet(walk.name()));
    }
  }
}
