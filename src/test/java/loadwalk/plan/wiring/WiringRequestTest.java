package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WiringRequestTest {
  private static final WiringRequest FOUR = new WiringRequest(4, 100, 1, 5);

  /** By hand: 4 Ω ± 5 % is 3.8 to 4.2 Ω, the ends included. */
  @ParameterizedTest
  @CsvSource({
    "3.7999, 100, false",
    "3.8, 100, true",
    "4, 100, true",
    "4, 99.999, false",
    "4.2, 100, true",
    "4.2001, 100, false"
  })
  void load_isMetWithinItsTolerance_endsIncluded(double ohms, double watts, boolean met) {
    assertEquals(met, FOUR.isMetBy(ohms, watts));
  }

  @ParameterizedTest
  @CsvSource({"5", "1", "0"})
  void ends_areWithin(double tolerance) {
    WiringRequest request = new WiringRequest(4, 100, 1, tolerance);
    assertTrue(request.isMetBy(request.lowestOhms(), 100));
    assertTrue(request.isMetBy(request.highestOhms(), 100));
    assertTrue(request.isMetBy(4, request.leastWatts()));
  }
}
