package loadwalk.view.walk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Style;
import loadwalk.walk.Intent;

/**
 * A question that takes one line of text.
 *
 * @param kind which question
 * @param step the step it is about
 * @param reading the reading it is about, where there is one
 */
record Prompt(Kind kind, String step, Optional<ReadingId> reading) {
  /** What is typed to leave an entry behind that is not on disk. */
  static final String LEAVE_WORD = "leave";

  private static final int LINES_MOST = 3;

  enum Kind {
    NOTE("Note"),
    PHOTO("Photo: path of a PNG or JPEG, in quotes if it has spaces, then what it shows"),
    CONTROLS(
        "Gain and controls of the amplifier, in one line, for example: gain 9 o'clock, bass 0"),
    SKIP("Why skip this step?"),
    ENDED(
        "How did the step end? 1 protected, 2 fuse opened, 3 gave out, 4 not reached; then what"
            + " you saw."),
    LIFT("HALT. Why lift it? Your reason is printed on the sheet."),
    EARLY("Why end the warm-up early?"),
    STAND_BY("Why stand by this reading? Your reason is printed on the sheet."),
    AMEND("New value; the first one is kept too"),
    PAIR("Volts and THD read together, for example 13.2 V 0.8 %"),
    LEAVE("The last entry is not on disk. Type leave to leave without it."),
    ANEW("Write the whole walk to which folder or file? Enter alone: where it was.");

    private final String question;

    Kind(String question) {
      this.question = question;
    }

    String question() {
      return question;
    }
  }

  static Prompt of(Kind kind, String step) {
    return new Prompt(kind, step, Optional.empty());
  }

  static Prompt of(Kind kind, String step, ReadingId reading) {
    return new Prompt(kind, step, Optional.of(reading));
  }

  /** Returns the key that opens this question. */
  Key.Kind key() {
    return kind == Kind.ENDED ? Key.Kind.F3 : Key.Kind.F2;
  }

  /** Returns the question that the key of this one leads on to, if any. */
  Optional<Prompt> behind() {
    return switch (kind) {
      case NOTE -> Optional.of(of(Kind.PHOTO, step));
      case PHOTO -> Optional.of(of(Kind.CONTROLS, step));
      case ENDED -> Optional.of(of(Kind.SKIP, step));
      default -> Optional.empty();
    };
  }

  /** Returns the keys at the foot while the question is open. */
  String[] keys() {
    return switch (kind) {
      case NOTE -> new String[] {"Enter", "keep", "F2", "a photo", "F10", "back", "Esc", "STOP"};
      case PHOTO ->
          new String[] {"Enter", "keep", "F2", "gain and controls", "F10", "back", "Esc", "STOP"};
      case ENDED -> new String[] {"Enter", "keep", "F3", "skip it", "F10", "back", "Esc", "STOP"};
      case LEAVE ->
          new String[] {"Enter", "leave", "F9", "write it all to …", "F10", "back", "Esc", "STOP"};
      case ANEW -> new String[] {"Enter", "write it all", "F10", "back", "Esc", "STOP"};
      default -> new String[] {"Enter", "keep", "F10", "back", "Esc", "STOP"};
    };
  }

  /** Paints the question, or why the last answer to it was not taken. */
  void paint(Canvas canvas, Optional<String> refusal) {
    Style style = refusal.isPresent() ? Style.HEED : Style.STRONG;
    int width = canvas.columns() - 2;
    List<String> lines = canvas.fold(refusal.orElse(kind.question()), width);
    int count = Math.min(LINES_MOST, lines.size());
    int top = canvas.rows() - 2 - count;
    if (count > 1) {
      canvas.clear(new Area(0, top - 1, canvas.columns(), count));
      canvas.rule(top - 1);
    }
    canvas.paragraph(1, top, width, LINES_MOST, String.join(" ", lines), style);
  }

  /** Returns why a text answers nothing, where that shows before the walk hears of it. */
  Optional<String> refusal(String text) {
    return kind == Kind.ENDED && Intent.EndAs.typed(text).isEmpty()
        ? Optional.of("Type 1 protected, 2 fuse opened, 3 gave out or 4 not reached.")
        : Optional.empty();
  }

  /** Returns what the operator wants with this text. */
  Intent answered(String text) {
    return switch (kind) {
      case NOTE -> new Intent.Note(text);
      case PHOTO -> Intent.Attach.typed(text);
      case CONTROLS -> new Intent.SayControls(text);
      case SKIP -> new Intent.Skip(text);
      case ENDED -> Intent.EndAs.typed(text).orElseThrow();
      case LIFT -> new Intent.LiftHalt(text);
      case EARLY -> new Intent.EndEarly(text);
      case STAND_BY -> new Intent.StandBy(step, reading.orElseThrow(), text);
      case AMEND -> new Intent.Enter(step, reading.orElseThrow(), text);
      case PAIR -> pair(text);
      case ANEW -> new Intent.WriteAnew(text);
      case LEAVE -> throw new IllegalStateException("leaving wants nothing of the walk");
    };
  }

  /** Splits at the gap that leaves the THD behind it: the last number and its percent sign. */
  private Intent pair(String text) {
    String[] words = text.strip().split("\\s+");
    int last = words.length - 1;
    if (last > 0 && words[last].equals("%")) {
      last--;
    }
    String volts = String.join(" ", Arrays.copyOfRange(words, 0, Math.max(0, last)));
    String thd = String.join(" ", Arrays.copyOfRange(words, Math.max(0, last), words.length));
    return new Intent.AddPair(step, volts, thd);
  }
}
