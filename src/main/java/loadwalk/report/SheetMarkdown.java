package loadwalk.report;

/** Writes a sheet as CommonMark with pipe tables. */
public final class SheetMarkdown {
  private SheetMarkdown() {}

  /** Returns the whole text, with a line break at its end. */
  public static String text(Sheet sheet) {
    return MarkdownPage.text(SheetPage.of(sheet));
  }
}
