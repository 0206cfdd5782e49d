package loadwalk.view;

import java.util.List;
import java.util.Optional;
import loadwalk.chart.Chart;
import loadwalk.walk.Event;
import loadwalk.walk.Model;
import loadwalk.wave.CaptureSetup;

/** Something that reaches the program from outside. */
public sealed interface ProgramEvent {

  /** A key was pressed. */
  record Pressed(Key key) implements ProgramEvent {}

  /** Text was pasted; line breaks in it press nothing. */
  record Pasted(String text) implements ProgramEvent {}

  /** Something reached the open walk. */
  record OfWalk(Event event) implements ProgramEvent {}

  /** A walk was opened or read back. */
  record WalkReady(Model model) implements ProgramEvent {}

  /** The open walk was closed. */
  record WalkClosed() implements ProgramEvent {}

  /** The library was read. */
  record LibraryRead(Library library) implements ProgramEvent {}

  /** The practice bench's meters were read. */
  record PracticeRead(Optional<Program.Practice> practice) implements ProgramEvent {}

  /** The connected meters of the bench have said something. */
  record MetersRead(Meters meters) implements ProgramEvent {}

  /** The cautions of a capture were read and confirmed. */
  record CautionRead() implements ProgramEvent {}

  /**
   * A captured wave was read, or could not be.
   *
   * @param asked what this answers
   * @param found what it came to
   */
  record CaptureRead(Wish.ReadCapture asked, WaveFound found) implements ProgramEvent {}

  /** The live input has something new. */
  record LiveHeard(Live live) implements ProgramEvent {}

  /** It is known what the live input's samples stand for. */
  record InputKnown(CaptureSetup setup) implements ProgramEvent {}

  /** The held wave of a step is kept in a file. */
  record HeldKept(String step, String file) implements ProgramEvent {}

  /**
   * A text is to be shown on a screen of its own.
   *
   * @param title what it is
   * @param lines its lines
   * @param charts its charts, each to be shown as large as the screen
   */
  record TextReady(String title, List<String> lines, List<Chart> charts) implements ProgramEvent {
    /** Copies the lists. */
    public TextReady {
      lines = List.copyOf(lines);
      charts = List.copyOf(charts);
    }

    /** Shows a text without charts. */
    public TextReady(String title, List<String> lines) {
      this(title, lines, List.of());
    }
  }

  /** Something is to be told. */
  record Told(String sentence) implements ProgramEvent {}

  /** A new walk on a sequence is wanted, its amplifier and bench not described yet. */
  record FormsWanted(String sequence) implements ProgramEvent {}

  /**
   * The ledger was read.
   *
   * @param rows its walks in their order
   * @param order the order in words
   * @param sort the index of the order
   * @param filter the words each walk holds
   */
  record LedgerReady(List<LedgerRow> rows, String order, int sort, String filter)
      implements ProgramEvent {
    /** Copies the rows. */
    public LedgerReady {
      rows = List.copyOf(rows);
    }
  }
}
