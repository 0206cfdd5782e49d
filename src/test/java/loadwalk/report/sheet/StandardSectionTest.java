package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import loadwalk.bench.ReadingId;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What standards ask to be stated, beside a walk: worked out by hand from what was typed. */
class StandardSectionTest {
  private static final Sheet FINE =
      Cases.sheet(
          Cases.ended(
              Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.LOAD_OHMS, "3.97 ohm")))));

  private static String words(Sheet sheet, String standard, String item) {
    return StandardItems.all().stream()
        .filter(i -> i.standard().name().equals(standard) && i.item().equals(item))
        .map(i -> i.found().apply(sheet))
        .map(found -> found.outcome().word() + ": " + found.value())
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "CTA_2006 | supply | recorded: 14.4 V",
        "CTA_2006 | load | recorded: 3.97 Ω",
        "CTA_2006 | distortion | not recorded: 0.98 %, kind not known",
        "CTA_2006 | band | differs: 1 kHz",
        "CTA_2006 | channels | recorded: both outputs read",
        "CTA_2006 | noise | not recorded:",
        "CTA_2006 | dynamic power | not recorded:",
        "CTA_2006 | air | not recorded:",
        "CFR_432 | load | differs: 4 Ω",
        "CFR_432 | supply | recorded: 14.4 V",
        "CFR_432 | before the test | differs: 15 min 50 s, at a power that was not read",
        "IEC_60268 | tone | recorded: 1 kHz",
        "IEC_60268 | distortion-limited power | recorded: 0.98 %",
        "IEC_60268 | supply tolerance | recorded: 14.4 V",
        "IEC_60268 | source impedance | not recorded:",
        "IEC_60268 | controls | not recorded:",
      })
  void itemsOfASoundWalk(String standard, String item, String found) {
    assertEquals(found.strip(), words(FINE, standard, item).strip());
  }

  @ParameterizedTest
  @CsvSource({"14.5 V, recorded", "14.3 V, recorded", "14.52 V, differs", "14.28 V, differs"})
  void supply_isAsAskedWithinATenthOfAVolt(String typed, String outcome) {
    Sheet sheet =
        Cases.sheet(Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.SUPPLY_VOLTS, typed))));
    assertTrue(words(sheet, "CTA_2006", "supply").startsWith(outcome + ":"), typed);
  }

  /** An output without its supply volts leaves the item open, whatever the sequence asks for. */
  @Test
  void notReadWithTheOutput_isNotRecorded() {
    Sheet sheet =
        Cases.sheet(Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.SUPPLY_VOLTS, ""))));
    assertEquals("not recorded: ", words(sheet, "CTA_2006", "supply"));
    Sheet two = Cases.sheet(oneWithAndOneWithoutVolts());
    assertEquals("not recorded: not with every output", words(two, "CTA_2006", "supply"));
  }

  private static Walks oneWithAndOneWithoutVolts() {
    Walks walk = Walks.practicing(1, "stereo-only").oneStep().oneStep().oneStep();
    walk.begin();
    walk.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "13.9 V");
    return walk;
  }

  @Test
  void nothingMeasured_recordsNothing() {
    Sheet none = Cases.sheet(Cases.warm());
    List<String> recorded =
        StandardItems.all().stream()
            .filter(i -> i.found().apply(none).outcome() == StandardItem.Outcome.RECORDED)
            .map(StandardItem::item)
            .toList();
    assertEquals(List.of(), recorded);
  }

  @Test
  void conformity_isClaimedNowhere() {
    String text = Cases.text(FINE).toLowerCase(Locale.ROOT);
    assertTrue(text.contains("this sheet claims conformity to none of them."), text);
    for (String claim : List.of("complies", "conforms", "according to", "compliant", "passes")) {
      assertFalse(text.contains(claim), claim);
    }
  }

  @Test
  void section_isClosedInHtml_andLastInTheOtherFormats() {
    String html = Sheets.html(FINE);
    assertTrue(
        html.contains("<section id=\"standards\" aria-labelledby=\"h-standards\">\n<details>"),
        html);
    assertFalse(html.contains("<details open"), html);
    assertEquals(1, html.split("</details>", -1).length - 1);
    for (String page : List.of(Sheets.markdown(FINE), String.join("\n", Cases.lines(FINE)))) {
      int at = page.indexOf("Beside published standards");
      assertTrue(at > page.indexOf("Assumptions"), page);
      assertTrue(page.indexOf("IEC 60268-3:2018") > at, page);
    }
  }

  @Test
  void json_namesStandardItemAskedKnownAndFound() throws Exception {
    JsonNode items = new ObjectMapper().readTree(SheetJson.text(FINE)).get("standards");
    assertEquals(StandardItems.all().size(), items.size());
    Set<String> standards =
        StreamSupport.stream(items.spliterator(), false)
            .map(item -> item.get("standard").asText())
            .collect(Collectors.toSet());
    assertEquals(Set.of("ANSI/CTA-2006-D", "16 CFR 432", "IEC 60268-3:2018"), standards);
    JsonNode supply = items.get(0);
    assertEquals("14.4 V DC at the amplifier's terminals", supply.get("asks").asText());
    assertEquals("read at second hand", supply.get("known").asText());
    assertEquals("recorded", supply.get("outcome").asText());
    assertEquals("14.4 V", supply.get("recorded").asText());
  }
}
