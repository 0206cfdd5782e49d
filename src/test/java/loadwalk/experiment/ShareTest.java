package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The error of a share, by hand, and on which side of the known one it is a fault to be. */
class ShareTest {
  private static final Set<Share.Side> BOTH = EnumSet.allOf(Share.Side.class);

  /** A half of 100 scatters by √(0.5 · 0.5 / 100) = 5 %; two of them differ by √2 of that. */
  @Test
  void standardError_isBinomial_ofBothShares() {
    assertEquals(0.05, Share.standardError(0.5, 100, Long.MAX_VALUE), 1e-9);
    assertEquals(0.05 * Math.sqrt(2), Share.standardError(0.5, 100, 100), 1e-12);
    assertEquals(0.03, Share.standardError(0.9, 100, Long.MAX_VALUE), 1e-9);
  }

  /** Four standard errors of 5 % leave 30 to 70 of 100. */
  @Test
  void share_withinFourStandardErrors_isAsKnown() {
    assertFalse(off(31, EnumSet.of(Share.Side.FEWER)));
    assertTrue(off(29, EnumSet.of(Share.Side.FEWER)));
    assertFalse(off(71, EnumSet.of(Share.Side.FEWER)), "more of what is wanted");
    assertFalse(off(69, EnumSet.of(Share.Side.MORE)));
    assertTrue(off(71, EnumSet.of(Share.Side.MORE)));
    assertFalse(off(29, EnumSet.of(Share.Side.MORE)));
    assertTrue(off(29, BOTH) && off(71, BOTH));
  }

  @Test
  void knownShareOfNothing_leavesNoRoom() {
    Share never = new Share("heavy steps", 0, 20_000, BOTH);
    assertTrue(new Share("heavy steps", 0, 500, BOTH).against(never).isEmpty());
    assertTrue(new Share("heavy steps", 1, 500, BOTH).against(never).isPresent());
  }

  private static boolean off(long hits, Set<Share.Side> faults) {
    return new Share("slips", hits, 100, faults).against(known()).isPresent();
  }

  private static Share known() {
    return new Share("slips", 50_000_000, 100_000_000, BOTH);
  }
}
