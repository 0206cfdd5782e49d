package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.Needs;
import loadwalk.plan.PlanExample;
import loadwalk.plan.StockRules;
import loadwalk.report.Hostile;
import loadwalk.report.page.Browser;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.report.plan.PlanPageTest;
import loadwalk.report.sheet.Sheet;
import loadwalk.report.sheet.SheetOptions;
import loadwalk.report.sheet.SheetPhotosTest;
import loadwalk.report.wave.WavePageTest;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Opens every kind of page in a real browser. */
class HtmlBrowserTest {
  private static final Path FOLDER = Path.of("target/samples/browser");
  private static final int[] WIDTHS = {360, 1280};

  /** What sticks out to the right, except inside a box that scrolls. */
  private static final String OVERFLOW =
      """
      (() => {
        const wide = document.documentElement.clientWidth;
        const out = [];
        if (document.documentElement.scrollWidth > wide) out.push('page scrolls sideways');
        for (const e of document.body.querySelectorAll('*')) {
          if (e.closest('.scroll') && !e.matches('.scroll')) continue;
          const box = e.getBoundingClientRect();
          if (box.right > wide + 0.5) out.push(e.tagName + ' ' + e.textContent.slice(0, 40));
        }
        return out;
      })()
      """;

  /** Chart texts that leave their picture or lie on each other, and pictures that are not there. */
  private static final String CHARTS =
      """
      (() => {
        const out = [];
        for (const svg of document.querySelectorAll('svg')) {
          const frame = svg.getBoundingClientRect();
          const name = svg.querySelector('title').textContent;
          if (frame.height < 100 || frame.width < 200) out.push(name + ' is not drawn');
          const texts = [...svg.querySelectorAll('text')].map(t => [t, t.getBoundingClientRect()]);
          texts.forEach(([t, b], i) => {
            if (b.left < frame.left - 1 || b.right > frame.right + 1
                || b.top < frame.top - 1 || b.bottom > frame.bottom + 1)
              out.push(name + ': ' + t.textContent + ' leaves the picture');
            texts.slice(i + 1).forEach(([u, c]) => {
              const apart = b.right <= c.left + 1 || c.right <= b.left + 1
                  || b.bottom <= c.top + 4 || c.bottom <= b.top + 4;
              if (!apart) out.push(name + ': ' + t.textContent + ' on ' + u.textContent);
            });
          });
        }
        return out;
      })()
      """;

  /** In the dark only the colours differ. */
  private static final String DARK = "{runOnly: ['color-contrast']}";

  private static final String AXE =
      "axe.run(document, %s).then(r => r.violations.map(v => v.id + ': '"
          + " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 120)).join(' | ')))";

  private static final Map<String, String> PAGES = new LinkedHashMap<>();
  private static Browser browser;

  @BeforeEach
  void needsBrowser() throws Exception {
    Needs.tool(Browser.CHROMIUM);
    if (browser == null) {
      start();
    }
  }

  private static void start() throws Exception {
    LedgerEntry hostile = LedgerEntry.of(Hostile.walk(), StockRules.RULES);
    LedgerEntry eventful = LedgerEntry.of(Walks.eventful().state(), StockRules.RULES);
    LedgerEntry practice = LedgerEntry.of(Walks.practice(1, "full-walk"), StockRules.RULES);
    List<LedgerEntry> walks = new ArrayList<>(Entries.many(12, 5));
    walks.addAll(List.of(hostile, eventful, practice));
    PAGES.put(
        "sheet",
        sheet(Sheet.of(Walks.practice(1, "full-walk"), SheetOptions.DEFAULT, StockRules.RULES)));
    PAGES.put(
        "eventful",
        sheet(Sheet.of(Walks.eventful().state(), SheetOptions.DEFAULT, StockRules.RULES)));
    PAGES.put("hostile", sheet(Sheet.of(Hostile.walk(), new SheetOptions(true), StockRules.RULES)));
    Sheet photos =
        Sheet.of(Walks.photographed().state(), SheetPhotosTest.AT_HAND, StockRules.RULES);
    PAGES.put("photos", sheet(photos));
    Walks begun = Walks.practicing(2, "full-walk");
    PAGES.put("unfinished", sheet(Sheet.of(begun.state(), SheetOptions.DEFAULT, StockRules.RULES)));
    PAGES.put("ledger", HtmlPage.html(LedgerPage.of(Ledger.of(walks))));
    PAGES.put(
        "comparison",
        HtmlPage.html(ComparisonPage.of(List.of(practice, eventful, hostile, walks.get(0)))));
    PAGES.put("plan", HtmlPage.html(PlanPageTest.page(PlanExample.AMPLIFIER, PlanExample.BENCH)));
    PAGES.put("hostile-plan", HtmlPage.html(PlanPageTest.hostile()));
    PAGES.put("wave", HtmlPage.html(WavePageTest.page(Hostile.LINK, Optional.empty())));
    Files.createDirectories(FOLDER);
    for (Map.Entry<String, String> page : PAGES.entrySet()) {
      Files.writeString(file(page.getKey()), page.getValue());
    }
    browser = new Browser();
  }

  @AfterAll
  static void stop() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  private static String sheet(Sheet sheet) {
    return Sheets.html(sheet);
  }

  private static Path file(String name) {
    return FOLDER.resolve(name + ".html").toAbsolutePath();
  }

  @Test
  void everyPage_fitsDrawsAndAsksNothing() throws Exception {
    List<String> wrong = new ArrayList<>();
    for (String page : PAGES.keySet()) {
      for (int width : WIDTHS) {
        for (boolean dark : new boolean[] {false, true}) {
          browser.open(file(page), width, dark, "screen");
          String where = page + " at " + width + (dark ? " dark: " : ": ");
          browser.problems().forEach(p -> wrong.add(where + p));
          browser.evaluate(OVERFLOW).forEach(o -> wrong.add(where + o.asText()));
          browser.evaluate(CHARTS).forEach(c -> wrong.add(where + c.asText()));
          if (page.equals("sheet") || page.equals("comparison")) {
            String name = page + "-" + width + (dark ? "-dark" : "") + ".png";
            Files.write(FOLDER.resolve(name), browser.screenshot());
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void sheet_showsItsChartsAndNumbers() throws Exception {
    browser.open(file("sheet"), 1280, false, "screen");
    assertEquals(8, browser.evaluate("document.querySelectorAll('figure svg').length").asInt());
    assertEquals(7, browser.evaluate("document.querySelectorAll('.cards li').length").asInt());
    int marks =
        browser.evaluate("document.querySelectorAll('svg circle, svg polygon').length").asInt();
    assertTrue(marks > 60, marks + " marks");
  }

  @Test
  void sheet_showsItsPhotos_upright() throws Exception {
    browser.open(file("photos"), 360, false, "screen");
    String sizes =
        "[...document.querySelectorAll('img')].map(i => i.naturalWidth + 'x' + i.naturalHeight)";
    assertEquals("[\"64x40\",\"40x64\"]", browser.evaluate(sizes).toString());
  }

  @Test
  void everyPage_passesTheAccessibilityCheck() throws Exception {
    String axe = axe();
    List<String> wrong = new ArrayList<>();
    for (String page : PAGES.keySet()) {
      browser.open(file(page), 1280, false, "screen");
      browser.evaluate(axe + ";true");
      for (boolean dark : new boolean[] {false, true}) {
        browser.paint(dark, "screen");
        JsonNode violations = browser.evaluate(AXE.formatted(dark ? DARK : "{}"));
        assertTrue(violations.isArray(), "axe did not answer");
        violations.forEach(v -> wrong.add(page + (dark ? " dark: " : ": ") + v.asText()));
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void accessibilityCheck_findsWhatIsWrong() throws Exception {
    Path bad = FOLDER.resolve("bad.html").toAbsolutePath();
    Files.writeString(bad, "<!doctype html><p style=\"color:#999\">pale</p><img src=\"data:,\">");
    browser.open(bad, 1280, false, "screen");
    browser.evaluate(axe() + ";true");
    String found = browser.evaluate(AXE.formatted("{}")).toString();
    for (String rule : List.of("color-contrast", "image-alt", "html-has-lang", "document-title")) {
      assertTrue(found.contains(rule), rule + " in " + found);
    }
  }

  @Test
  void everyPage_printsOnA4AndLetter() throws Exception {
    for (String page : PAGES.keySet()) {
      browser.open(file(page), 680, false, "print");
      assertEquals("[]", browser.evaluate(OVERFLOW).toString(), page + " in print");
      for (double[] paper : new double[][] {{8.27, 11.69}, {8.5, 11}}) {
        byte[] pdf = browser.pdf(paper[0], paper[1]);
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        assertTrue(text.startsWith("%PDF-"), page);
        int pages = text.split("/Type /Page\\b", -1).length - 1;
        assertTrue(pages >= 1 && pages <= 30, page + " takes " + pages + " pages");
        Files.write(FOLDER.resolve(page + (paper[1] == 11 ? "-letter" : "-a4") + ".pdf"), pdf);
      }
    }
  }

  private static String axe() throws IOException {
    try (InputStream in = HtmlBrowserTest.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
