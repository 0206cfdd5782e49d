package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Slip;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The point at which an output was read: by the THD typed, or by the operator's word. */
class PointScenarioTest {
  private static final String ABOVE =
      "5.3 % THD is above the limit of 1 %: turn the tone down and read again, or say that this is"
          + " read above the limit.";
  private static final String NOBODY =
      "Nobody read the THD or said at what point the output was read";

  @TempDir Path folder;

  /** Runs stereo-4 with its output in; the cursor stands on the other channel's volts. */
  private BenchSide read() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    return bench.press("text:4", "Enter", "text:15.5", "Enter").sees("> other channel volts");
  }

  private static BenchSide down(BenchSide bench, int rows) {
    for (int i = 0; i < rows; i++) {
      bench.press("Down");
    }
    return bench;
  }

  private static Optional<Criterion> said(BenchSide bench) {
    return bench.step("stereo-4").said();
  }

  @Test
  void emptyRow_proposesTheLimit_andEnterTakesItAsTheOperatorsWord() {
    BenchSide bench = read().sees("output was read at the THD limit?");
    assertEquals(Optional.empty(), said(bench));
    down(bench, 6).sees("> output was read < at the THD limit? > Enter: yes");
    bench.press("Enter").sees("output was read at the THD limit").seesNot("THD limit?");
    assertEquals(Optional.of(Criterion.THD_LIMIT), said(bench));
    bench.sees("> volts and THD pair").press("Enter");
    assertEquals(Status.DONE, bench.step("stereo-4").status());
    bench.seesNot(NOBODY);
  }

  @Test
  void arrows_chooseAnotherPoint() {
    BenchSide bench = down(read(), 6).press("Right").sees("< at the onset of clipping >");
    assertEquals(Optional.of(Criterion.CLIPPING_ONSET), said(bench));
    bench.press("Left", "Left").sees("< above the limit >");
    assertEquals(Optional.of(Criterion.ABOVE_LIMIT), said(bench));
  }

  @Test
  void highThd_isDoubtedAtOnce_andTheWordForItAnswers() {
    BenchSide bench = down(read(), 3).sees("> THD").press("text:5.3", "Enter");
    bench.sees("DOUBT, THD", ABOVE, "output was read above the limit?");
    assertEquals(List.of(ReadingId.THD_PERCENT), bench.step("stereo-4").openDoubts());
    down(bench, 2).sees("< above the limit? > Enter: yes").press("Enter").seesNot("DOUBT");
    bench.sees("above the limit, by the 5.3 % THD read");
    assertEquals(Optional.of(Criterion.ABOVE_LIMIT), said(bench));
    assertEquals(List.of(), bench.step("stereo-4").openDoubts());
    bench.press("F9", "F6").sees("Sheet of");
    for (int i = 0; i < 40 && !bench.picture().contains("Doubts and answers"); i++) {
      bench.press("PageDown");
    }
    bench.press("Down", "Down", "Down", "Down", "Down", "Down");
    bench.sees("THD typed as 5.3: the tone off the limit.", "Said to be read above the limit.");
  }

  @Test
  void highThd_isAnsweredByReadingAgain() {
    BenchSide bench = down(read(), 3).press("text:5.3", "Enter", "Up", "text:1.1", "Enter");
    bench.seesNot("DOUBT").sees("at the THD limit, by the 1.1 % THD read");
    assertEquals(Optional.empty(), said(bench));
  }

  @Test
  void pointThatTheThdContradicts_isRefused_andOneSaidBeforeIsDoubted() {
    BenchSide bench = down(read(), 6).press("Enter", "Up", "Up", "Up", "Up").sees("> THD");
    bench.press("text:0.2", "Enter").sees("0.2 % THD is below the limit of 1 %: raise the tone");
    down(bench, 2).press("Enter").seesNot("DOUBT").press("Up");
    bench.press("Right").sees("0.2 % THD is below the limit of 1 %");
    assertEquals(Optional.of(Criterion.BELOW_LIMIT), said(bench));
  }

  @Test
  void otherTone_isDoubtedAtOnce() {
    BenchSide bench = down(read(), 5).sees("> tone").press("text:1000", "Enter");
    bench.sees(
        "DOUBT, tone: another tone than the walk asks for? 1 kHz: this walk asks for 40 Hz.");
    Entry tone = bench.step("stereo-4").latest(ReadingId.FREQUENCY_HERTZ).orElseThrow();
    assertEquals(Slip.TONE_OFF, tone.doubts().get(0).slip());
  }

  @Test
  void finishingWithoutEither_isAllowed_andSaidOnce() {
    BenchSide bench = read().press("F9").sees("stereo-2 brief", NOBODY);
    bench.press("text:2", "Enter", "text:13.9", "Enter", "F9").sees("stereo-1 brief");
    bench.seesNot(NOBODY);
  }

  @Test
  void stepCountsHowLongItRan_onTheClockThatOnlyGoesForward() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "wait:3", "text:15.5", "Enter");
    Entry volts = bench.step("stereo-4").output().orElseThrow();
    // Sixty bench seconds pass in each.
    assertEquals(180, volts.heldSeconds().orElseThrow(), 1e-9);
    bench.press("Down", "Down", "wait:1", "F5", "F5").press("Down", "Down");
    bench.sees("> output volts").press("text:15.6", "Enter");
    assertTrue(bench.step("stereo-4").output().orElseThrow().heldSeconds().isEmpty());
  }

  @Test
  void brief_saysWhereTheTipsGo_andAsksForTheControlsOnce() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.sees(
        "Read volts and, amplifier off, ohms at its terminals: 20 mΩ of lead is 2 % at 1 Ω.");
    bench.sees("Nobody wrote down how gain and controls are set: F2, three times.");
    bench.press("F2", "F2", "F2").sees("Gain and controls").press("text:gain at noon", "Enter");
    bench.seesNot("Nobody wrote down");
    assertEquals(Optional.of("gain at noon"), bench.model().state().controls());
  }
}
