package loadwalk.report.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.plan.StockRules;
import loadwalk.report.Documents;
import loadwalk.report.FrozenWalks;
import loadwalk.report.page.Walks;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.Rehearsal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole lines of rehearsed walks, laid out for reading. */
class RehearsalSnapshotTest {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private static WalkState state(String walk) {
    return walk.equals("eventful") ? FrozenWalks.eventful() : FrozenWalks.left();
  }

  private static String line(WalkState state) {
    List<Rehearsal.Rehearsed> steps = new ArrayList<>();
    for (PlannedStep step : state.plan()) {
      steps.add(new Rehearsal.Rehearsed(step.id(), forecast(step.id()), doubts(step.id())));
    }
    List<Rehearsal.Problem> problems =
        List.of(
            new Rehearsal.Problem("stereo-4", "supplyVolts", "Type a number with its unit."),
            new Rehearsal.Problem("stereo-3", "", "There is no such step; nearest is stereo-4."));
    return RehearsalJson.line(new Rehearsal.Outcome(steps, problems, state), StockRules.RULES);
  }

  private static Forecast forecast(String step) {
    Optional<Band> watts = Optional.of(new Band(81, 100, 144));
    return new Forecast(
        step,
        0.95,
        Map.of(ReadingId.SUPPLY_AMPS, new Band(30, 40, 81)),
        new Forecast.Demand(
            watts, Optional.of(new Band(162, 200, 288)), watts, Optional.of(new Band(0.1, 0.2, 1))),
        List.of(new Caution("fuse-opens", Verdict.HEED, "The fuse opens\u202e.", 1)),
        Verdict.HEED,
        "as told");
  }

  private static List<Doubt> doubts(String step) {
    Doubt own =
        new Doubt(ReadingId.OUTPUT_VOLTS, Slip.DECIMAL_POINT, "Ten times.", "Look at the range.");
    Doubt earlier =
        new Doubt(
            ReadingId.SUPPLY_AMPS,
            Slip.LOAD_HALF,
            "Off.",
            "Look at the load.",
            Optional.of("idle"));
    return step.equals("stereo-4") ? List.of(own, earlier) : List.of();
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "left"})
  void line_isAsKept(String walk) throws Exception {
    JsonNode line = MAPPER.readTree(line(state(walk)));
    String laidOut = MAPPER.writeValueAsString(line) + "\n";
    Documents.same(walk + "-rehearsal.json", Documents.nineDigits(laidOut));
  }

  @Test
  void line_isOneLine_andSteersNothing() {
    String line = line(FrozenWalks.left());
    assertFalse(line.contains("\n"));
    assertTrue(line.contains("The fuse opens\\u202e."), line);
  }

  /** 0 W of 50 W are no decibels: JSON has no number for minus infinity. */
  @Test
  void outputOfZero_hasARatioAndNoDecibels() throws Exception {
    Walks walk =
        Walks.opened("stereo-only", Walks.halvorsen(), Walks.north(), OptionalLong.empty());
    walk.begin();
    walk.hear(new Intent.EndEarly("steady already"));
    walk.hear(new Intent.Skip("no idle current today"));
    walk.begin();
    walk.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "0.00 V");
    JsonNode result = MAPPER.readTree(line(walk.state())).at("/steps/2/result");
    assertEquals(0, result.at("/watts").asDouble(-1));
    assertEquals(0, result.at("/rating/ratio").asDouble(-1));
    assertEquals("other-conditions", result.at("/rating/verdict").asText());
    assertTrue(result.at("/rating/decibels").isMissingNode(), result.toString());
  }
}
