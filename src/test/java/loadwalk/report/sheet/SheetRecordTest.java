package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Walks;
import loadwalk.result.OutputFit;
import loadwalk.walk.Intent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was typed is printed as typed, and nothing is told that did not happen. */
class SheetRecordTest {
  private static final String TYPED = "éteint, 3 of 5 dB. then no more";

  private static String amended(Walks walk) {
    return Cases.sheet(walk).record().amendments().toString();
  }

  private static Walks atFirstLoad() {
    Walks walk = Cases.warm();
    walk.begin();
    return walk;
  }

  @Test
  void typedText_isQuotedLetterForLetter() throws Exception {
    Walks walk =
        Walks.opened("rated-conditions", Walks.halvorsen(), Walks.north(), OptionalLong.empty());
    walk.begin();
    walk.hear(new Intent.EndEarly(TYPED));
    walk.hear(new Intent.Skip(TYPED));
    walk.hear(new Intent.Note(TYPED));
    walk.begin();
    walk.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "141.4 V");
    walk.standByAll("stereo-4", TYPED);
    walk.hear(new Intent.Finish());
    walk.hear(new Intent.Stop());
    walk.hear(new Intent.ExplainStop(TYPED));
    Sheet sheet = Cases.sheet(walk);
    String text = Cases.text(sheet);
    assertEquals(5, text.split("“" + TYPED + "”", -1).length - 1, text);
    assertFalse(text.contains("Éteint"), text);
    JsonNode json = new ObjectMapper().readTree(SheetJson.text(sheet));
    assertEquals(TYPED, json.at("/stops/0/reason").asText());
    assertEquals("open-load", json.at("/stops/0/step").asText());
    assertEquals("2026-03-14", json.at("/stops/0/at").asText().substring(0, 10));
    assertTrue(text.contains("UTC, open-load: “" + TYPED), text);
  }

  @Test
  void valueTypedAgain_isNoAmendment() {
    Walks walk = atFirstLoad();
    walk.enter("stereo-4", ReadingId.SUPPLY_VOLTS, "14.4 V");
    walk.enter("stereo-4", ReadingId.SUPPLY_VOLTS, "14.4 V");
    assertEquals("[]", amended(walk));
    assertTrue(Cases.text(Cases.sheet(walk)).contains("No reading was entered twice."));
  }

  @Test
  void anotherDigit_orAnotherUnit_isAnAmendment() {
    Walks digit = atFirstLoad();
    digit.enter("stereo-4", ReadingId.SUPPLY_VOLTS, "14.4 V");
    digit.enter("stereo-4", ReadingId.SUPPLY_VOLTS, "14.40 V");
    assertTrue(amended(digit).contains("typed=[14.4 V, 14.40 V]"), amended(digit));
    Walks unit = atFirstLoad();
    unit.enter("stereo-4", ReadingId.OUTPUT_WATTS, "14 W");
    unit.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "14 V");
    assertTrue(amended(unit).contains("typed=[14 W, 14 V]"), amended(unit));
  }

  @Test
  void valueThatCameBack_isToldInFull() {
    Walks walk = atFirstLoad();
    for (String typed : List.of("14.4 V", "13.4 V", "13.4 V", "14.4 V")) {
      walk.enter("stereo-4", ReadingId.SUPPLY_VOLTS, typed);
    }
    assertTrue(amended(walk).contains("typed=[14.4 V, 13.4 V, 14.4 V]"), amended(walk));
  }

  /** Three readings that lie on a curve leave nothing but the rounding of the computation. */
  @ParameterizedTest
  @CsvSource({"2.2e-16, 0.0010", "0, 0.0010", "0.0004, 0.040", "0.044, 4.4"})
  void closenessOfAFit_hasNoMoreDigitsThanAnyMeter(double residual, String percent) {
    Quantity one = Quantity.of(1, Unit.OHM, "r", 0.1);
    OutputFit fit = new OutputFit(one, one, List.of("a", "b", "c"), residual);
    assertEquals("Every reading is within " + percent + " % of it.", ResultWords.closeness(fit));
  }

  /** Nothing was read that an earlier walk repeats: 0.4 % is assumed, and that is said. */
  @Test
  void repeatability_saysWhatItRestsOn() {
    String text = Cases.text(Cases.sheet(Cases.read(Cases.warm(), Map.copyOf(Cases.FINE))));
    assertTrue(
        text.contains(
            "Setting the limit by hand is taken to repeat to 0.40 % of volts (one standard"
                + " deviation), as is common. It is learned once 10 pairs of runs are known."),
        text);
  }
}
