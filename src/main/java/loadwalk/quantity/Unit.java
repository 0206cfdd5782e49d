package loadwalk.quantity;

/** The units of the bench, SI throughout; prefixes exist only where text is read or printed. */
public enum Unit {
  VOLT("V", "V"),
  AMPERE("A", "A"),
  WATT("W", "W"),
  OHM("Ω", "ohm"),
  CELSIUS("°C", "degC"),
  HERTZ("Hz", "Hz"),
  PERCENT("%", "%"),
  SECOND("s", "s"),
  METRE("m", "m"),
  DECIBEL("dB", "dB"),
  ONE("", "");

  private final String symbol;
  private final String ascii;

  Unit(String symbol, String ascii) {
    this.symbol = symbol;
    this.ascii = ascii;
  }

  /** Returns the symbol as printed where UTF-8 is available. */
  public String symbol() {
    return symbol;
  }

  /** Returns the symbol in plain ASCII. */
  public String asciiSymbol() {
    return ascii;
  }
}
