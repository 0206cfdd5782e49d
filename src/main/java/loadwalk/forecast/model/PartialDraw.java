package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.AmplifierClass;

/**
 * The current above idle at a part of the output, over that at the limit, by class.
 *
 * <p>Class B: the rails deliver the mean of a half sine, so the current goes with the volts; with
 * it η = π/4 · v/V (textbook). Class D: what is not delivered is returned, so the current goes with
 * the watts, its own losses being constant (idle) and I²R, which goes with the watts too (energy
 * balance). Class A: constant draw until the load takes more than the bias gives; with a bias of
 * half the draw at the limit that is from half the volts on (textbook). Class G: class B on half
 * the rails up to half the volts, above that for the part of the wave below it (textbook, two
 * rails, the lower at half).
 */
final class PartialDraw {
  /** Part of the rails at which class G switches, and of the draw that class A has at idle. */
  private static final double HALF = 0.5;

  /** Smallest share: keeps the logarithm finite. */
  private static final double LEAST = 0.03;

  private PartialDraw() {}

  /**
   * One possible law at a part of the volts.
   *
   * @param weight its probability
   * @param share the current above idle over that at the limit
   */
  record Law(double weight, double share) {}

  /** Returns the possible laws at a part of the volts at the limit, from 0 to 1. */
  static List<Law> at(ClassPrior prior, double volts) {
    if (prior.known().isPresent()) {
      return List.of(new Law(1, share(prior.known().get(), volts)));
    }
    List<Law> laws = new ArrayList<>();
    laws.add(new Law(1 - prior.switching(), share(AmplifierClass.B, volts)));
    laws.add(new Law(prior.switching(), share(AmplifierClass.D, volts)));
    return laws;
  }

  /** Returns the mean share at a part of the volts at the limit. */
  static double mean(ClassPrior prior, double volts) {
    return at(prior, volts).stream().mapToDouble(law -> law.weight() * law.share()).sum();
  }

  private static double share(AmplifierClass of, double volts) {
    double share =
        switch (of) {
          case A -> (volts - HALF) / (1 - HALF);
          case AB, B -> volts;
          case D -> volts * volts;
          case G -> volts * above(volts) / above(1);
        };
    return Math.max(LEAST, Math.min(1, share));
  }

  /** Returns 1 plus the part of a half sine's current that class G draws from the upper rails. */
  private static double above(double volts) {
    double sine = HALF / volts;
    return sine < 1 ? 1 + Math.sqrt(1 - sine * sine) : 1;
  }
}
