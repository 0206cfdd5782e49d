package loadwalk.report.page;

import java.util.List;
import loadwalk.report.sheet.Sheet;
import loadwalk.report.sheet.SheetPage;

/** Writes sheets in each form, as the command does. */
public final class Sheets {
  private Sheets() {}

  public static List<String> lines(Sheet sheet, int columns, boolean ascii) {
    return TextPage.lines(SheetPage.of(sheet), columns, ascii);
  }

  public static String html(Sheet sheet) {
    return HtmlPage.html(SheetPage.of(sheet));
  }

  public static String markdown(Sheet sheet) {
    return MarkdownPage.text(SheetPage.of(sheet));
  }
}
