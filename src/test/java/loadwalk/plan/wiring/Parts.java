package loadwalk.plan.wiring;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.LoadResistor;

/** Makes single resistors for tests of networks. */
final class Parts {
  private Parts() {}

  static Network.Part part(
      String label, int number, double ohms, double tolerancePercent, double watts) {
    return new Network.Part(
        label + " #" + number,
        new LoadResistor(label, ohms, tolerancePercent, watts, 1, OptionalDouble.empty()));
  }

  /** Returns what bears a share of the rating. */
  static ToDoubleFunction<LoadResistor> share(double share) {
    return kind -> share * kind.watts();
  }
}
