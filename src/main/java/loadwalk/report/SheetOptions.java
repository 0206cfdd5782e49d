package loadwalk.report;

/**
 * Says what of a walk a sheet shows.
 *
 * @param showSerial whether the serial number is shown; it is kept back unless asked for
 */
public record SheetOptions(boolean showSerial) {
  /** Keeps the serial number back. */
  public static final SheetOptions DEFAULT = new SheetOptions(false);
}
