package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Ascii;
import loadwalk.text.Columns;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Size;
import loadwalk.view.screen.Help;
import loadwalk.walk.fact.WalkState;

/**
 * The help of a walk: first the texts that the panel of the current step may have cut, then the
 * keys.
 */
final class StepHelp {
  private static final int COLUMNS = Size.LEAST.columns() - 2;

  private StepHelp() {}

  static List<String> lines(WalkState state) {
    List<String> lines = new ArrayList<>();
    state.current().ifPresent(planned -> lines.addAll(instruction(state, planned)));
    lines.addAll(cautions(state));
    lines.addAll(Help.walk());
    return lines;
  }

  /** Returns the instruction of a step whole, where a panel may have cut it. */
  private static List<String> instruction(WalkState state, PlannedStep planned) {
    List<String> text = folded(planned.instruction(state.context(planned)), COLUMNS);
    if (text.size() <= BriefPanel.INSTRUCTION_ROWS) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add(Sentence.of("Step {} in full:", planned.id()));
    lines.addAll(text);
    lines.add("");
    return lines;
  }

  private static List<String> cautions(WalkState state) {
    Optional<Forecast> brief = state.current().flatMap(p -> state.step(p.id()).brief());
    List<String> lines = new ArrayList<>();
    for (Caution caution : brief.map(Forecast::cautions).orElse(List.of())) {
      String gravity = caution.gravity().capitals();
      for (String line : folded(caution.text(), COLUMNS - BriefPanel.CAUTION)) {
        lines.add(String.format("%-" + BriefPanel.CAUTION + "s%s", gravity, line));
        gravity = "";
      }
    }
    if (!lines.isEmpty()) {
      lines.add(0, Sentence.of("Cautions for {}, worst first:", state.currentId()));
      lines.add("");
    }
    return lines;
  }

  /** Breaks a text into lines that have room in ASCII too, where a sign may become a word. */
  private static List<String> folded(String text, int columns) {
    List<String> lines = Columns.wrapped(text, columns, columns);
    for (int width = columns - 1; width > columns / 2 && !haveRoom(lines, columns); width--) {
      lines = Columns.wrapped(text, width, width);
    }
    return lines;
  }

  private static boolean haveRoom(List<String> lines, int columns) {
    return lines.stream().allMatch(line -> Ascii.of(line).length() <= columns);
  }
}
