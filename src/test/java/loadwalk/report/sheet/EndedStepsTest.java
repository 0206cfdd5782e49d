package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import loadwalk.bench.Mode;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.walk.Intent;
import org.junit.jupiter.api.Test;

/** A step that ended before its limit has a row of its own on the sheet, and no result. */
class EndedStepsTest {
  /** At 4 Ω the amplifier shuts itself off at 41.2 A, 18 V on channel 1: 81 W, rated 50 W. */
  private static Walks shutOff(Outcome outcome) {
    Walks walk = Cases.warm();
    walk.begin();
    walk.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "18 V");
    walk.enter("stereo-4", ReadingId.SUPPLY_AMPS, "41.2 A");
    walk.hear(new Intent.EndAs(outcome, "red lamp"));
    return walk;
  }

  @Test
  void row_saysOutcomeCurrentAndLastReadings_andJudgesNoRating() {
    Sheet sheet = Cases.sheet(Cases.ended(shutOff(Outcome.PROTECTED)));
    String text = String.join(" ", Sheets.lines(sheet, 200, false)).replaceAll("\\s+", " ");
    assertTrue(text.contains("No output measured yet."), text);
    assertTrue(
        text.contains("protected at 41.2 A output volts 18 V 50 W, neither met nor missed"), text);
    assertTrue(text.contains("stereo-4, seen: “red lamp"), text);
    assertEquals(List.of(), sheet.loads());
    assertFalse(text.contains("81 W"), text);
  }

  @Test
  void amplifierThatGaveOut_isToldFirst() {
    assertEquals(
        "The amplifier gave out at stereo-4.",
        Cases.sheet(shutOff(Outcome.GAVE_OUT)).warnings().get(0));
    assertFalse(Cases.sheet(shutOff(Outcome.PROTECTED)).warnings().toString().contains("gave out"));
  }

  @Test
  void json_holdsTheOutcomeOfEachStep_byItsSchema() throws Exception {
    String text = SheetJson.text(Cases.sheet(Cases.ended(shutOff(Outcome.FUSE_OPENED))));
    JsonNode json = new ObjectMapper().readTree(text);
    assertEquals("fuse-opened", json.at("/ended/0/outcome").asText());
    assertEquals("stereo-4", json.at("/ended/0/step").asText());
    assertEquals(41.2, json.at("/ended/0/readings/supplyAmps").asDouble());
    assertEquals(50, json.at("/ended/0/ratedWatts").asDouble());
    Set<String> outcomes =
        StreamSupport.stream(json.get("steps").spliterator(), false)
            .map(step -> step.at("/outcome").asText())
            .collect(Collectors.toSet());
    assertTrue(
        outcomes.containsAll(Set.of("measured", "fuse-opened", "skipped")), outcomes::toString);
    assertEquals(
        Set.of(),
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(
                EndedStepsTest.class.getResourceAsStream("/loadwalk/schema/sheet.schema.json"))
            .validate(json));
    for (String value : List.of("/steps/2/result", "/loads/0")) {
      assertTrue(json.at(value).isMissingNode(), value);
    }
  }

  @Test
  void csv_holdsTheOutcome() {
    String csv = SheetCsv.text(Cases.sheet(shutOff(Outcome.NOT_REACHED)));
    assertTrue(csv.contains("step,stereo-4,outcome,,,,not-reached"), csv);
    assertTrue(csv.contains("ended,stereo-4,not-reached,,,,red lamp"), csv);
  }

  @Test
  void doubtOfAStepThatEnded_isAnsweredByThat() {
    Walks walk = Cases.warm();
    walk.begin();
    walk.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "1.414 V");
    walk.enter("stereo-4", ReadingId.SUPPLY_AMPS, "12 A");
    assertFalse(walk.state().openDoubts().isEmpty());
    walk.hear(new Intent.EndAs(Outcome.PROTECTED, ""));
    Sheet sheet = Cases.sheet(walk);
    assertEquals(Sheet.Answer.ENDED, sheet.record().doubts().get(0).answer());
    assertTrue(Cases.text(sheet).contains("The step ended before its limit."));
  }

  @Test
  void ledger_knowsTheOutcome_andRanksNothing() {
    LedgerEntry entry =
        LedgerEntry.of(Cases.ended(shutOff(Outcome.PROTECTED)).state(), StockRules.RULES);
    assertEquals(List.of(new LedgerEntry.Ended(Mode.STEREO, 4, Outcome.PROTECTED)), entry.ended());
    assertEquals(List.of(), entry.loads());
  }

  @Test
  void warmUpThatEnded_isNoLoadOfTheLedger() {
    Walks walk =
        Walks.opened("rated-conditions", Walks.halvorsen(), Walks.north(), OptionalLong.empty());
    walk.begin();
    walk.hear(new Intent.EndAs(Outcome.PROTECTED, ""));
    assertEquals(1, Cases.sheet(walk).record().ended().size());
    assertEquals(List.of(), LedgerEntry.of(walk.state(), StockRules.RULES).ended());
  }
}
