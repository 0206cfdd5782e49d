package loadwalk.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class FieldsTest {
  private final Faults faults = new Faults("x.json");

  @Test
  void build_ofAGoodObject_makesTheRecord() {
    Fields fields =
        open("{\"n\":4,\"i\":3,\"t\":\"a\",\"b\":true,\"u\":null,\"l\":[1,2],\"w\":\"one\"}");
    assertEquals(OptionalDouble.of(4), fields.number("n", 0, 10));
    assertEquals(OptionalLong.of(3), fields.whole("i", 0, 10));
    assertEquals(Optional.of("a"), fields.text("t"));
    assertEquals(Optional.of(true), fields.flag("b"));
    assertEquals(Optional.empty(), fields.flag("u"));
    assertEquals(List.of(1.0, 2.0), fields.numbers("l", 0, 10));
    assertEquals(Optional.of(1), fields.word("w", Map.of("one", 1, "two", 2)));
    assertEquals(OptionalDouble.empty(), fields.number("absent", 0, 1));
    assertEquals(Optional.of("made"), fields.build(() -> "made"));
    assertTrue(faults.isEmpty());
  }

  @Test
  void build_ofABadObject_reportsEveryFaultWithPlaceAndKey() {
    Fields fields = open("{\n\"n\": 40,\n\"i\": 1.5,\n\"t\": \"\",\n\"w\": \"tow\",\n\"ohm\": 1}");
    fields.number("n", 0, 10);
    fields.whole("i", 0, 10);
    fields.text("t");
    fields.word("w", Map.of("one", 1, "two", 2));
    fields.require("ohms");
    assertEquals(Optional.empty(), fields.build(() -> "made"));
    assertEquals(
        List.of(
            "x.json:2:6: «n» must be between 0 and 10, not 40",
            "x.json:3:6: «i» must be a whole number, not 1.5",
            "x.json:4:6: «t» must not be empty",
            "x.json:5:6: «w» cannot be «tow»; nearest known word: «two»",
            "x.json:1:1: key «ohms» is missing",
            "x.json:6:1: unknown key «ohm»; nearest known key: «ohms»"),
        faults.list().stream().map(Fault::text).toList());
  }

  @Test
  void build_whereTheRecordRefuses_turnsItIntoAFault() {
    Optional<String> made =
        open("{}")
            .build(
                () -> {
                  throw new IllegalArgumentException("ohms must be a number above 0, got -1");
                });
    assertEquals(Optional.empty(), made);
    assertEquals("x.json:1:1: ohms must be a number above 0, got -1", faults.list().get(0).text());
  }

  @Test
  void everyReader_ofTheWrongKind_saysWhatIsWanted() {
    Fields fields = open("{\"a\":\"4\",\"b\":[],\"c\":{},\"d\":4,\"e\":\"x\",\"f\":[[]]}");
    fields.number("a", 0, 1);
    fields.text("b");
    fields.flag("c");
    fields.numbers("d", 0, 1);
    fields.object("e");
    fields.objects("f", inner -> Optional.of("never"));
    assertEquals(
        List.of(
            "«a» must be a number, not text",
            "«b» must be text, not a list",
            "«c» must be true or false, not an object",
            "«d» must be a list, not a number",
            "«e» must be an object, not text",
            "each of «f» must be an object, not a list"),
        faults.list().stream().map(Fault::sentence).toList());
  }

  @Test
  void text_withControlCharacters_isRefusedAndShownSafely() {
    Fields fields = open("{\"a\":\"x\\u001b[2J\\u202e\",\"b\":\"one\\ntwo\"}");
    assertEquals(Optional.empty(), fields.text("a"));
    assertEquals(Optional.empty(), fields.text("b"));
    assertEquals(Optional.of("one\ntwo"), fields.text("b", 100, true));
    String sentence = faults.list().get(0).sentence();
    assertTrue(sentence.endsWith("«x\\u001b[2J\\u202e»"), sentence);
  }

  @Test
  void faults_beyondTheLimit_areCutWithASentence() {
    for (int i = 0; i < 10_000; i++) {
      faults.add(new Node.Place(i + 1, 1), "", "wrong");
    }
    assertEquals(Faults.MOST + 1, faults.list().size());
    assertTrue(faults.list().get(Faults.MOST).sentence().contains("further"));
  }

  @Test
  void distance_countsASwapAsOne() {
    assertEquals(1, Nearest.distance("omhs", "ohms"));
    assertEquals(1, Nearest.distance("ohm", "ohms"));
    assertEquals(3, Nearest.distance("kitten", "sitting"));
    assertEquals(4, Nearest.distance("", "ohms"));
    assertEquals("supplyVolts", Nearest.of("SupplyVolt", List.of("steps", "supplyVolts", "tone")));
    assertEquals("", Nearest.of("x", List.of()));
  }

  @Test
  void check_ofTheFormat_refusesNewerAndOther() {
    Format wanted = new Format("bench", 1);
    assertTrue(wanted.check(open("{\"format\":\"loadwalk-bench/1\"}"), true));
    assertTrue(wanted.check(open("{}"), false));
    assertTrue(faults.isEmpty());
    wanted.check(open("{\"format\":\"loadwalk-bench/2\"}"), true);
    wanted.check(open("{\"format\":\"loadwalk-amplifier/1\"}"), true);
    wanted.check(open("{\"format\":\"v1\"}"), true);
    wanted.check(open("{\"format\":1}"), true);
    wanted.check(open("{}"), true);
    assertEquals(
        List.of(
            "this file is in the newer format «loadwalk-bench/2»; this Loadwalk reads up to"
                + " «loadwalk-bench/1»: use a newer Loadwalk",
            "the format must be «loadwalk-bench/1», not «loadwalk-amplifier/1»",
            "the format must be «loadwalk-bench/1», not «v1»",
            "«format» must be text, not a number",
            "key «format» is missing; add \"format\": \"loadwalk-bench/1\""),
        faults.list().stream().map(Fault::sentence).toList());
  }

  private Fields open(String text) {
    Read<Node> read = JsonText.strict("x.json").read(text);
    return Fields.of(read.found().orElseThrow(), "it", faults).orElseThrow();
  }
}
