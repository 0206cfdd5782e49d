package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.state.Live;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.wave.file.CaptureSetup;
import org.junit.jupiter.api.Test;

/** What becomes of a text that is typed or pasted: it goes where it was meant to, or stays. */
class TypedTextTest {

  private static String cursorRow(Desk desk) {
    Frame frame = desk.frame(Size.LEAST);
    return frame.lines().get(frame.cursor() / Size.LEAST.columns());
  }

  @Test
  void textTypedForAStep_doesNotReachTheNextOne() {
    Desk desk = WalkSituations.runningAtFour().press("F8", "text:13.8");
    assertTrue(cursorRow(desk).contains("13.8"), cursorRow(desk));
    desk.press("F9");
    assertEquals("stereo-2", desk.state().currentId());
    assertFalse(cursorRow(desk).contains("13.8"), cursorRow(desk));
  }

  @Test
  void textTypedWhileTheDiskIsSlow_doesNotReachTheNextStep() {
    Desk desk = WalkSituations.runningAtFour().press("F8").diskWaits().press("F9", "text:13.8");
    assertEquals("stereo-4", desk.state().currentId());
    desk.diskGoesOn();
    assertEquals("stereo-2", desk.state().currentId());
    assertFalse(cursorRow(desk).contains("13.8"), cursorRow(desk));
  }

  @Test
  void textTypedBeforeTheStopKey_isNoReasonForTheStop() {
    Desk desk = WalkSituations.runningAtFour().press("text:15.5", "Esc");
    assertFalse(cursorRow(desk).contains("15.5"), cursorRow(desk));
    desk.press("text:smoke", "Enter");
    assertEquals(Optional.of("smoke"), desk.state().stops().get(0).reason());
  }

  @Test
  void textTypedToArm_isGone_onceAHaltIsLifted() {
    Desk desk = Desk.atHome().opens(Shelf.SHORT, Shelf.STRONG, Shelf.WEAK);
    desk.press("F3", "text:later", "Enter", "text:99", "F7", "text:a short burst", "Enter");
    assertFalse(cursorRow(desk).contains("99"), cursorRow(desk));
  }

  @Test
  void refusedText_staysInTheLine_withTheReasonAbove() {
    Desk desk = WalkSituations.practiceAtFour().press("text:8 ohm", "Enter");
    assertTrue(cursorRow(desk).contains("8 ohm"), cursorRow(desk));
    assertTrue(desk.model().message().isPresent());
    desk.press("Back");
    assertTrue(desk.model().message().isEmpty(), "the next key takes the message down");
  }

  @Test
  void paste_typesALine_andPressesNothing() {
    Desk desk = WalkSituations.runningAtFour();
    desk.hears(new ProgramEvent.Pasted("15.5\r\n V\u001b\t"));
    assertTrue(cursorRow(desk).contains("15.5 V·"), cursorRow(desk));
    assertTrue(desk.step().latest().isEmpty(), "nothing is entered without Enter");
    desk.press("Enter");
    assertEquals(15.5, desk.step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value(), 1e-9);
  }

  @Test
  void longPaste_isCut_andItIsSaid() {
    Desk whole = WalkSituations.runningAtFour();
    whole.hears(new ProgramEvent.Pasted("x".repeat(2000)));
    assertTrue(whole.program().state().notice().isEmpty());
    Desk cut = WalkSituations.runningAtFour();
    cut.hears(new ProgramEvent.Pasted("x".repeat(2001)));
    assertEquals(
        "The pasted text was cut after 2000 characters.",
        cut.program().state().notice().orElseThrow());
  }

  @Test
  void typing_paintsTheSameAsAWholeFrame_inEverySize() {
    for (Size size : List.of(Size.LEAST, new Size(120, 40), new Size(40, 12))) {
      ProgramPainter painter = new ProgramPainter(new Look(false));
      Desk desk = MeterSituations.say(WalkSituations.runningAtFour(), 13.7, 16);
      for (String key : List.of("text:15.5", "Left", "Back", "Enter", "text:1", "F2", "text:a")) {
        desk.press(key);
        Frame whole = desk.frame(size);
        assertEquals(whole, painter.paint(desk.program(), size), key);
      }
    }
  }

  /** The painter repeats only the row of the cursor where nothing but that has changed. */
  @Test
  void whateverComesInWhileTyping_isPainted() {
    ProgramPainter painter = new ProgramPainter(new Look(false));
    Desk desk = MeterSituations.say(WalkSituations.runningAtFour(), 13.7, 16).press("text:1");
    painter.paint(desk.program(), Size.LEAST);
    List<ProgramEvent> news =
        List.of(
            new ProgramEvent.Told("The sound input is gone."),
            new ProgramEvent.LiveHeard(Live.OPENING),
            new ProgramEvent.InputKnown(CaptureSetup.of(1.5, 21)),
            new ProgramEvent.LibraryRead(Shelf.library(2)),
            new ProgramEvent.PracticeRead(Optional.empty()),
            new ProgramEvent.OfWalk(new Intent.Note("the fan runs")),
            new ProgramEvent.OfWalk(new Event.NotKept("The disk is full.")),
            new ProgramEvent.WalkClosed());
    for (ProgramEvent event : news) {
      desk.hears(event);
      assertEquals(desk.frame(Size.LEAST), painter.paint(desk.program(), Size.LEAST));
      desk.press("text:5");
      assertEquals(desk.frame(Size.LEAST), painter.paint(desk.program(), Size.LEAST));
    }
    MeterSituations.say(desk, 9, 200);
    assertEquals(desk.frame(Size.LEAST), painter.paint(desk.program(), Size.LEAST));
  }

  @Test
  void firstFrame_andAnotherSize_arePaintedWhole() {
    ProgramPainter painter = new ProgramPainter(new Look(false));
    Desk desk = WalkSituations.runningAtFour().press("text:1");
    for (Size size : List.of(Size.LEAST, new Size(100, 30), new Size(80, 30), Size.LEAST)) {
      desk.press("text:5");
      assertEquals(desk.frame(size), painter.paint(desk.program(), size));
    }
  }

  @Test
  void lettersTypedIntoAReading_leaveEveryOtherRowAlone() {
    ProgramPainter painter = new ProgramPainter(new Look(false));
    Desk desk = WalkSituations.runningAtFour();
    Frame before = painter.paint(desk.program(), Size.LEAST);
    Frame after = painter.paint(desk.press("text:1").program(), Size.LEAST);
    int row = before.cursor() / Size.LEAST.columns();
    for (int i = 0; i < Size.LEAST.rows(); i++) {
      assertEquals(i != row, after.sameRow(before, i), "row " + i);
    }
  }
}
