package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CautionTest {
  private static final double ENDLESS = Double.POSITIVE_INFINITY;

  @Test
  void severity_thatCannotBeTold_isEndless_neverNoNumber() {
    assertEquals(ENDLESS, new Caution("fuse", Verdict.HEED, "No fuse.", ENDLESS).severity());
    assertThrows(
        IllegalArgumentException.class,
        () -> new Caution("fuse", Verdict.HEED, "No fuse.", Double.NaN));
  }

  @Test
  void whatIsMissing_isNamed() {
    assertMissing("code", null, Verdict.HEED, "No fuse.");
    assertMissing("gravity", "fuse", null, "No fuse.");
    assertMissing("text", "fuse", Verdict.HEED, null);
  }

  private static void assertMissing(String what, String code, Verdict gravity, String text) {
    NullPointerException missing =
        assertThrows(NullPointerException.class, () -> new Caution(code, gravity, text, 1));
    assertEquals(what, missing.getMessage());
  }
}
