package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Size;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.Fact;

/**
 * What each key does in a situation: what goes into the journal, what is asked of the outside world
 * and what the screen shows of it.
 */
final class KeyTable {
  private static final int WIDEST = 150;
  private static final int ROWS_SHOWN = 3;
  private static final List<String> KEYS =
      List.of(
          "Enter",
          "Tab",
          "BackTab",
          "Up",
          "Down",
          "Left",
          "Right",
          "Home",
          "End",
          "PageUp",
          "PageDown",
          "Back",
          "Delete",
          "text: ",
          "text:4",
          "F1",
          "F2",
          "F3",
          "F4",
          "F5",
          "F6",
          "F7",
          "F8",
          "F9",
          "F10",
          "F11",
          "F12",
          "Ctrl-W",
          "Ctrl-L",
          "Ctrl-T",
          "Esc",
          "Nothing");

  private KeyTable() {}

  static String of(Desk situation) {
    List<String> idle = new ArrayList<>();
    StringBuilder table = new StringBuilder();
    Frame before = situation.frame(Size.LEAST);
    for (String key : KEYS) {
      Desk desk = situation.copy().press(key);
      List<String> lines = outcome(desk, before);
      if (lines.isEmpty()) {
        idle.add(key);
      } else {
        table.append(key).append('\n');
        lines.forEach(line -> table.append("    ").append(line).append('\n'));
      }
    }
    return table + "without effect: " + String.join(", ", idle) + "\n";
  }

  private static List<String> outcome(Desk desk, Frame before) {
    Stream<String> kept = desk.kept().stream().map(fact -> "keeps " + words(fact));
    Stream<String> asked = desk.asked().stream().map(effect -> "asks " + words(effect));
    return Stream.of(kept, asked, changes(before, desk.frame(Size.LEAST)))
        .flatMap(s -> s)
        .collect(Collectors.toList());
  }

  private static String words(Fact fact) {
    return fact instanceof Fact.Briefed ? "a brief" : cut(fact.toString());
  }

  private static String words(Effect effect) {
    return cut(effect.toString());
  }

  private static String cut(String text) {
    return text.length() > WIDEST ? text.substring(0, WIDEST) + "…" : text;
  }

  private static Stream<String> changes(Frame before, Frame now) {
    List<String> lines = now.lines();
    List<String> changed = new ArrayList<>();
    for (int row = 0; row < lines.size(); row++) {
      if (!now.sameRow(before, row)) {
        changed.add(String.format("%2d |%s", row + 1, lines.get(row)));
      }
    }
    int cursor = now.cursor();
    if (cursor != before.cursor()) {
      int columns = now.size().columns();
      changed.add(
          cursor < 0
              ? "no cursor"
              : "cursor at row " + (cursor / columns + 1) + ", column " + (cursor % columns + 1));
    }
    return changed.size() > ROWS_SHOWN + 2 ? shortened(changed) : changed.stream();
  }

  /** Another screen: its first rows, the row in focus and the cursor say which and where. */
  private static Stream<String> shortened(List<String> changed) {
    Stream<String> focus =
        changed.stream()
            .skip(ROWS_SHOWN)
            .filter(row -> row.contains("| > ") || row.contains("|>") || row.contains("cursor"));
    return Stream.of(changed.stream().limit(ROWS_SHOWN), focus, Stream.of("and more"))
        .flatMap(rows -> rows);
  }
}
