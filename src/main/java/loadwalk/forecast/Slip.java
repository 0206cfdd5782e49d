package loadwalk.forecast;

/** The kinds of slip that a doubt can name. */
public enum Slip {
  DECIMAL_POINT("decimal-point", "a slipped decimal point"),
  PEAK_FOR_RMS("peak-for-rms", "peak volts instead of rms"),
  PEAK_TO_PEAK_FOR_RMS("peak-to-peak-for-rms", "peak-to-peak volts instead of rms"),
  BOTH_CHANNELS_FOR_ONE("both-channels-for-one", "both channels instead of one"),
  ONE_CHANNEL_FOR_BOTH("one-channel-for-both", "one channel instead of both"),
  STEREO_READING_IN_BRIDGED("stereo-in-bridged", "a stereo reading in a bridged step"),
  LOAD_DOUBLE("load-double", "a load wired at twice its value"),
  LOAD_HALF("load-half", "a load wired at half its value"),
  SUPPLY_AMPS_TEN_TIMES("supply-amps-ten-times", "supply amps off by a factor of ten"),
  DIGITS_SWAPPED("digits-swapped", "two digits swapped"),
  COPIED_FROM_BEFORE("copied-from-before", "a reading copied from the step before"),
  OUTPUT_ABOVE_INPUT("output-above-input", "more out than in"),
  TONE_OFF("tone-off", "another tone than the walk asks for"),
  THD_OFF_LIMIT("thd-off-limit", "the tone off the limit"),
  FAHRENHEIT_FOR_CELSIUS("fahrenheit-for-celsius", "degrees Fahrenheit instead of Celsius"),
  WRONG_ROW("wrong-row", "a reading of another row"),
  RECORDER_CLIPPED("recorder-clipped", "a recorder that clipped"),
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
