package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real amplifier typed in through the forms, with a halt, skips and notes. */
class RealAmplifierScenarioTest {
  @TempDir Path folder;

  private BenchSide described() {
    BenchSide bench = BenchSide.at(folder).press("Down", "Enter").sees("Which sequence?");
    bench.press("Down", "Enter").sees("a new amplifier").press("Enter").sees("maker: required");
    bench.press("F9").sees("The maker is required.").press("text:Brightmoor", "Enter");
    bench.press("text:B-70 II", "Enter", "Enter", "text:19x4", "F9").sees("> year");
    bench.press("Back", "Back", "text:94", "Enter", "text:AB", "Enter", "text:2", "Enter");
    bench.press("text:stereo 4 70 W at 13.8 V 1 %", "Enter", "text:4", "Enter", "Enter");
    bench.press("text:30 30", "Enter", "text:perhaps", "F9").sees("Type yes or no");
    for (int i = 0; i < "perhaps".length(); i++) {
      bench.press("Back");
    }
    bench.press("text:no", "F9").sees("Which bench?").press("Enter");
    bench.press("text:North bench", "Enter", "text:13.8 V 60 A; 13.8 V 40", "F9");
    bench.sees("«13.8 V 40» is not understood").press("text: A", "Enter");
    bench.press("text:plus AWG 4 1.5 m; minus 25 mm2 1.5 m x2", "Enter", "text:100", "Enter");
    bench.press("text:4 ohm 5 % 100 W x4", "Enter");
    bench.press("text:DMM outputVolts 0.8 % 3 digits 0.01 45-1000 Hz", "F9");
    return bench.sees("start the walk").press("Enter").sees("Brightmoor B-70 II", "stereo-only");
  }

  @Test
  void amplifierFromTheForms_isWalked_withSkipNoteAndALiftedHalt() {
    BenchSide bench = described();
    assertEquals(List.of(30.0, 30.0), bench.model().state().opened().amplifier().fuses());
    assertEquals(2, bench.model().state().opened().bench().supplies().size());
    bench.press("F8").sees("No meter is connected; type the readings.");
    bench.press("F2", "text:dust in the fan, blown out", "Enter");
    assertEquals(1, bench.model().state().notes().size());
    bench.press("F3", "text:..", "Enter").sees("Give a reason in words to skip this step");
    bench.press("text:warm from the car", "Enter").sees("-warm-up", "idle brief");
    bench.press("Enter", "text:1,4", "Enter", "F9").sees("stereo-4 brief");
    bench.press("text:4", "Enter", "text:70 W", "Enter").sees("stereo-4 running");
    bench.press("F9").sees("stereo-2 brief: HALT", "F7 lift");
    bench.press("text:2", "Enter").sees("Halt: do not connect this");
    bench.press("F7", "text:  ", "Enter").sees("Give a reason in words to lift a halt");
    assertEquals(Status.BRIEFED, bench.step("stereo-2").status());
    bench.press("text:owner wants it, repaired output stage", "Enter").seesNot("F7 lift");
    bench.press("Enter").sees("Nothing was typed").press("text:2", "Enter");
    bench.sees("stereo-2 running").journalTellsTheSame();
    List<Fact> facts = bench.facts().stream().map(Stamped::fact).toList();
    int lifted = firstOf(facts, Fact.HaltLifted.class);
    assertTrue(lifted > 0 && lifted < facts.indexOf(new Fact.Begun("stereo-2")));
    bench.press("F4").sees("70 W", "1.4 A");
  }

  private static int firstOf(List<Fact> facts, Class<? extends Fact> kind) {
    return facts.indexOf(facts.stream().filter(kind::isInstance).findFirst().orElseThrow());
  }

  @Test
  void cautionsThatHaveNoRoom_areShownWholeByHelp() {
    BenchSide bench = described();
    bench.press("F3", "text:warm from the car", "Enter", "Enter", "text:1,4", "Enter", "F9");
    bench.press("text:4", "Enter", "text:70 W", "Enter", "F9").sees("stereo-2 brief: HALT");
    Forecast brief = bench.step("stereo-2").brief().orElseThrow();
    bench.press("F1").sees("Cautions for stereo-2, worst first:");
    for (Caution caution : brief.cautions()) {
      String[] words = caution.text().split(" ");
      bench.sees(caution.gravity().word().toUpperCase(Locale.ROOT) + " " + words[0]);
      bench.sees(words[words.length - 2] + " " + words[words.length - 1]);
    }
    bench.press("Enter").sees("stereo-2 brief: HALT");
  }

  @Test
  void sequenceFilesThatAreNotOffered_areNamedWhereTheyAreMissed() throws IOException {
    Path sequences = Files.createDirectories(folder.resolve("sequences"));
    String stock = Files.readString(Path.of("sequences", "stereo-only.json"));
    Files.writeString(sequences.resolve("copied.json"), stock);
    Files.writeString(sequences.resolve("mine.json"), stock.replace("stereo-only", "mine"));
    BenchSide bench = BenchSide.at(folder).press("Down", "Enter").sees("mine Stereo only");
    bench.sees("Not offered: copied.json:3:11: «name» is «stereo-only»", "See loadwalk check.");
    Files.writeString(sequences.resolve("broken.json"), "{");
    Files.write(sequences.resolve("huge.json"), new byte[(1 << 20) + 1]);
    BenchSide.at(folder).press("Down", "Enter").sees("Not offered: broken.json", ", and 2 more");
  }

  /** None of the stock sequences is offered: the operator's own may have their names. */
  @Test
  void folderOfSequencesThatIsNotThereNow_isNamed_andNothingStandsInForIt() throws IOException {
    Files.createSymbolicLink(folder.resolve("sequences"), folder.resolve("not plugged in"));
    String told = "Not offered: sequences is a link that leads nowhere. See";
    BenchSide.at(folder).press("Down", "Enter").sees(told).seesNot("full-walk").press("Enter");
    BenchSide.at(folder).press("Enter").sees(told).seesNot("full-walk").press("Enter", "Enter");
  }

  @Test
  void goingBackFromAForm_losesNothingOfIt() {
    BenchSide bench = BenchSide.at(folder).press("Down", "Enter", "Enter", "Enter");
    bench.press("text:Brightmoor", "Enter", "text:B-70", "F10").sees("the amplifier just typed");
    bench.press("F10", "Enter", "Enter").sees("Brightmoor", "B-70").press("F9");
    bench.press("Enter", "text:North bench", "Enter", "text:13.8 V 60 A", "F9").sees("Ready");
    bench.press("F10", "Enter").sees("North bench", "13.8 V 60 A").press("F9", "Enter");
    bench.sees("warm-up brief");
  }

  @Test
  void formThatAJournalCouldNotHold_beginsNoWalk() {
    BenchSide bench = BenchSide.at(folder).press("Down", "Enter", "Enter", "Enter");
    bench.press("text:Brightmoor", "Enter", "text:B-70", "Enter", "Enter", "text:3", "F9");
    bench.sees("> year", "«year» must be between 1900 and 2200, not 3.").press("Back", "text:1994");
    bench.press("F9").sees("Which bench?");
  }

  @Test
  void describedOnce_amplifierAndBenchAreOfferedForTheNextWalk() {
    BenchSide bench = described();
    bench.press("F10").sees("Resume").press("Down", "Enter", "Enter").sees("Brightmoor B-70 II");
    bench.press("Down", "Enter").sees("stereo 4 70 W at 13.8 V 1 %", "1994").press("F9");
    bench.sees("North bench").press("Down", "Enter").sees("minus 25 mm2 1.5 m x2").press("F9");
    bench.press("Enter").sees("full-walk", "warm-up brief");
    assertEquals(
        List.of(), bench.typed("warm-up", ReadingId.SINK_CELSIUS), "a new walk starts empty");
  }
}
