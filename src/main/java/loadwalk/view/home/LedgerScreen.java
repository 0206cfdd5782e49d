package loadwalk.view.home;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Menu;
import loadwalk.view.canvas.Style;
import loadwalk.view.canvas.TextField;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.LedgerRow;
import loadwalk.view.state.LedgerRows;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;

/**
 * All walks side by side: sort, filter, mark two to four and compare.
 *
 * @param ledger the rows, their order and filter
 * @param chosen the row chosen
 * @param marked the names of the walks marked, in the order they were
 * @param filtering whether keys go into the filter
 * @param field the filter while it is typed
 */
record LedgerScreen(
    LedgerRows ledger, int chosen, List<String> marked, boolean filtering, TextField field)
    implements Screen {
  private static final int LEAST = 2;
  private static final int MOST = 4;
  private static final int AMPLIFIER = 3;

  /** How wide rank, power, part of rated, watts per ampere of fuse and efficiency are. */
  private static final int[] WIDTHS = {6, 25, 9, 8, 7};

  private static final int WALK_WIDTH = 32;
  private static final int WALK_FROM_COLUMNS = 110;
  private static final int PAGE = 15;

  LedgerScreen {
    marked = List.copyOf(marked);
  }

  static LedgerScreen of(LedgerRows ledger, List<String> marked) {
    return new LedgerScreen(ledger, 0, marked, false, TextField.EMPTY);
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, "Ledger", Style.HEADING);
    canvas.text(9, 0, told(), Style.FAINT);
    paintFirst(canvas);
    cells(
        canvas,
        2,
        Style.HEADING,
        "amplifier",
        "rank",
        "most",
        "of rated",
        "W/fuse",
        "eff.",
        "walk");
    int room = canvas.rows() - 8;
    int top = Math.max(0, chosen - room + 1);
    for (int i = 0; i < room && top + i < ledger.rows().size(); i++) {
      paintRow(canvas, top + i, 3 + i);
    }
    if (ledger.rows().isEmpty()) {
      String none =
          ledger.filter().isEmpty() ? "No walk is kept yet." : "No walk has all these words.";
      canvas.text(1, 4, none, Style.TEXT);
    }
    paintFoot(canvas, program);
  }

  /** Paints what is to be known first, as far as one line goes. */
  private void paintFirst(Canvas canvas) {
    int more = ledger.told().size() - 1;
    if (more >= 0) {
      String first = ledger.told().get(0);
      String all =
          more == 0 ? first : Sentence.of("{} notes, all in loadwalk ledger. {}", more + 1, first);
      canvas.text(1, 1, canvas.shortened(all, canvas.columns() - 2), Style.STRONG);
    }
  }

  /** Says how many walks are listed, in which order and under which filter. */
  private String told() {
    String count = Sentence.plural(ledger.rows().size(), "1 walk", "{} walks");
    return ledger.filter().isEmpty()
        ? Sentence.of("{}, {} first", count, ledger.order())
        : Sentence.of("{}, {} first, only with «{}»", count, ledger.order(), ledger.filter());
  }

  private void paintRow(Canvas canvas, int index, int row) {
    LedgerRow walk = ledger.rows().get(index);
    Style style = index == chosen ? Style.FOCUS : Style.TEXT;
    String mark = marked.contains(walk.walk()) ? "*" : " ";
    canvas.text(0, row, (index == chosen ? ">" : " ") + mark, style);
    cells(
        canvas,
        row,
        style,
        walk.amplifier(),
        walk.rank(),
        walk.most(),
        walk.honesty(),
        walk.perFuseAmp(),
        walk.efficiency(),
        walk.walk());
  }

  /** The amplifier's name takes what the other columns leave; the walk's shows on wide screens. */
  private static void cells(Canvas canvas, int row, Style style, String... texts) {
    boolean wide = canvas.columns() >= WALK_FROM_COLUMNS;
    int rest = Arrays.stream(WIDTHS).sum() + (wide ? WALK_WIDTH : 0);
    int column = canvas.columns() - rest;
    String name = canvas.shortened(texts[0], column - AMPLIFIER - 1);
    canvas.text(AMPLIFIER, row, name, style);
    for (int i = 0; i < WIDTHS.length; i++) {
      canvas.text(column, row, canvas.shortened(texts[i + 1], WIDTHS[i] - 1), style);
      column += WIDTHS[i];
    }
    if (wide) {
      String walk = canvas.shortened(texts[texts.length - 1], WALK_WIDTH - 1);
      canvas.text(column, row, walk, style);
    }
  }

  private void paintFoot(Canvas canvas, ProgramState program) {
    if (filtering) {
      canvas.rule(canvas.rows() - 4);
      canvas.text(1, canvas.rows() - 3, "Show only walks with all these words:", Style.STRONG);
      field.paint(canvas, 1, canvas.rows() - 2, canvas.columns() - 2, true);
      Keys.paint(canvas, "Enter", "show", "F10", "back");
      return;
    }
    String chosenWalk = ledger.rows().isEmpty() ? "" : ledger.rows().get(chosen).standing();
    Keys.paintMessage(canvas, program.notice().orElse(chosenWalk), Style.FAINT);
    Keys.paint(
        canvas,
        "Space",
        "mark",
        "F5",
        "order",
        "F4",
        "filter",
        "F8",
        "compare marked",
        "Enter",
        "sheet",
        "F10",
        "back");
  }

  @Override
  public Optional<Screen> withLedger(LedgerRows read) {
    return Optional.of(of(read, marked));
  }

  @Override
  public boolean comparesWalks() {
    return true;
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    if (filtering) {
      return typed(key);
    }
    if (Menu.isBack(key)) {
      return Answer.ask(new HomeScreen(2), new Effect.StopWork());
    }
    switch (key.kind()) {
      case F5:
        return Answer.ask(this, new Effect.ShowLedger(ledger.sort() + 1, ledger.filter()));
      case F4:
        TextField words = TextField.holding(ledger.filter());
        return Answer.stay(new LedgerScreen(ledger, chosen, marked, true, words));
      case F8:
        return marked.size() >= LEAST
            ? Answer.ask(this, new Effect.Compare(marked))
            : Answer.say(this, "Mark two to four walks with the space bar first.");
      case ENTER:
        return ledger.rows().isEmpty()
            ? Answer.say(this, "There is no walk to show.")
            : Answer.ask(this, new Effect.ShowSheet(ledger.rows().get(chosen).walk()));
      case CHARACTER:
        return key.character() == ' ' ? toggled() : Answer.stay(this);
      default:
        int row = moved(key);
        return Answer.stay(new LedgerScreen(ledger, row, marked, false, field));
    }
  }

  private int moved(Key key) {
    int last = Math.max(0, ledger.rows().size() - 1);
    switch (key.kind()) {
      case PAGE_UP:
        return Math.max(0, chosen - PAGE);
      case PAGE_DOWN:
        return Math.min(last, chosen + PAGE);
      default:
        return Menu.moved(key, chosen, ledger.rows().size());
    }
  }

  private Answer typed(Key key) {
    if (key.is(Key.Kind.F10)) {
      return Answer.stay(new LedgerScreen(ledger, chosen, marked, false, TextField.EMPTY));
    }
    return key.is(Key.Kind.ENTER)
        ? Answer.ask(this, new Effect.ShowLedger(ledger.sort(), field.text().strip()))
        : Answer.stay(new LedgerScreen(ledger, chosen, marked, true, field.after(key)));
  }

  private Answer toggled() {
    if (ledger.rows().isEmpty()) {
      return Answer.say(this, "There is no walk to mark.");
    }
    String walk = ledger.rows().get(chosen).walk();
    List<String> now = new ArrayList<>(marked);
    if (!now.remove(walk)) {
      if (now.size() == MOST) {
        return Answer.say(this, "Four walks are marked already; unmark one first.");
      }
      now.add(walk);
    }
    return Answer.stay(new LedgerScreen(ledger, chosen, now, false, field));
  }
}
