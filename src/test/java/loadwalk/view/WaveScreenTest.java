package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.view.state.WaveFound;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.Capture;
import loadwalk.wave.file.CaptureSetup;
import loadwalk.wave.file.ScopeCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form of a captured wave: every line reaches the reading, and only its own answer counts. */
class WaveScreenTest {

  private static Desk typed(String... lines) {
    Desk desk = MeterSituations.atWaveForm();
    desk.asked();
    for (String line : lines) {
      desk.press("text:" + line, "Down");
    }
    return desk;
  }

  private static CaptureSetup none(int channel) {
    return new CaptureSetup(
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        channel,
        ScopeCsv.Given.NOTHING);
  }

  @Test
  void everyLine_reachesItsPlace() {
    Desk desk = typed("/tmp/a.csv", "1.5 V", "21", "", "0.5", "", "ms", "mV").press("F9");
    CaptureSetup setup =
        new CaptureSetup(
            OptionalDouble.of(1.5),
            OptionalDouble.of(21),
            OptionalDouble.empty(),
            OptionalDouble.of(0.5),
            1,
            new ScopeCsv.Given(Optional.of(1e-3), Optional.of(1e-3), Optional.empty()));
    assertEquals(List.of(new Effect.ReadCapture("/tmp/a.csv", setup, false)), desk.asked());
  }

  @Test
  void knownVoltsAndAnotherChannel_reachTheirPlaces() {
    Desk desk = typed("b.wav", "", "", "13,4").press("Down", "Back", "text:2", "F9");
    CaptureSetup setup =
        new CaptureSetup(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(13.4),
            OptionalDouble.empty(),
            2,
            ScopeCsv.Given.NOTHING);
    assertEquals(List.of(new Effect.ReadCapture("b.wav", setup, false)), desk.asked());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5|1.5|The channel must be a whole number.|> Channel",
        "5|0|Channels are counted from 1, got 0.|> Channel",
        "6|hours|time-unit must be one of s, ms, us, ns; got hours.|> Time unit",
        "7|W|volt-unit must be one of V, mV, kV; got W.|> Volt unit",
        "2|0|The divider ratio must be a number above 0, g|> Divider"
      })
  void wrongLine_isNamed_andTakesTheFocus(int line, String text, String told, String focused) {
    Desk desk = typed("a.wav").press(WalkSituations.times("Up", 1));
    desk.press(WalkSituations.times("Down", line));
    desk.press("End").press(WalkSituations.times("Back", 3)).press("text:" + text);
    desk.press(WalkSituations.times("Up", line)).press("F9");
    String words = desk.words(80, 24);
    assertTrue(words.contains(told), words);
    assertTrue(words.contains(focused), words);
    assertEquals(List.of(), desk.asked());
  }

  @Test
  void answerForAnotherFile_changesNothing() {
    Desk desk = typed("a.wav").press("F9");
    String before = desk.words(80, 24);
    answer(desk, "b.wav");
    assertEquals(before, desk.words(80, 24));
    answer(desk, "a.wav");
    assertTrue(desk.words(80, 24).contains("take it as the reading"), desk.words(80, 24));
  }

  @Test
  void answerThatComesAfterTheFormWasLeft_opensNothing() {
    Desk desk = typed("a.wav").press("F9", "F10");
    answer(desk, "a.wav");
    assertTrue(desk.words(80, 24).contains("stereo-4 running"), desk.words(80, 24));
  }

  private static void answer(Desk desk, String file) {
    Optional<Capture> capture = Optional.of(MeterSituations.capture());
    desk.hears(
        new ProgramEvent.CaptureRead(
            new Effect.ReadCapture(file, none(1), false),
            new WaveFound(capture, none(1), List.of("Output 15.62 V rms."))));
  }

  @Test
  void calibration_isKeptForTheNextWave() {
    Desk desk = typed("a.wav").press("F9");
    CaptureSetup kept =
        new CaptureSetup(
            OptionalDouble.of(1.5),
            OptionalDouble.of(21),
            OptionalDouble.empty(),
            OptionalDouble.of(0.25),
            2,
            new ScopeCsv.Given(Optional.of(1e-6), Optional.of(1e3), Optional.empty()));
    desk.hears(
        new ProgramEvent.CaptureRead(
            new Effect.ReadCapture("a.wav", none(1), false),
            new WaveFound(Optional.of(MeterSituations.capture()), kept, List.of("x"))));
    desk.press("Enter");
    assertEquals(List.of("TakeCapture[step=stereo-4]"), words(desk.asked()).subList(1, 2));
    String form = desk.press("Ctrl-W").words(80, 24);
    for (String line :
        List.of(
            "volts 1.5·",
            "Divider 21·",
            "Known volts ··",
            "Uncertainty 0.25·",
            "Channel 2·",
            "unit us·",
            "unit kV·")) {
      assertTrue(form.contains(line), line + " is not in " + form);
    }
  }

  private static List<String> words(List<Effect> effects) {
    return effects.stream().map(Object::toString).toList();
  }

  private static Capture takenWith(String calibration, OptionalDouble u) {
    Capture c = MeterSituations.capture();
    return new Capture(
        c.file(),
        c.sha256(),
        2,
        c.hertz(),
        c.volts(),
        c.scatterVolts(),
        31.5,
        u,
        calibration,
        c.thdPercent(),
        c.atLimit(),
        c.method(),
        c.shape(),
        c.overdriven(),
        c.cycle(),
        c.harmonics());
  }

  private static String formAfterRestart(Capture... taken) {
    Desk desk = WalkSituations.runningAtFour();
    for (Capture capture : taken) {
      desk.hears(new ProgramEvent.OfWalk(new Intent.TakeCapture("stereo-4", capture, desk.wall())));
    }
    return desk.reopened().press("text:4", "Enter", "Ctrl-W").words(80, 24);
  }

  @Test
  void resumedWalk_hasItsLastCalibration_andItsCautionsRead() {
    assertTrue(formAfterRestart().contains("read and understood"));
    Capture file = takenWith("volts of the file and divider ratio", OptionalDouble.of(0.005));
    Capture known = takenWith("one known voltage", OptionalDouble.empty());
    String divided = formAfterRestart(known, file);
    for (String line : List.of("volts ··", "Divider 31.5·", "Uncertainty 0.5·", "Channel 2·")) {
      assertTrue(divided.contains(line), line + " is not in " + divided);
    }
    String scaled = formAfterRestart(file, known);
    for (String line : List.of("volts 31.5·", "Divider 1·", "Uncertainty ··", "Channel 2·")) {
      assertTrue(scaled.contains(line), line + " is not in " + scaled);
    }
  }
}
