package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import org.junit.jupiter.api.Test;

/** What a brief adds to the forecast: a doubt left open, warmth lost. */
class BriefingTest {
  private final Floor floor = new Floor();

  private Forecast brief(String step) {
    return floor.step(step).brief().orElseThrow();
  }

  private static List<String> codes(Forecast brief) {
    return brief.cautions().stream().map(Caution::code).toList();
  }

  private void cooled() {
    floor.hear(new Intent.Begin()).letPass(20);
    floor.hear(new Intent.Pause()).letPass(3600).hear(new Intent.Resume());
    floor.hear(new Intent.Skip("not for this test"));
  }

  @Test
  void amplifierThatCooled_isToldBeforeAMeasurement_andNotBeforeIdle() {
    cooled();
    assertEquals("idle", floor.model.state().currentId());
    assertEquals(List.of(), codes(brief("idle")));
    floor.at("stereo-4");
    Caution cooled = brief("stereo-4").cautions().get(0);
    assertEquals("cooled", cooled.code());
    assertTrue(cooled.text().contains("has cooled"), cooled.text());
    assertEquals(Verdict.HEED, brief("stereo-4").verdict());
    floor.at("stereo-1").hear(new Intent.Arm("1"));
    floor.hear(new Intent.Enter("stereo-1", ReadingId.OUTPUT_VOLTS, "9"));
    floor.hear(new Intent.Finish()).at("recheck");
    assertEquals(List.of("cooled"), codes(brief("recheck")));
  }

  @Test
  void amplifierWarmedAgain_isNotToldToBeCold() {
    cooled();
    floor.at("stereo-4").hear(new Intent.WarmAgain()).hear(new Intent.Begin());
    floor.hear(new Intent.EndEarly("warm enough"));
    assertEquals("stereo-4", floor.model.state().currentId());
    assertEquals(List.of(), codes(brief("stereo-4")));
  }

  /** Gravest first, then the one whose limit is nearest. */
  @Test
  void cautionsAdded_areSortedIn() {
    cooled();
    floor.at("stereo-4", Verdict.HEED).hear(new Intent.Arm("4"));
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "1.3"));
    floor.hear(new Intent.Finish());
    assertEquals(List.of("test", "doubt-open", "cooled"), codes(brief("bridged-4")));
    assertEquals(
        "The doubt on stereo-4, output volts, is not answered yet. Heavy steps wait until it is.",
        brief("bridged-4").cautions().get(1).text());
    floor.severity = 0.5;
    floor.at("bridged-2");
    assertEquals(List.of("doubt-open", "cooled", "test"), codes(brief("bridged-2")));
    floor.at("stereo-1", Verdict.HALT);
    assertEquals(Verdict.HALT, brief("stereo-1").verdict());
    assertEquals("test", codes(brief("stereo-1")).get(0));
  }

  @Test
  void doubtOnTheStepItself_isNoCautionOfIts() {
    floor.at("stereo-4");
    floor.doubted = List.of(ReadingId.LOAD_OHMS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "9"));
    assertEquals(List.of(), codes(brief("stereo-4")));
  }

  @Test
  void stepWithoutALoad_saysWhyNothingIsForecast() {
    floor.at("recheck");
    assertEquals("There is no measured step to recheck yet.", brief("recheck").basis());
    Floor noted =
        new Floor(
            """
            {"format":"loadwalk-sequence/1","name":"n","title":"N","tone":{"hertz":40},
             "limit":{"thdPercent":1.0},"supplyVolts":13.8,
             "steps":[{"do":"note","text":"Look."},{"do":"measure","mode":"stereo","ohms":4}]}
            """);
    assertTrue(
        noted.step("note").brief().orElseThrow().basis().startsWith("This step drives no load"));
  }
}
