package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.report.page.Walks;
import loadwalk.walk.Intent;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The conditions of a result are what was read; what nobody read says so, or is null. */
class SheetConditionsTest {
  /** The keys that the contract names, and those beside them. */
  private static final List<String> KEYS =
      List.of(
          "section",
          "mode",
          "ohms",
          "ohmsRead",
          "driven",
          "channelsRead",
          "hertz",
          "criterion",
          "thdPercent",
          "thdKind",
          "supplyVolts",
          "warm",
          "heldSeconds",
          "ambientCelsius",
          "readBy");

  private static final List<String> BESIDE = List.of("criterionSaid", "thdBandwidthHertz");

  private static Walks full() {
    return Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.LOAD_OHMS, "3.97 ohm")));
  }

  /** The output in watts alone: nothing else was read. */
  private static Walks bare() {
    return Cases.read(Cases.warm(), Map.of(ReadingId.OUTPUT_WATTS, "50 W"));
  }

  private static JsonNode json(Walks walk) throws Exception {
    return new ObjectMapper().readTree(SheetJson.text(Cases.sheet(walk)));
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void json_hasEveryKey_forLoadsAndForSteps() throws Exception {
    for (Walks walk : List.of(full(), bare())) {
      JsonNode sheet = json(walk);
      for (JsonNode conditions : sheet.findValues("conditions")) {
        List<String> keys = keys(conditions);
        assertTrue(keys.containsAll(KEYS), keys.toString());
        keys.removeAll(KEYS);
        assertEquals(BESIDE, keys);
      }
      assertEquals(2, sheet.findValues("conditions").size(), "one load and one step");
    }
  }

  @Test
  void json_holdsWhatWasRead() throws Exception {
    JsonNode read = json(full()).at("/loads/0/conditions");
    assertEquals(3.97, read.get("ohmsRead").asDouble());
    assertEquals(1000, read.get("hertz").asDouble());
    assertEquals(0.98, read.get("thdPercent").asDouble());
    assertEquals(14.4, read.get("supplyVolts").asDouble());
    assertEquals(2, read.get("channelsRead").asInt());
    assertEquals("thd-limit", read.get("criterion").asText());
    assertTrue(read.get("warm").isBoolean() && read.get("warm").asBoolean());
    assertEquals("hand", read.get("readBy").asText());
  }

  /** 14.4 V, 1 kHz and 1 % were asked for and not read: they are nowhere in the conditions. */
  @Test
  void json_hasNullWhereNobodyRead_neverWhatWasAskedFor() throws Exception {
    JsonNode read = json(bare()).at("/loads/0/conditions");
    for (String key :
        List.of("section", "ohmsRead", "hertz", "thdPercent", "thdKind", "supplyVolts")) {
      assertTrue(read.get(key).isNull(), key + " in " + read);
    }
    assertTrue(read.get("ambientCelsius").isNull(), read.toString());
    assertEquals("not-known", read.get("criterion").asText());
    assertEquals(1, read.get("channelsRead").asInt());
  }

  @Test
  void text_saysNotReadWhereNobodyRead() {
    String bare = Cases.text(Cases.sheet(bare()));
    assertTrue(bare.contains("stereo-4 not read not read not read not read not known"), bare);
    String full = Cases.text(Cases.sheet(full()));
    assertTrue(full.contains("stereo-4 3.97 Ω 1 kHz 14.4 V 0.98 %, kind"), full);
    assertTrue(full.contains("Supply asked for 14.4 V at the amplifier's terminals"), full);
    assertFalse(full.contains("Nominal supply"), full);
  }

  @Test
  void csv_hasTheKeysOfJson_andEmptyCellsWhereNobodyRead() throws Exception {
    List<String> found = new ArrayList<>();
    try (CSVParser csv =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(SheetCsv.text(Cases.sheet(bare()))))) {
      for (CSVRecord row : csv) {
        if (row.get("section").equals("conditions")) {
          found.add(row.get("name"));
          boolean empty = row.get("value").isEmpty() && row.get("text").isEmpty();
          boolean unread = List.of("supplyVolts", "thdPercent", "hertz").contains(row.get("name"));
          assertTrue(empty || !unread, row.toString());
        }
      }
    }
    assertEquals(keys(json(bare()).at("/loads/0/conditions")), found);
  }

  @Test
  void controls_areToldAsTyped_orNotKnown() throws Exception {
    assertTrue(
        Cases.text(Cases.sheet(bare())).contains("Gain and controls not known"),
        Cases.text(Cases.sheet(bare())));
    Walks walk = bare();
    walk.hear(new Intent.SayControls("gain at 2 o'clock, crossover off"));
    String text = Cases.text(Cases.sheet(walk));
    assertTrue(text.contains("Gain and controls “gain at 2 o'clock, crossover off”"), text);
    assertEquals("gain at 2 o'clock, crossover off", json(walk).get("controls").asText());
  }
}
