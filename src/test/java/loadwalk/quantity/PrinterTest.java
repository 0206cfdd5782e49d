package loadwalk.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PrinterTest {

  /** The form of JCGM 100:2008, 7.2.4, with its mass standard's digits; from memory. */
  @Test
  void quantity_isRoundedToTwoDigitsOfItsExpandedUncertainty() {
    assertEquals("100.02147 ± 0.00070 V", print(100.021466, Unit.VOLT, 0.00035));
    assertEquals("45.5 ± 1.2 W", print(45.4532, Unit.WATT, 0.6));
    assertEquals("45.45 ± 0.10 W", print(45.4532, Unit.WATT, 0.0498));
    assertEquals("510 ± 130 W", print(512, Unit.WATT, 65));
    assertEquals("12.34 ± 0.13 kW", print(12_340, Unit.WATT, 65));
    assertEquals("1.2 ± 1.3 kHz", print(1240, Unit.HERTZ, 650));
    assertEquals("12.30 ± 0.50 mV", print(0.0123, Unit.VOLT, 0.00025));
    assertEquals("0.500 ± 0.012 Ω", print(0.5, Unit.OHM, 0.006));
    assertEquals("0.0 ± 2.0 V", print(0, Unit.VOLT, 1));
  }

  @Test
  void quantity_withoutUncertainty_isPrintedAlone() {
    assertEquals("4 Ω", Printer.UTF8.quantity(Quantity.exact(4, Unit.OHM)));
  }

  @Test
  void ascii_usesNoOtherSigns() {
    assertEquals("0.500 +- 0.012 ohm", Printer.ASCII.quantity(ohms()));
    assertEquals("40.0 degC", Printer.ASCII.value(40, Unit.CELSIUS, 3));
    assertEquals("20 uV", Printer.ASCII.exact(2e-5, Unit.VOLT));
  }

  @Test
  void value_keepsSignificantZeros() {
    assertEquals("13.40 V", Printer.UTF8.value(13.4, Unit.VOLT, 4));
    assertEquals("1.24 kA", Printer.UTF8.value(1237, Unit.AMPERE, 3));
    assertEquals("0 V", Printer.UTF8.value(0, Unit.VOLT, 3));
    assertEquals("-3.0 dB", Printer.UTF8.value(-3.01, Unit.DECIBEL, 2));
    assertEquals("4", Printer.UTF8.exact(4, Unit.ONE));
    assertEquals("unknown", Printer.UTF8.value(Double.NaN, Unit.VOLT, 3));
    assertEquals("unknown", Printer.UTF8.exact(Double.POSITIVE_INFINITY, Unit.VOLT));
  }

  @Test
  void reading_isShownAsTyped() {
    assertEquals("13.40 V", Printer.UTF8.reading(13.4, Unit.VOLT, 0.01));
    assertEquals("0.950 V", Printer.UTF8.reading(0.95, Unit.VOLT, 0.001));
    assertEquals("1.2 kΩ", Printer.UTF8.reading(1200, Unit.OHM, 100));
    assertEquals("40.0 °C", Printer.UTF8.reading(40, Unit.CELSIUS, 5.0 / 9));
    assertEquals("unknown", Printer.UTF8.reading(1, Unit.VOLT, Double.NaN));
  }

  @Test
  void range_isRoundedOutwards() {
    assertEquals("12.6 to 13.9 V", Printer.UTF8.range(12.6, 13.9, Unit.VOLT));
    assertEquals("12.6 to 14.0 V", Printer.UTF8.range(12.64, 13.91, Unit.VOLT));
    assertEquals("-0.1 to 1.2 V", Printer.UTF8.range(-0.02, 1.13, Unit.VOLT));
    assertEquals("13.4000 to 13.4000 V", Printer.UTF8.range(13.4, 13.4, Unit.VOLT));
    assertEquals("0 to 0 V", Printer.UTF8.range(0, 0, Unit.VOLT));
    assertEquals("unknown", Printer.UTF8.range(Double.NaN, 1, Unit.VOLT));
    assertEquals("unknown", Printer.UTF8.range(2, 1, Unit.VOLT));
  }

  private static Quantity ohms() {
    return Quantity.of(0.5, Unit.OHM, "load", 0.006);
  }

  private static String print(double value, Unit unit, double u) {
    return Printer.UTF8.quantity(Quantity.of(value, unit, "meter", u));
  }
}
