package loadwalk.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class PowerAtSupplyTest {
  private static final Quantity WATTS = Quantity.of(100, Unit.WATT, "watts", 2);
  private static final Quantity VOLTS = Quantity.of(12, Unit.VOLT, "supply", 0.03);

  @Test
  void unregulated_goesWithTheSquareOfSupply() {
    // Ideal class B at one load: 12 V gives 4.5 W into 4 ohm, 14.4 V gives 6.48 W (reference
    // class-b, computed).
    Quantity measured = Quantity.of(4.5, Unit.WATT, "watts", 0.045);
    PowerAtSupply estimate = PowerAtSupply.of(measured, VOLTS, 14.4, Optional.of(false));
    assertEquals(6.48, estimate.watts().value(), 1e-12);
    // (u/P)² = (uP/P)² + (2 uV/V)²: JCGM 100:2008, 5.1.6.
    assertEquals(6.48 * Math.hypot(0.01, 2 * 0.0025), estimate.watts().u(), 1e-12);
    assertTrue(estimate.assumption().startsWith("estimate from 12 V"), estimate.assumption());
  }

  @Test
  void regulated_stays() {
    assertEquals(WATTS, PowerAtSupply.of(WATTS, VOLTS, 14.4, Optional.of(true)).watts());
  }

  @Test
  void unknown_liesBetweenBoth() {
    PowerAtSupply estimate = PowerAtSupply.of(WATTS, VOLTS, 14.4, Optional.empty());
    assertEquals(122, estimate.watts().value(), 1e-9);
    assertEquals(
        22 / Math.sqrt(3), estimate.watts().contributions().get("rails regulated or not"), 1e-9);
    assertTrue(estimate.assumption().contains("not known"), estimate.assumption());
  }

  @Test
  void assumption_isSaidInFull() {
    assertEquals(
        "estimate from 12 V: rails taken as regulated, so the power stays",
        PowerAtSupply.of(WATTS, VOLTS, 14.4, Optional.of(true)).assumption());
    assertEquals(
        "estimate from 12 V: rails taken as unregulated, so power goes with the square of the"
            + " supply volts",
        PowerAtSupply.of(WATTS, VOLTS, 14.4, Optional.of(false)).assumption());
    assertEquals(
        "estimate from 12 V: whether the rails are regulated is not known, so halfway between",
        PowerAtSupply.of(WATTS, VOLTS, 14.4, Optional.empty()).assumption());
  }

  @Test
  void sameSupply_changesNothing() {
    for (Optional<Boolean> regulated :
        java.util.List.of(Optional.of(true), Optional.of(false), Optional.<Boolean>empty())) {
      assertEquals(100, PowerAtSupply.of(WATTS, VOLTS, 12, regulated).watts().value(), 1e-9);
    }
  }

  @Test
  void supplyOfZero_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> PowerAtSupply.of(WATTS, Quantity.exact(0, Unit.VOLT), 14.4, Optional.of(false)));
    assertThrows(
        IllegalArgumentException.class,
        () -> PowerAtSupply.of(WATTS, VOLTS, Double.NaN, Optional.of(true)));
  }
}
