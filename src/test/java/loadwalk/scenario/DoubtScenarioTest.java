package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A slip of the decimal point and the three answers to the doubt it raises. */
class DoubtScenarioTest {
  @TempDir Path folder;

  private BenchSide doubted() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "text:1.55 V", "Enter");
    return bench.sees("DOUBT, output volts", "a slipped decimal point?", "Enter it again, or F7");
  }

  @Test
  void coldLoadDoubted_isNamedInTheBrief_andTheReasonKeyDoesWhatIsSaid() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("F3", "text:another load first", "Enter").sees("stereo-2 brief");
    bench.press("Down", "text:1", "Enter").sees("1 Ω DOUBT", "HALT");
    bench.sees("DOUBT, load ohms: a load wired at half its value? Tab amends; F7 stands by it.");
    bench.press("Tab").sees("half its value? Amend it; F7 stands by it.");
    bench.press("F7").sees("Why stand by this reading?");
    bench.press("text:the meter was checked", "Enter").sees("HALT: F7 lifts it");
    bench.press("F7").sees("HALT. Why lift it?").press("text:it is one ohm", "Enter");
    bench.sees("This is kept as the cold load; it does not arm the step.");
    bench.press("Up").sees("Halt lifted. The load you type here arms and starts the step.");
  }

  @Test
  void reentryInRange_isKept_andTheFirstValueStandsBeside() {
    BenchSide bench = doubted();
    bench.press("Up", "text:15.5 V", "Enter").seesNot("DOUBT");
    assertEquals(List.of("1.55 V", "15.5 V"), bench.typed("stereo-4", ReadingId.OUTPUT_VOLTS));
    bench.press("F4").sees("1.55 V, then 15.5 V").journalTellsTheSame();
  }

  @Test
  void standingBy_needsWords_andIsShownWithTheReading() {
    BenchSide bench = doubted();
    bench.press("F7").sees("Why stand by this reading?");
    bench.press("text:..", "Enter").sees("Say in words why you stand by the reading.");
    bench.press("text:attenuator in line", "Enter").seesNot("DOUBT");
    bench.press("F4").sees("stood by: ..attenuator in line").journalTellsTheSame();
  }

  @Test
  void doubtWithoutAnswer_holdsTheNextHeavyStep_untilItIsAmended() {
    BenchSide bench = doubted();
    bench.press("F9").sees("stereo-2 brief: HEED", "is not answered yet");
    bench.press("text:2", "Enter").sees("Held: answer the doubt on stereo-4");
    bench.press("F4").sees("DOUBT: a slipped decimal point").press("Enter").sees("New value");
    bench.press("text:no number", "Enter").sees("«no number» is not a number");
    bench.press("F10", "Enter", "text:15,5", "Enter").seesNot("DOUBT").press("F10");
    bench.seesNot("is not answered yet").press("text:2", "Enter").sees("stereo-2 running");
    assertTrue(bench.model().state().openDoubts().isEmpty());
    assertEquals(List.of("1.55 V", "15,5"), bench.typed("stereo-4", ReadingId.OUTPUT_VOLTS));
    bench.journalTellsTheSame();
  }
}
