package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import loadwalk.plan.StockRules;
import loadwalk.report.Hostile;
import loadwalk.report.ledger.ComparisonPage;
import loadwalk.report.ledger.Ledger;
import loadwalk.report.ledger.LedgerCsv;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.ledger.LedgerPage;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.report.page.Walks;
import loadwalk.report.plan.PlanPageTest;
import loadwalk.report.wave.WavePageTest;
import loadwalk.text.Columns;
import loadwalk.text.Visible;
import loadwalk.walk.fact.WalkState;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

class HostileTextTest {
  private static final WalkState WALK = Hostile.walk();
  private static final Sheet SHEET = Sheet.of(WALK, new SheetOptions(true), StockRules.RULES);
  private static final Page LEDGER =
      LedgerPage.of(Ledger.of(List.of(LedgerEntry.of(WALK, StockRules.RULES))));
  private static final Page COMPARISON =
      ComparisonPage.of(
          List.of(
              LedgerEntry.of(WALK, StockRules.RULES),
              LedgerEntry.of(Walks.eventful().state(), StockRules.RULES)));
  private static final List<Page> PAGES =
      List.of(SheetPage.of(SHEET), LEDGER, COMPARISON, PlanPageTest.hostile(), wave());

  private static Page wave() {
    try {
      return WavePageTest.page(String.join(" ", Hostile.ALL), Optional.empty());
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void text_holdsNothingThatSteers() {
    for (Page page : PAGES) {
      for (boolean ascii : new boolean[] {false, true}) {
        for (String line : TextPage.lines(page, 80, ascii)) {
          assertEquals(List.of(), steering(line, false), line);
          assertTrue(Columns.of(line) <= 80, line);
        }
      }
    }
  }

  @Test
  void html_holdsTheTextAsText() {
    Pattern tags = Pattern.compile("<(/?)(script|img|iframe|object|embed|a|base|form|input)\\b");
    for (Page page : PAGES) {
      String html = HtmlPage.html(page);
      assertFalse(tags.matcher(html).find(), "a tag that no page has");
      assertFalse(Pattern.compile("<[^>]*\\son\\w+=").matcher(html).find(), "an event attribute");
      assertEquals(List.of(), steering(html, true));
    }
    assertTrue(HtmlPage.html(PAGES.get(0)).contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
  }

  @Test
  void markdown_holdsNoMarkupOfTheirs() {
    Parser parser = Parser.builder().extensions(List.of(TablesExtension.create())).build();
    for (Page page : PAGES) {
      String markdown = MarkdownPage.text(page);
      assertEquals(List.of(), steering(markdown, true));
      List<String> found = new ArrayList<>();
      parser.parse(markdown).accept(new Suspicious(found));
      assertEquals(List.of(), found);
    }
  }

  @Test
  void csv_holdsNoFormula() throws Exception {
    LedgerEntry leading = LedgerEntry.of(Hostile.walkOf(Hostile.FORMULA), StockRules.RULES);
    List<String> texts =
        List.of(
            SheetCsv.text(SHEET),
            LedgerCsv.text(Ledger.of(List.of(LedgerEntry.of(WALK, StockRules.RULES), leading))));
    for (String text : texts) {
      assertEquals(List.of(), steering(text, true));
      int guarded = 0;
      try (CSVParser csv = CSVFormat.RFC4180.parse(new StringReader(text))) {
        for (CSVRecord row : csv) {
          for (String cell : row) {
            boolean number = cell.matches("-?\\d+(\\.\\d+)?(E-?\\d+)?");
            boolean formula = cell.matches("(?s)[\\s=+@|%-].*");
            assertTrue(number || cell.equals("%") || !formula, cell);
            guarded += cell.startsWith("'=") || cell.startsWith("'+") ? 1 : 0;
          }
        }
      }
      assertTrue(guarded > 0, "no cell had to be guarded");
    }
  }

  @Test
  void json_givesTheTextBackExactlyAndSteersNothing() throws Exception {
    String text = SheetJson.text(SHEET);
    assertEquals(List.of(), steering(text, true));
    JsonNode json = new ObjectMapper().readTree(text);
    assertEquals(SHEET.amplifier().maker(), json.at("/amplifier/maker").asText());
    assertEquals(SHEET.amplifier().model(), json.at("/amplifier/model").asText());
    assertTrue(SHEET.amplifier().maker().contains(Hostile.STEERING));
    String reason = SHEET.record().stops().get(0).reason().orElseThrow();
    assertEquals(reason, json.at("/stops/0/reason").asText());
  }

  /** Returns the characters of a text that steer a terminal or turn the reading direction. */
  private static List<String> steering(String text, boolean lineBreaks) {
    return text.codePoints()
        .filter(c -> !(lineBreaks && (c == '\n' || c == '\r')))
        .filter(c -> Character.isISOControl(c) || !Visible.is(c))
        .mapToObj(c -> String.format("U+%04X", c))
        .distinct()
        .toList();
  }

  /** Finds what only their markup could have made: our own has no links, code or HTML. */
  private static final class Suspicious extends AbstractVisitor {
    private final List<String> found;

    Suspicious(List<String> found) {
      this.found = found;
    }

    private void take(Node node) {
      found.add(node.toString());
    }

    @Override
    public void visit(Link link) {
      take(link);
    }

    @Override
    public void visit(Image image) {
      take(image);
    }

    @Override
    public void visit(Code code) {
      take(code);
    }

    @Override
    public void visit(HtmlInline html) {
      take(html);
    }

    @Override
    public void visit(HtmlBlock html) {
      take(html);
    }
  }
}
