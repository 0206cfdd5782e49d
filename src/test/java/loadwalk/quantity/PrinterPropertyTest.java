package loadwalk.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class PrinterPropertyTest {
  private static final long SEED = 20_260_731L;
  private static final int TRIALS = 20_000;

  @Test
  void value_printedThenParsed_isTheSameWithinThePrintedResolution() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
      double value = anyValue(random);
      Printer printer = new Printer(random.nextBoolean());
      int digits = 1 + random.nextInt(8);
      String text = printer.value(value, unit, digits);
      Typed.Number back = parsed(text, unit);
      String told = "seed " + SEED + ", trial " + i + ": " + value + " printed " + text;
      assertEquals(unit, back.unit(), told);
      assertEquals(value, back.value(), 0.5001 * lastPlace(value, digits), told);
    }
  }

  @Test
  void reading_typedPrintedThenParsed_isTheSame() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      String typed = random.nextInt(2000) + "." + random.nextInt(1000) + " V";
      Typed.Number first = parsed(typed, Unit.VOLT);
      String text = Printer.UTF8.reading(first.value(), first.unit(), first.resolution());
      Typed.Number back = parsed(text, Unit.VOLT);
      String told = "seed " + SEED + ", trial " + i + ": " + typed + " printed " + text;
      assertEquals(first.value(), back.value(), 1e-12 * first.value(), told);
      assertEquals(first.resolution(), back.resolution(), 1e-12, told);
    }
  }

  @Test
  void quantity_printedThenParsed_staysWithinHalfAStepOfItsUncertainty() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      double value = anyValue(random);
      double u = Math.abs(value) * Math.pow(10, -5 * random.nextDouble()) + 1e-6;
      Quantity quantity = Quantity.of(value, Unit.VOLT, "meter", u);
      String text = Printer.UTF8.quantity(quantity);
      String[] parts = text.split(" ± | ");
      String told = "seed " + SEED + ", trial " + i + ": " + quantity + " printed " + text;
      Typed.Number back = parsed(parts[0] + " " + parts[2], Unit.VOLT);
      Typed.Number backU = parsed(parts[1] + " " + parts[2], Unit.VOLT);
      double step = lastPlace(backU.value() * (1 + 1e-9), 2);
      assertEquals(value, back.value(), 0.5001 * step, told);
      assertEquals(quantity.expanded(), backU.value(), 0.5001 * step, told);
    }
  }

  @Test
  void range_printed_holdsTheRange() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      double low = anyValue(random);
      double high = low + Math.abs(anyValue(random));
      String text = Printer.UTF8.range(low, high, Unit.VOLT);
      String unit = text.substring(text.lastIndexOf(' '));
      String[] ends = text.substring(0, text.lastIndexOf(' ')).split(" to ");
      String told = "seed " + SEED + ", trial " + i + ": " + low + ", " + high + " " + text;
      double slack = 1e-8 * Math.max(Math.abs(low), Math.abs(high));
      assertTrue(parsed(ends[0] + unit, Unit.VOLT).value() <= low + slack, told);
      assertTrue(parsed(ends[1] + unit, Unit.VOLT).value() >= high - slack, told);
    }
  }

  private static double lastPlace(double value, int digits) {
    return Math.pow(10, Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
  }

  private static double anyValue(Random random) {
    double size = Math.pow(10, -5 + 10 * random.nextDouble());
    return random.nextInt(4) == 0 ? -size : size;
  }

  private static Typed.Number parsed(String text, Unit unit) {
    Typed typed = EntryParser.parse(text, unit);
    return assertInstanceOf(Typed.Number.class, typed, text + " gave " + typed);
  }
}
