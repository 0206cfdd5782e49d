package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Walks;
import loadwalk.result.PublishedPower;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

class SheetJsonTest {
  private final ObjectMapper mapper = new ObjectMapper();

  @Test
  void numbers_comeBackExactly() throws Exception {
    Sheet sheet = Sheet.of(Walks.practice(1, "full-walk"), SheetOptions.DEFAULT, StockRules.RULES);
    JsonNode json = mapper.readTree(SheetJson.text(sheet));
    assertEquals("loadwalk-sheet/1", json.get("format").asText());
    assertEquals(7, json.get("loads").size());
    for (int i = 0; i < sheet.loads().size(); i++) {
      PublishedPower power = sheet.loads().get(i).power();
      JsonNode load = json.get("loads").get(i);
      assertEquals(power.watts().value(), load.get("watts").get("value").asDouble());
      assertEquals(power.watts().u(), load.get("watts").get("u").asDouble());
      assertEquals(power.totalWatts().value(), load.get("totalWatts").get("value").asDouble());
    }
  }

  @Test
  void readings_carryTypedTextAndValue() throws Exception {
    JsonNode json = mapper.readTree(SheetJson.text(eventful()));
    JsonNode step = json.get("steps").get(3);
    assertEquals("stereo-2", step.get("step").asText());
    assertEquals("15.0 V", step.at("/readings/outputVolts/typed").asText());
    assertEquals(15, step.at("/readings/outputVolts/value").asDouble());
    assertEquals("amended", json.at("/doubts/0/answer").asText());
    assertEquals("150 V", json.at("/amended/0/typed/0").asText());
  }

  @Test
  void serialNumber_isLeftOutUnlessAsked() throws Exception {
    assertFalse(SheetJson.text(eventful()).contains("HP-000417"));
    WalkState state = Walks.eventful().state();
    String shown = SheetJson.text(Sheet.of(state, new SheetOptions(true), StockRules.RULES));
    assertEquals("HP-000417", mapper.readTree(shown).at("/amplifier/serial").asText());
    assertTrue(mapper.readTree(SheetJson.text(eventful())).get("serialKeptBack").asBoolean());
  }

  private static Sheet eventful() {
    return Sheet.of(Walks.eventful().state(), SheetOptions.DEFAULT, StockRules.RULES);
  }
}
