package loadwalk.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loadwalk.bench.Mode;
import org.junit.jupiter.api.Test;

/** The rising tone of the practice bench's sound input. */
class PracticeToneTest {
  @Test
  void whereThdPassesOnePercent_theVoltsAreThoseOfTheMeters() {
    for (long seed = 1; seed <= 5; seed++) {
      PracticeRig rig = PracticeRig.ofSeed(seed);
      PracticeTone tone = rig.tone(Mode.STEREO, 4, 40);
      double limitVolts = rig.point(Mode.STEREO, 4, 1).outputVolts();
      // The rise is 14 dB in 12 s from 12 dB below the limit: the limit lies 12/14 of the way.
      double atLimit = 12 * 12.0 / 14;
      double squares = 0;
      int steps = 2000;
      for (int i = 0; i < steps; i++) {
        double volts = tone.volts(atLimit - 0.0125 + 0.025 * i / steps);
        squares += volts * volts / steps;
      }
      assertEquals(limitVolts, Math.sqrt(squares), 0.003 * limitVolts, "seed " + seed);
    }
  }

  @Test
  void rise_beginsAnewEveryTwelveSeconds() {
    PracticeTone tone = PracticeRig.ofSeed(1).tone(Mode.STEREO, 4, 40);
    assertEquals(tone.volts(0.006), tone.volts(12.006), 1e-9);
    assertTrue(Math.abs(tone.volts(0.00625)) < tone.limitVolts() / 2);
  }
}
