package loadwalk.report.sheet;

import java.util.Map;
import loadwalk.report.page.Picture;

/**
 * The options of a sheet: which parts of a walk it shows.
 *
 * @param showSerial whether the serial number is shown; hidden otherwise
 * @param pictures the photos that could be read, by the SHA-256 of their files
 */
public record SheetOptions(boolean showSerial, Map<String, Picture> pictures) {
  /** The default: the serial number is hidden. */
  public static final SheetOptions DEFAULT = new SheetOptions(false);

  /** Copies the map. */
  public SheetOptions {
    pictures = Map.copyOf(pictures);
  }

  /** Makes options under which photos are shown only by name. */
  public SheetOptions(boolean showSerial) {
    this(showSerial, Map.of());
  }
}
