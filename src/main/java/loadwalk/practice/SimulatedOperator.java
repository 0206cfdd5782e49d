package loadwalk.practice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.Unit;

/**
 * Reads a rig's meters and types the way people do: with or without units, now and then with a
 * decimal comma (but never before three digits, which would read as thousands), and in milli for
 * small numbers.
 *
 * @param seed the seed of the way of typing
 */
public record SimulatedOperator(long seed) {
  private static final double COMMA = 0.15;
  private static final double NO_UNIT = 0.35;
  private static final double MILLI = 0.3;

  /**
   * Returns the text typed for every reading of a step, in the order they are taken.
   *
   * @param rig the rig at this moment
   * @param mode how the load is connected
   * @param ohms the nominal load
   * @param kind what is done
   */
  public Map<ReadingId, String> answers(PracticeRig rig, Mode mode, double ohms, Target.Kind kind) {
    Map<ReadingId, String> texts = new LinkedHashMap<>();
    rig.read(mode, ohms, kind)
        .forEach(
            (id, value) -> {
              Meter meter = rig.bench().described().meterFor(id).orElseThrow();
              Random manner =
                  Noise.generator(seed, id.key(), kind, mode, ohms, rig.elapsedSeconds());
              texts.put(id, typed(value, id.unit(), meter.resolution(), manner));
            });
    return Collections.unmodifiableMap(texts);
  }

  private static String typed(double value, Unit unit, double resolution, Random manner) {
    boolean comma = manner.nextDouble() < COMMA;
    boolean bare = manner.nextDouble() < NO_UNIT;
    boolean milli = manner.nextDouble() < MILLI;
    boolean prefixed = unit == Unit.VOLT || unit == Unit.AMPERE || unit == Unit.OHM;
    String text;
    if (milli && prefixed && value > 0 && value < 1) {
      text = number(1000 * value, 1000 * resolution) + " m" + symbol(unit, manner);
    } else {
      text = number(value, resolution) + (bare ? "" : " " + symbol(unit, manner));
    }
    return comma && !text.matches(".*\\.\\d{3}\\b.*") ? text.replace('.', ',') : text;
  }

  private static String symbol(Unit unit, Random manner) {
    return manner.nextBoolean() ? unit.symbol() : unit.asciiSymbol();
  }

  private static String number(double value, double resolution) {
    int places = (int) Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9));
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }
}
