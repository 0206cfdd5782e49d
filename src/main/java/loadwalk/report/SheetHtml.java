package loadwalk.report;

/** Writes a sheet as one self-contained HTML file. */
public final class SheetHtml {
  private SheetHtml() {}

  /** Returns the whole file. */
  public static String text(Sheet sheet) {
    return HtmlPage.html(SheetPage.of(sheet));
  }
}
