package loadwalk.result;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.ResistorDerating;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Shape;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A load at the amplifier's end of its speaker lead, with what is not known of it.
 *
 * <p>The watts are reckoned from its cold ohms, so that everyone can do so again. What the load
 * gains when it gets hot, and what an unmeasured lead adds, is known to lie on one side: half of
 * the most is {@link #NOT_CORRECTED}, which adds up over all such parts, and the rest is
 * rectangular (JCGM 100:2008, F.2.4.5 and 4.3.8).
 *
 * @param cold its cold ohms, measured or from the stock
 * @param name what it is called
 * @param made the resistors that it is made of, where the bench knows them
 */
record Load(Quantity cold, String name, Optional<Made> made) {
  /** The name of what raises the ohms above the cold ones and is not corrected for. */
  static final String NOT_CORRECTED = "load above its cold ohms, not corrected for";

  /**
   * The most that a speaker lead adds to a load that was not measured at its end, ohms (common
   * practice, no source): 2 × 2 m of 4 mm² are 17 mΩ, and two joints.
   */
  static final double LEAD_OHMS = 0.02;

  /**
   * Half-width of what the ohmmeter's tips and clips add or lack, ohms (common practice, no
   * source).
   */
  static final double CONTACT_OHMS = 0.002;

  /**
   * Temperature coefficient of a resistor that states none, half-width, ppm/K (common practice, no
   * source; catalogues of wirewound ones have 30 to 200).
   */
  static final double USUAL_PPM_PER_KELVIN = 100;

  /** The rise of a resistor of unknown watts, kelvin (common practice, no source). */
  static final double USUAL_RISE_KELVIN = 150;

  private static final double MILLIONTH = 1e-6;

  /**
   * Equal resistors that a load is made of.
   *
   * @param part the kind
   * @param count how many share the watts
   */
  record Made(LoadResistor part, long count) {
    /** Returns the most that each rises by while the load takes these watts, kelvin. */
    double riseKelvin(double watts) {
      return ResistorDerating.riseKelvin(watts / count, part.watts());
    }
  }

  /** Returns the ohms while the load takes these watts: the cold ones, with what heat may add. */
  Quantity hot(double watts) {
    double rise = made.map(m -> m.riseKelvin(watts)).orElse(watts > 0 ? USUAL_RISE_KELVIN : 0);
    double perKelvin = cold.value() * MILLIONTH;
    OptionalDouble ppm = made.map(m -> m.part().ppmPerKelvin()).orElse(OptionalDouble.empty());
    if (ppm.isPresent()) {
      String source = Sentence.of("heat in load {}", name);
      return oneSided(cold, source, ppm.getAsDouble() * perKelvin * rise);
    }
    // Two rectangular factors, ±100 ppm/K and 0 to the rise: u = a/√3 · rise/√3, nearly normal.
    double u = USUAL_PPM_PER_KELVIN * perKelvin * rise / 3;
    String source = Sentence.of("heat in load {}, ppm/K not known", name);
    return u > 0 ? cold.withPart(source, u) : cold;
  }

  /**
   * Returns ohms with what may lie anywhere between them and the most that is added.
   *
   * @param most what is added at most, ohms; below 0 where it is taken off
   */
  static Quantity oneSided(Quantity ohms, String source, double most) {
    if (most == 0) {
      return ohms;
    }
    Quantity half =
        Quantity.exact(0, Unit.OHM).withShaped(NOT_CORRECTED, most / 2, Shape.EITHER_END);
    return ohms.withRectangular(source, most / 2).plus(half);
  }
}
