package loadwalk.quantity;

/** Names units in sentences. */
final class UnitWords {
  private UnitWords() {}

  static String of(Unit unit) {
    return switch (unit) {
      case VOLT -> "volts";
      case AMPERE -> "amps";
      case WATT -> "watts";
      case OHM -> "ohms";
      case CELSIUS -> "degrees";
      case HERTZ -> "hertz";
      case PERCENT -> "percent";
      case SECOND -> "seconds";
      case METRE -> "metres";
      case DECIBEL -> "decibels";
      case ONE -> "a plain number";
    };
  }

  static String withExample(Unit unit) {
    return switch (unit) {
      case VOLT -> "volts such as 13.4, 13,4 V or 950m";
      case AMPERE -> "amps such as 16, 1.9 A or 950m";
      case WATT -> "watts such as 45.5 W or 1k2";
      case OHM -> "ohms such as 4, 1/2 or 0R5";
      case CELSIUS -> "a temperature such as 40, 40 °C or 104 °F";
      case HERTZ -> "hertz such as 40, 40 Hz or 1 kHz";
      case PERCENT -> "percent such as 1 or 0.95 %";
      case SECOND -> "a time such as 90, 90 s or 15 min";
      case METRE -> "metres such as 2 or 2.5 m";
      case DECIBEL -> "decibels such as -3 or 1.5 dB";
      case ONE -> "a plain number such as 4";
    };
  }
}
