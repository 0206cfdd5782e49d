package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class IntervalTest {
  private static final double UNKNOWN = Double.NaN;

  @Test
  void holds_itsEnds_andNothingBeyond() {
    Interval interval = new Interval(2, 5);
    assertTrue(interval.holds(2) && interval.holds(5) && interval.holds(3.3));
    assertFalse(interval.holds(1.999) || interval.holds(5.001) || interval.holds(UNKNOWN));
    assertEquals(3, interval.width());
  }

  @Test
  void endsOutOfOrder_orUnknown_areRefused() {
    assertEquals(0, new Interval(4, 4).width());
    assertThrows(IllegalArgumentException.class, () -> new Interval(5, 2));
    assertThrows(IllegalArgumentException.class, () -> new Interval(UNKNOWN, 2));
    assertThrows(IllegalArgumentException.class, () -> new Interval(2, UNKNOWN));
  }
}
