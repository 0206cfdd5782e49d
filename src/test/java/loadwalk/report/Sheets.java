package loadwalk.report;

import java.util.List;

/** Writes sheets in each form, as the command does. */
final class Sheets {
  private Sheets() {}

  static List<String> lines(Sheet sheet, int columns, boolean ascii) {
    return TextPage.lines(SheetPage.of(sheet), columns, ascii);
  }

  static String html(Sheet sheet) {
    return HtmlPage.html(SheetPage.of(sheet));
  }

  static String markdown(Sheet sheet) {
    return MarkdownPage.text(SheetPage.of(sheet));
  }
}
