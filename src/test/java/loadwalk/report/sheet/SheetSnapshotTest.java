package loadwalk.report.sheet;

import java.util.Map;
import java.util.function.Supplier;
import loadwalk.plan.StockRules;
import loadwalk.report.Documents;
import loadwalk.report.FrozenWalks;
import loadwalk.report.page.Page;
import loadwalk.report.page.Sheets;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole sheets of kept walks, in every format. */
class SheetSnapshotTest {
  private static final Map<String, Supplier<WalkState>> WALKS =
      Map.of(
          "eventful", FrozenWalks::eventful,
          "left", FrozenWalks::left,
          "begun", FrozenWalks::begun,
          "practice", FrozenWalks::practice);

  private static Sheet sheet(String walk) {
    return Sheet.of(WALKS.get(walk).get(), SheetOptions.DEFAULT, StockRules.RULES);
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "left", "begun", "practice"})
  void text_isAsKept(String walk) {
    Documents.same(walk + "-sheet.txt", Sheets.lines(sheet(walk), 100, false));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "left"})
  void narrowAscii_isAsKept(String walk) {
    Documents.same(walk + "-sheet-ascii.txt", Sheets.lines(sheet(walk), 60, true));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "begun"})
  void markdown_isAsKept(String walk) {
    Documents.same(walk + "-sheet.md", Sheets.markdown(sheet(walk)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "begun"})
  void html_isAsKept(String walk) {
    Documents.same(walk + "-sheet.html", Documents.bones(Sheets.html(sheet(walk))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "left", "begun", "practice"})
  void json_isAsKept(String walk) {
    Documents.same(walk + "-sheet.json", Documents.nineDigits(SheetJson.text(sheet(walk))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "left", "practice"})
  void csv_isAsKept(String walk) {
    String csv = SheetCsv.text(sheet(walk));
    Documents.same(walk + "-sheet.csv", Documents.nineDigits(csv.replace("\r\n", "␍\n")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eventful", "left", "practice"})
  void chartNumbers_areAsKept(String walk) {
    Page page = SheetPage.of(sheet(walk));
    Documents.same(walk + "-charts.txt", Documents.numbers(page.charts()));
  }
}
