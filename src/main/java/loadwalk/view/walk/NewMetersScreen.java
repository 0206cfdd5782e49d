package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Style;
import loadwalk.view.screen.Answer;
import loadwalk.view.screen.Screen;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;

/**
 * Asks before addresses are opened that this data home has not used: the bench may be a stranger's.
 * No key that is typed in passing answers it.
 *
 * @param meters the meters at those addresses
 * @param back where the walk goes on
 */
public record NewMetersScreen(List<Meter> meters, Screen back) implements Screen {
  private static final String ASKED =
      "The bench of this walk names meters at addresses that have not been used from this data"
          + " home. Nothing was opened there yet. If the walk came from somebody else, look twice:"
          + " a connection can tell a stranger that you are there.";
  private static final String BY_HAND =
      "These meters are left alone; type their readings. You are asked again when you resume.";
  private static final int LABEL_LETTERS = 60;

  /** Copies the list. */
  public NewMetersScreen {
    meters = List.copyOf(meters);
  }

  @Override
  public void paint(Canvas canvas, ProgramState program) {
    canvas.text(1, 0, "Open these addresses?", Style.HEADING);
    canvas.rule(1);
    int width = canvas.columns() - 2;
    int row = canvas.paragraph(1, 3, width, 6, ASKED, Style.HEED) + 1;
    List<String> lines = addresses();
    int room = canvas.rows() - 5 - row;
    for (int i = 0; i < Math.min(room, lines.size()); i++) {
      canvas.text(1, row + i, canvas.shortened(lines.get(i), width), Style.STRONG);
    }
    if (lines.size() > room) {
      canvas.text(1, row + room, Sentence.of("and {} more", lines.size() - room), Style.STRONG);
    }
    Keys.paintMessage(canvas, program.notice().orElse(""), Style.HEED);
    Keys.paint(canvas, "F8", "open them", "F10", "leave them; I type the readings", "Esc", "STOP");
  }

  /** Returns each address once, with what is read there. */
  private List<String> addresses() {
    Map<Connection.Line, List<String>> readAt = new LinkedHashMap<>();
    for (Meter meter : meters) {
      String read = Sentence.of("{} ({})", meter.label(), meter.reads().label());
      readAt
          .computeIfAbsent(meter.connection().orElseThrow().line(), line -> new ArrayList<>())
          .add(Visible.line(read, LABEL_LETTERS));
    }
    List<String> lines = new ArrayList<>();
    readAt.forEach((line, read) -> lines.add("  " + line.text() + "  " + String.join(", ", read)));
    return lines;
  }

  /** Returns the question as plain mode asks it. */
  @Override
  public List<String> text() {
    List<String> lines = new ArrayList<>(List.of(ASKED));
    lines.addAll(addresses());
    lines.add("To open them, type connect. Or go on and type the readings.");
    return lines;
  }

  @Override
  public Answer press(Key key, ProgramState program) {
    return switch (key.kind()) {
      case F8 -> Answer.ask(back, new Effect.ConnectMeters());
      case F10 -> Answer.say(back, BY_HAND);
      default -> Answer.say(this, "Press F8 to open them, or F10 to type their readings.");
    };
  }
}
