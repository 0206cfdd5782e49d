package loadwalk.report.sheet;

import java.util.Map;
import loadwalk.report.page.Picture;

/**
 * Says what of a walk a sheet shows.
 *
 * @param showSerial whether the serial number is shown; hidden otherwise
 * @param pictures the photos that could be read, by the SHA-256 of their files
 */
public record SheetOptions(boolean showSerial, Map<String, Picture> pictures) {
  /** Hides the serial number. */
  public static final SheetOptions DEFAULT = new SheetOptions(false);

  /** Copies the map. */
  public SheetOptions {
    pictures = Map.copyOf(pictures);
  }

  /** Shows photos by their names alone. */
  public SheetOptions(boolean showSerial) {
    this(showSerial, Map.of());
  }
}
