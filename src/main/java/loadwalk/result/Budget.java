package loadwalk.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;

/**
 * Makes the uncertainty budget of watts from their own contributions, so that its lines always add
 * up to their uncertainty.
 */
final class Budget {
  private Budget() {}

  /** An input's part of one source. */
  private record Input(double u, Unit unit) {}

  /**
   * Returns one line for each source, largest first.
   *
   * @param inputs the volts and ohms that the watts come from; where several share a source, the
   *     line shows the first one's part, and the sensitivity is that of all of them together
   */
  static List<BudgetLine> of(Quantity watts, List<Quantity> inputs) {
    Map<String, Input> known = new LinkedHashMap<>();
    for (Quantity input : inputs) {
      input
          .contributions()
          .forEach((source, u) -> known.putIfAbsent(source, new Input(u, input.unit())));
    }
    return lines(watts, known);
  }

  /** Returns the budget of a mean of runs, whose own budgets name the inputs. */
  static List<BudgetLine> ofMean(Quantity watts, List<StepResult> runs) {
    Map<String, Input> known = new LinkedHashMap<>();
    for (StepResult run : runs) {
      for (BudgetLine line : run.budget()) {
        known.putIfAbsent(line.source(), new Input(line.inputU(), line.inputUnit()));
      }
    }
    return lines(watts, known);
  }

  private static List<BudgetLine> lines(Quantity watts, Map<String, Input> known) {
    List<BudgetLine> lines = new ArrayList<>();
    watts
        .contributions()
        .forEach(
            (source, part) -> {
              Input own = new Input(Math.abs(part), Unit.WATT);
              Input input = known.getOrDefault(source, own);
              if (part != 0) {
                lines.add(
                    new BudgetLine(
                        source,
                        Math.abs(input.u),
                        input.unit,
                        input.unit == Unit.WATT && input == own ? 1 : part / input.u,
                        Math.abs(part),
                        watts.degreesOfFreedom(source)));
              }
            });
    lines.sort(Comparator.comparingDouble(BudgetLine::contribution).reversed());
    return lines;
  }
}
