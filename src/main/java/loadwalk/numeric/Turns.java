package loadwalk.numeric;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds where a temperature turned from rising to falling or back, by more than its readings stray.
 */
final class Turns {
  /** Two digits, each half a step off, and two strays of the thermometer. */
  private static final double STRAYS = 2 * Math.sqrt(3);

  private Turns() {}

  /** Returns the indices of the turning points, oldest first. */
  static List<Integer> of(double[] celsius, double[] u) {
    List<Integer> turns = new ArrayList<>();
    int way = 0;
    int extreme = 0;
    for (int i = 1; i < celsius.length; i++) {
      double back = celsius[i] - celsius[extreme];
      double sure = STRAYS * Math.max(u[i], u[extreme]);
      if (way == 0 && Math.abs(back) > sure) {
        way = back > 0 ? 1 : -1;
        extreme = i;
      } else if (way != 0 && way * back >= 0) {
        extreme = i;
      } else if (way != 0 && way * back < -sure) {
        turns.add(extreme);
        way = -way;
        extreme = i;
      }
    }
    return turns;
  }
}
