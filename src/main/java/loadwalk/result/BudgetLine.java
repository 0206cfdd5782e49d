package loadwalk.result;

import java.util.Objects;
import loadwalk.quantity.Unit;

/**
 * One line of the uncertainty budget of a step's watts in one load (in the form of JCGM 100:2008,
 * H.1).
 *
 * @param source where the uncertainty comes from
 * @param inputU the standard uncertainty of the input, in inputUnit
 * @param inputUnit the unit of the input
 * @param sensitivity the partial derivative of the watts with respect to the input, watts per
 *     inputUnit; 1 for a contribution already in watts
 * @param contribution the absolute contribution to the standard uncertainty of the watts, watts
 * @param degreesOfFreedom the degrees of freedom of this contribution; infinite for type B
 */
public record BudgetLine(
    String source,
    double inputU,
    Unit inputUnit,
    double sensitivity,
    double contribution,
    double degreesOfFreedom) {
  /** Checks the numbers. */
  public BudgetLine {
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(inputUnit, "inputUnit");
    if (!(inputU >= 0)
        || !Double.isFinite(sensitivity)
        || !(contribution >= 0)
        || !(degreesOfFreedom >= 1)) {
      throw new IllegalArgumentException("budget line " + source + " holds a bad number");
    }
  }
}
