package loadwalk.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ClipperTest {
  @Test
  void hardClipper_meetsTheClosedForms() {
    // Closed forms of the symmetrically clipped sine, computed and checked by FFT
    // (thd-clipped-sine table): 1 % THD at rms 0.723708 and drive 1/0.971487 of the clip level;
    // 10 % at 0.802422 and 1/0.778651.
    Clipper hard = new Clipper(400);
    assertEquals(0.723708, hard.atThd(1).rms(), 2e-3);
    assertEquals(1 / 0.971487, hard.atThd(1).drive(), 3e-3);
    assertEquals(0.802422, hard.atThd(10).rms(), 2e-3);
    assertEquals(1 / 0.778651, hard.atThd(10).drive(), 4e-3);
  }

  @Test
  void softClipper_reachesTheLimitBelowTheHardOne() {
    double hard = new Clipper(200).atThd(1).rms();
    double soft = new Clipper(8).atThd(1).rms();
    assertTrue(soft < 0.95 * hard, soft + " against " + hard);
  }

  @Test
  void atThd_landsOnTheLimit() {
    for (double knee : new double[] {4, 8, 20, 60}) {
      assertEquals(1, new Clipper(knee).atThd(1).thdPercent(), 1e-6, "knee " + knee);
    }
  }

  @Test
  void sine_hasCrestAndFormFactorOfASine() {
    // crest 1.414214, form factor 1.110721: class-b, crest and form factor table (theory).
    Clipper.Shape sine = Clipper.Shape.sine(1);
    assertEquals(1.414214, 1 / sine.rms(), 1e-6);
    assertEquals(1.110721, sine.rms() / sine.meanMagnitude(), 1e-6);
  }

  @Test
  void kneeOutOfRange_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Clipper(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Clipper(1));
  }
}
