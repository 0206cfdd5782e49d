package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The draw at part power against the current of each stage summed over one wave. */
class PartialDrawTest {
  private static final int POINTS = 200_000;
  private static final double[] PARTS = {0.1, 0.3, 0.51, 0.7071, 0.9, 1};

  /** Sums a function of the output volts, a part of the rails, over half a wave. */
  private static double mean(double peak, DoubleUnaryOperator supplyCurrent) {
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      sum += supplyCurrent.applyAsDouble(peak * Math.sin(Math.PI * (i + 0.5) / POINTS));
    }
    return sum / POINTS;
  }

  private static double share(String written, double part) {
    return PartialDraw.mean(ClassPrior.of(Optional.of(written)), part);
  }

  /** Class B takes the load current from the rail that drives it. */
  @Test
  void classB_drawsTheMeanOfItsHalfSine() {
    double full = mean(1, v -> v);
    for (double part : PARTS) {
      assertEquals(mean(part, v -> v) / full, share("AB", part), 1e-6);
      assertEquals(share("AB", part), share("B", part));
    }
  }

  /** Reference: η = π/4 · v/V (class-b.md), so at a quarter of the watts half of the current. */
  @Test
  void classB_atAQuarterOfThePower_hasHalfTheEfficiency() {
    assertEquals(0.392699 / 0.785398, 0.25 / share("B", 0.5), 1e-5);
  }

  /** Class D draws what it delivers and what its resistance heats: both go with the square. */
  @Test
  void classD_drawsWhatItDelivers() {
    double resistance = 0.07;
    DoubleUnaryOperator watts = v -> v * v + resistance * v * v;
    double full = mean(1, watts);
    for (double part : PARTS) {
      assertEquals(Math.max(0.03, mean(part, watts) / full), share("D", part), 1e-6);
    }
  }

  /** Class G takes the load current from half the rails while the wave is below them. */
  @Test
  void classG_drawsFromTheLowerRailsFirst() {
    DoubleUnaryOperator watts = v -> v * (v <= 0.5 ? 0.5 : 1);
    double full = mean(1, watts);
    for (double part : PARTS) {
      assertEquals(mean(part, watts) / full, share("G", part), 1e-4, "at " + part);
      assertEquals(share("G", part), share("H", part));
    }
  }

  /** Class A draws its bias, half of the full draw, until the load takes more than that. */
  @Test
  void classA_drawsNothingMoreUpToHalfTheVolts() {
    for (double part : PARTS) {
      double drawn = Math.max(0.5, part);
      assertEquals(Math.max(0.03, (drawn - 0.5) / 0.5), share("A", part), 1e-9);
    }
  }

  @Test
  void classNobodyKnows_isEitherOfTheTwoCommonOnes() {
    double unknown = PartialDraw.mean(ClassPrior.of(Optional.empty()), 0.5);
    assertTrue(unknown > share("D", 0.5) && unknown < share("B", 0.5), String.valueOf(unknown));
    assertEquals(2, PartialDraw.at(ClassPrior.of(Optional.empty()), 0.5).size());
    assertEquals(1, PartialDraw.at(ClassPrior.of(Optional.of("class d")), 0.5).size());
  }
}
