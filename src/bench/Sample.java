import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Values measured under like conditions. */
final class Sample {
  private final List<Double> values = new ArrayList<>();

  void add(double value) {
    values.add(value);
  }

  void addAll(Sample other) {
    values.addAll(other.values);
  }

  double median() {
    return quantile(0.5);
  }

  /** Returns the value that the given share of all lies at or below. */
  double quantile(double share) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    int at = (int) Math.ceil(share * sorted.size()) - 1;
    return sorted.get(Math.max(0, at));
  }
}
