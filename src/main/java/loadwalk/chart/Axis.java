package loadwalk.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * An axis of a chart.
 *
 * @param label what it shows, with its unit
 * @param logarithmic whether equal ratios take equal lengths; all values must then be above 0
 * @param fromZero whether 0 is always shown; never on a logarithmic axis
 * @param ticks the marks; if empty, the drawing chooses round numbers
 */
public record Axis(String label, boolean logarithmic, boolean fromZero, List<Tick> ticks) {
  /** Copies the ticks. */
  public Axis {
    ticks = List.copyOf(ticks);
    if (logarithmic && fromZero) {
      throw new IllegalArgumentException("a logarithmic axis has no zero: " + label);
    }
  }

  /** Returns an axis from zero with round marks. */
  public static Axis fromZero(String label) {
    return new Axis(label, false, true, List.of());
  }

  /** Returns an axis over the range of its values with round marks. */
  public static Axis overRange(String label) {
    return new Axis(label, false, false, List.of());
  }

  /** Returns an axis of named things side by side, the first at 0, the next at 1. */
  public static Axis ofThings(String label, List<String> names) {
    List<Tick> ticks = new ArrayList<>();
    names.forEach(name -> ticks.add(new Tick(ticks.size(), name)));
    return new Axis(label, false, false, ticks);
  }

  /** Returns a logarithmic axis with the given marks. */
  public static Axis ratios(String label, List<Tick> ticks) {
    return new Axis(label, true, false, ticks);
  }

  /**
   * A mark on an axis.
   *
   * @param value its position
   * @param label its text
   */
  public record Tick(double value, String label) {
    /** Checks the number. */
    public Tick {
      Finite.require(value, "tick");
    }
  }
}
