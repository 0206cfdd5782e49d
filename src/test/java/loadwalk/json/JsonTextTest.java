package loadwalk.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonTextTest {

  @Test
  void read_remembersLineAndColumnOfKeysAndValues() {
    Node.Obj root = good("{\n  \"ohms\": 4,\n  \"list\": [\"a\", true, null]\n}");
    Node.Member ohms = root.members().get("ohms");
    assertEquals(new Node.Place(2, 3), ohms.keyPlace());
    assertEquals(new Node.Num(new Node.Place(2, 11), 4), ohms.value());
    Node.Arr list = assertInstanceOf(Node.Arr.class, root.get("list").orElseThrow());
    assertEquals(new Node.Place(3, 11), list.place());
    assertEquals(new Node.Bool(new Node.Place(3, 17), true), list.items().get(1));
    assertEquals("null", list.items().get(2).kind());
  }

  @Test
  void read_countsColumnsInCharactersNotBytes() {
    Node.Obj root = good("{\"Ω\": \"½½\", \"key\": 1}");
    assertEquals(new Node.Place(1, 13), root.members().get("key").keyPlace());
  }

  @Test
  void read_ofNegativeZero_givesZero() {
    Node.Num number = assertInstanceOf(Node.Num.class, good("{\"a\":-0.0}").get("a").get());
    assertEquals(0, Double.compare(0.0, number.value()));
  }

  @Test
  void read_ofALaterLine_countsFromThere() {
    Read<Node> read = new JsonText("walks.jsonl", false, 17).read("{\"a\" 1}");
    assertEquals(17, faults(read).get(0).line());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\":1|1|the text ends too early",
        "{\"a\":\"x|1|the closing double quote is missing",
        "{\"a\":1}}|1|this closing bracket does not match",
        "{\"a\":1} {\"b\":2}|1|there is more text after the end",
        "{\"a\":1 \"b\":2}|1|a comma or a closing bracket is missing",
        "{\"a\" 1}|1|a colon is missing",
        "{a:1}|1|a key in double quotes",
        "{'a':1}|1|a key in double quotes",
        "{\"a\":NaN}|1|no meter reads NaN or Infinity",
        "{\"a\":Infinity}|1|no meter reads NaN or Infinity",
        "{\"a\":-Infinity}|1|no meter reads NaN or Infinity",
        "{\"a\":1e400}|1|out of range",
        "{\"a\":1e-400}|1|out of range",
        "{\"a\":1e99999999999999}|1|out of range",
        "{\"a\":01}|1|a number must not have leading zeros",
        "{\"a\":.5}|1|expected text in double quotes",
        "{\"a\":1,}|1|a key in double quotes",
        "{\"a\":[1,]}|1|expected text in double quotes",
        "{\"a\":1] |1|this closing bracket does not match",
        "{\"a\":\"\\ud800\"}|1|half a character",
        "{\"a\\ud800\":1}|1|half a character",
        "{\"a\":\"\\x\"}|1|JSON does not know this escape",
        "{\"a\":1 // why}|1|takes no comments",
        "{\"a\":yes}|1|expected text in double quotes, a number",
        "{\"a\":1,\"a\":2}|1|appears twice, first in line 1"
      })
  void read_ofWhatIsNotStrict_givesOneFault(String text, int line, String part) {
    List<Fault> faults = faults(JsonText.strict("x.json").read(text));
    assertEquals(1, faults.size(), text);
    assertEquals(line, faults.get(0).line());
    assertTrue(faults.get(0).sentence().contains(part), text + " -> " + faults.get(0));
  }

  @Test
  void read_ofNothing_saysSo() {
    assertEquals(
        "x.json:1:1: the file is empty", faults(JsonText.strict("x.json").read("")).get(0).text());
    assertEquals(1, faults(JsonText.strict("x.json").read(new byte[0])).size());
  }

  @Test
  void read_withComments_passesThemOver() {
    String text = "// head\n{ /* in */ \"a\": 1 } // tail\n";
    assertInstanceOf(Read.Good.class, JsonText.commented("x.json").read(text));
    assertInstanceOf(Read.Bad.class, JsonText.strict("x.json").read(text));
  }

  @Test
  void read_ofDuplicates_reportsEachWithItsPlace() {
    List<Fault> faults = faults(JsonText.strict("x").read("{\"a\":1,\n\"a\":2,\n\"a\":3}"));
    assertEquals(List.of(2, 3), faults.stream().map(Fault::line).toList());
    assertEquals("a", faults.get(0).key());
  }

  @Test
  void read_ofDeepNesting_stopsAtTheLimit() {
    String deep = "[".repeat(JsonText.DEEPEST) + "]".repeat(JsonText.DEEPEST);
    assertInstanceOf(Read.Good.class, JsonText.strict("x").read(deep));
    assertTrue(
        faults(JsonText.strict("x").read("[" + deep + "]")).get(0).text().contains("nested"));
    assertTrue(
        faults(JsonText.strict("x").read("[".repeat(1_000_000))).get(0).text().contains("nested"));
    assertTrue(
        faults(JsonText.strict("x").read("{\"a\":".repeat(500_000)))
            .get(0)
            .text()
            .contains("nest"));
  }

  @Test
  void read_ofTooMuch_isRefusedBeforeItIsParsed() {
    byte[] large = new byte[JsonText.LARGEST + 1];
    assertTrue(faults(JsonText.strict("x").read(large)).get(0).text().contains("4 MiB"));
    String digits = "[" + "1".repeat(3_000_000) + "]";
    assertTrue(faults(JsonText.strict("x").read(digits)).get(0).text().contains("long"));
  }

  @Test
  void read_ofByteOrderMarks_takesUtf8Only() {
    byte[] marked = "\uFEFF{\"a\":1}".getBytes(StandardCharsets.UTF_8);
    Read<Node> read = JsonText.strict("x").read(marked);
    Node.Obj root = assertInstanceOf(Node.Obj.class, read.found().orElseThrow());
    assertEquals(new Node.Place(1, 2), root.members().get("a").keyPlace());
    byte[] wide = "{\"a\":1}".getBytes(StandardCharsets.UTF_16);
    assertTrue(faults(JsonText.strict("x").read(wide)).get(0).text().contains("UTF-16"));
  }

  @Test
  void read_ofBytesThatAreNotUtf8_saysWhere() {
    byte[] bytes = "{\n\"a\": \"?\"}".getBytes(StandardCharsets.UTF_8);
    bytes[8] = (byte) 0xE9;
    Fault fault = faults(JsonText.strict("x").read(bytes)).get(0);
    assertEquals("x:2:7: the file is not UTF-8 from here on; save the file as UTF-8", fault.text());
  }

  private static Node.Obj good(String text) {
    Read<Node> read = JsonText.strict("x.json").read(text);
    return assertInstanceOf(Node.Obj.class, read.found().orElseThrow());
  }

  private static List<Fault> faults(Read<Node> read) {
    assertInstanceOf(Read.Bad.class, read);
    return read.faults();
  }
}
