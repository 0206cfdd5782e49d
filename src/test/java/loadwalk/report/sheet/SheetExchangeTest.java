package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.quantity.Printer;
import loadwalk.report.Hostile;
import loadwalk.report.page.CsvText;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.result.PublishedPower;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

/** Reads sheets with other people's readers and finds the values again. */
class SheetExchangeTest {
  private static final Sheet WHOLE =
      Sheet.of(Walks.practice(1, "full-walk"), SheetOptions.DEFAULT, StockRules.RULES);
  private static final Sheet EVENTFUL =
      Sheet.of(Walks.eventful().state(), SheetOptions.DEFAULT, StockRules.RULES);
  private static final Sheet UNFINISHED =
      Sheet.of(
          Walks.practicing(2, "full-walk").oneStep().oneStep().state(),
          SheetOptions.DEFAULT,
          StockRules.RULES);

  private final ObjectMapper mapper = new ObjectMapper();

  @Test
  void json_keepsToItsSchema() throws Exception {
    JsonSchema schema = schema();
    for (Sheet sheet :
        List.of(
            WHOLE,
            EVENTFUL,
            UNFINISHED,
            Sheet.of(Hostile.walk(), SheetOptions.DEFAULT, StockRules.RULES))) {
      assertEquals(Set.of(), schema.validate(mapper.readTree(SheetJson.text(sheet))));
    }
  }

  @Test
  void schema_refusesWhatIsNoSheet() throws Exception {
    JsonSchema schema = schema();
    JsonNode good = mapper.readTree(SheetJson.text(WHOLE));
    for (String key : List.of("format", "loads", "doubts", "sequence", "standards")) {
      ObjectNode without = good.deepCopy();
      without.remove(key);
      assertFalse(schema.validate(without).isEmpty(), key + " may not be missing");
    }
    for (String key : List.of("conditions", "marks", "runs", "totalWatts")) {
      ObjectNode without = good.deepCopy();
      ((ObjectNode) without.at("/loads/0")).remove(key);
      assertFalse(schema.validate(without).isEmpty(), key + " of a load may not be missing");
    }
    for (String key : keys(good.at("/loads/0/conditions"))) {
      ObjectNode without = good.deepCopy();
      ((ObjectNode) without.at("/loads/0/conditions")).remove(key);
      assertFalse(schema.validate(without).isEmpty(), key + " may not be missing");
    }
    ObjectNode more = good.deepCopy();
    more.put("loudness", 11);
    assertFalse(schema.validate(more).isEmpty());
    ObjectNode negative = good.deepCopy();
    ((ObjectNode) negative.at("/loads/0/watts")).put("u", -1);
    assertFalse(schema.validate(negative).isEmpty());
  }

  /** The schema knows every reading by its id, and no other. */
  @Test
  void schema_namesEveryReading() throws Exception {
    JsonNode schema =
        mapper.readTree(getClass().getResourceAsStream("/loadwalk/schema/sheet.schema.json"));
    List<String> named = new ArrayList<>();
    schema.at("/$defs/reading/enum").forEach(id -> named.add(id.asText()));
    assertEquals(Arrays.stream(ReadingId.values()).map(ReadingId::key).toList(), named);
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static JsonSchema schema() {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(
            SheetExchangeTest.class.getResourceAsStream("/loadwalk/schema/sheet.schema.json"));
  }

  @Test
  void csv_valuesComeBackExactly() throws Exception {
    List<String> found = new ArrayList<>();
    try (CSVParser csv =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(SheetCsv.text(WHOLE)))) {
      for (CSVRecord row : csv) {
        if (row.get("section").equals("power") && row.get("name").equals("watts")) {
          PublishedPower power = WHOLE.result().published().get(row.get("step"));
          assertEquals(power.watts().value(), Double.parseDouble(row.get("value")));
          assertEquals(power.watts().u(), Double.parseDouble(row.get("u")));
          assertEquals("W", row.get("unit"));
          found.add(row.get("step"));
        }
      }
    }
    assertEquals(List.copyOf(WHOLE.result().published().keySet()), found);
  }

  @Test
  void csv_textWithQuotesAndCommas_comesBack() throws Exception {
    CsvText out = new CsvText();
    out.row("a \"quoted\" word", "one, two", "plain", "");
    try (CSVParser csv = CSVFormat.RFC4180.parse(new StringReader(out.text()))) {
      List<String> cells = csv.getRecords().get(0).toList();
      assertEquals(List.of("a \"quoted\" word", "one, two", "plain", ""), cells);
    }
  }

  @Test
  void markdown_tablesHoldTheValues() {
    Parser parser = Parser.builder().extensions(List.of(TablesExtension.create())).build();
    Tables tables = new Tables();
    parser.parse(Sheets.markdown(WHOLE)).accept(tables);
    List<List<String>> headline = tables.all.get(0);
    assertEquals("Load", headline.get(0).get(0));
    assertEquals(1 + WHOLE.loads().size(), headline.size());
    for (int i = 0; i < WHOLE.loads().size(); i++) {
      PublishedPower power = WHOLE.loads().get(i).power();
      assertEquals(ResultWords.load(power.mode(), power.ohms()), headline.get(i + 1).get(0));
      assertEquals(Printer.UTF8.quantity(power.totalWatts()), headline.get(i + 1).get(1));
      for (int c = 0; c < power.channelWatts().size() && power.mode() == Mode.STEREO; c++) {
        String channel = Printer.UTF8.quantity(power.channelWatts().get(c));
        assertEquals(channel, headline.get(i + 1).get(2 + c));
      }
    }
    long rows = WHOLE.steps().stream().mapToLong(s -> s.readings().size()).sum();
    assertTrue(tables.all.stream().anyMatch(t -> t.size() == rows + 1), "the table of readings");
  }

  /** Reads the texts of all table cells. */
  private static final class Tables extends AbstractVisitor {
    final List<List<List<String>>> all = new ArrayList<>();

    @Override
    public void visit(CustomBlock block) {
      if (block instanceof TableBlock) {
        all.add(new ArrayList<>());
      }
      visitChildren(block);
    }

    @Override
    public void visit(CustomNode node) {
      if (node instanceof TableRow) {
        all.get(all.size() - 1).add(new ArrayList<>());
      }
      if (node instanceof TableCell) {
        List<List<String>> table = all.get(all.size() - 1);
        table.get(table.size() - 1).add(text(node));
      } else {
        visitChildren(node);
      }
    }

    private static String text(Node node) {
      StringBuilder text = new StringBuilder();
      for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
        text.append(child instanceof Text t ? t.getLiteral() : text(child));
      }
      return text.toString();
    }
  }
}
