package loadwalk.report.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where a long word in a table may break: after twenty letters that no browser breaks by itself.
 */
class HtmlCellTest {
  private static final String NINE = "abcdefghi";
  private static final String NINETEEN = "abcdefghijklmnopqrs";
  private static final String TWENTY = NINETEEN + "t";

  @ParameterizedTest
  @CsvSource({
    NINETEEN + "," + NINETEEN,
    TWENTY + "," + TWENTY + "<wbr>",
    TWENTY + "u," + TWENTY + "<wbr>u",
    NINETEEN + " " + NINETEEN + "," + NINETEEN + " " + NINETEEN,
    NINETEEN + "-" + NINETEEN + "," + NINETEEN + "-" + NINETEEN,
    NINE + "1-" + NINETEEN + "," + NINE + "1-" + NINETEEN,
    NINETEEN + "-1," + NINETEEN + "-<wbr>1",
    NINETEEN + "-," + NINETEEN + "-<wbr>",
    "-" + NINETEEN + ",-" + NINETEEN + "<wbr>",
    "a -" + NINETEEN + ",a -" + NINETEEN + "<wbr>",
    NINETEEN + "𝄞x," + NINETEEN + "𝄞<wbr>x"
  })
  void longWord_mayBreak(String text, String cell) {
    Block.Table table =
        new Block.Table("t", List.of(Block.Column.words("c")), List.of(List.of(text)));
    Page page = new Page("", "", List.of(), List.of(new Page.Section("s", "S", List.of(table))));
    String html = HtmlPage.html(page);
    assertTrue(html.contains("<th scope=\"row\">" + cell + "</th>"), html);
  }
}
