package loadwalk.forecast;

/** The slips that a doubt can name. */
public enum Slip {
  DECIMAL_POINT("decimal-point", "decimal point"),
  PEAK_FOR_RMS("peak-for-rms", "peak volts for rms"),
  PEAK_TO_PEAK_FOR_RMS("peak-to-peak-for-rms", "peak-to-peak volts for rms"),
  BOTH_CHANNELS_FOR_ONE("both-channels-for-one", "both channels for one"),
  ONE_CHANNEL_FOR_BOTH("one-channel-for-both", "one channel for both"),
  STEREO_READING_IN_BRIDGED("stereo-in-bridged", "a stereo reading in a bridged step"),
  LOAD_DOUBLE("load-double", "load wired at twice its value"),
  LOAD_HALF("load-half", "load wired at half its value"),
  SUPPLY_AMPS_TEN_TIMES("supply-amps-ten-times", "supply amps ten times off"),
  DIGITS_SWAPPED("digits-swapped", "digits swapped"),
  COPIED_FROM_BEFORE("copied-from-before", "reading copied from the step before"),
  OUTPUT_ABOVE_INPUT("output-above-input", "output above input"),
  /** No named slip fits. */
  UNNAMED("unnamed", "no slip fits");

  private final String code;
  private final String words;

  Slip(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** Returns the word written in files and JSON output. */
  public String code() {
    return code;
  }

  /** Returns the words shown to the operator. */
  public String words() {
    return words;
  }
}
