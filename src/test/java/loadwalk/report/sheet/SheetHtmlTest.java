package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import org.junit.jupiter.api.Test;

class SheetHtmlTest {

  @Test
  void wholeWalk_hasEveryChart() throws IOException {
    Sheet sheet = Sheet.of(Walks.practice(1, "full-walk"), SheetOptions.DEFAULT, StockRules.RULES);
    String html = Sheets.html(sheet);
    Files.createDirectories(Path.of("target/samples"));
    Files.writeString(Path.of("target/samples/sheet.html"), html);
    for (String title :
        List.of(
            "Power vs. load",
            "Output volts vs. load",
            "Supply current vs. output",
            "Efficiency vs. load",
            "Heat vs. load",
            "Heatsink temperature in warm-up",
            "Recheck vs. first run")) {
      assertTrue(html.contains("<h3>" + title + "</h3>"), title);
    }
    assertEquals(8, html.split("<svg ", -1).length - 1);
  }

  @Test
  void file_asksNothingOfAnyone() {
    String html =
        Sheets.html(Sheet.of(Walks.eventful().state(), SheetOptions.DEFAULT, StockRules.RULES));
    String without = html.replace("http://www.w3.org/2000/svg", "");
    for (String request : List.of("http:", "https:", "src=", "<script", "@import", "url(")) {
      assertFalse(without.contains(request), request);
    }
  }
}
