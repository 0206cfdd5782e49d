package loadwalk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.walk.Effect;
import loadwalk.wave.file.CaptureSetup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainWaveTest {
  private static Effect.ReadCapture reads(String rest, CaptureSetup kept) {
    PlainAnswer answer = PlainWave.parse(rest, kept, true);
    assertEquals(1, answer.effects().size(), rest);
    return assertInstanceOf(Effect.ReadCapture.class, answer.effects().get(0), rest);
  }

  @Test
  void fileAndScale_areRead() {
    Effect.ReadCapture line = reads("ramp.wav full-scale 1.41 divider 21", CaptureSetup.NONE);
    assertEquals("ramp.wav", line.file());
    assertEquals(CaptureSetup.of(1.41, 21), line.setup());
  }

  @Test
  void nameWithGaps_standsInQuotes() {
    Effect.ReadCapture line = reads("\"my ramp.wav\" known 13,4 channel 2", CaptureSetup.NONE);
    assertEquals("my ramp.wav", line.file());
    assertEquals(OptionalDouble.of(13.4), line.setup().knownVolts());
    assertEquals(2, line.setup().channel());
  }

  @Test
  void whatWasSaidBefore_holds_untilItIsSaidAnew() {
    CaptureSetup kept =
        reads("a.wav full-scale 2 divider 21 percent 0.5", CaptureSetup.NONE).setup();
    assertEquals(kept, reads("b.wav", kept).setup());
    CaptureSetup known = reads("b.wav known 12", kept).setup();
    assertEquals(OptionalDouble.empty(), known.divider());
    assertEquals(OptionalDouble.of(0.5), known.calibrationPercent());
  }

  @Test
  void unitsOfAScopesFile_areReadAndKept() {
    CaptureSetup said =
        reads("a.csv divider 10 time-unit ms volt-unit mV", CaptureSetup.NONE).setup();
    assertEquals(Optional.of(1e-3), said.given().secondsPerUnit());
    assertEquals(Optional.of(1e-3), said.given().voltsPerUnit());
    assertEquals(said, reads("b.csv", said).setup());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a.wav full-scale",
        "a.wav volume 11",
        "a.wav full-scale -2",
        "a.wav full-scale 2 known 3",
        "a.wav divider x",
        "a.wav channel 0",
        "a.wav channel 1.5",
        "a.wav percent 0",
        "a.csv time-unit h",
        "a.csv volt-unit",
        "\"a.wav",
        "\""
      })
  void wrongWords_getASentence(String rest) {
    PlainAnswer answer = PlainWave.parse(rest, CaptureSetup.NONE, true);
    assertEquals(List.of(), answer.effects(), rest);
    assertTrue(answer.notice().orElseThrow().length() > 10, rest);
  }

  @Test
  void beforeTheCautionsAreConfirmed_theyAreShown_andNothingIsRead() {
    assertEquals(
        PlainAnswer.show(PlainAnswer.Text.CAUTIONS),
        PlainWave.parse("a.wav divider 2 full-scale 1", CaptureSetup.NONE, false));
  }

  @Test
  void wordAlone_asksForTheCautions() {
    assertEquals(
        PlainAnswer.show(PlainAnswer.Text.CAUTIONS), PlainWave.parse("", CaptureSetup.NONE, false));
    assertEquals(
        List.of(new Effect.ConfirmCautions()),
        PlainWave.parse("confirm", CaptureSetup.NONE, false).effects());
  }
}
