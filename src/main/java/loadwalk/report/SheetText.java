package loadwalk.report;

import java.util.List;

/** Writes a sheet as lines of text. */
public final class SheetText {
  private SheetText() {}

  /**
   * Returns the lines of a sheet.
   *
   * @param columns the width that no line exceeds; below 40 it is taken as 40
   * @param ascii whether only ASCII may be used
   */
  public static List<String> lines(Sheet sheet, int columns, boolean ascii) {
    return TextPage.lines(SheetPage.of(sheet), columns, ascii);
  }
}
