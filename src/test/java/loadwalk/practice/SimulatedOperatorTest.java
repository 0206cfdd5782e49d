package loadwalk.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import org.junit.jupiter.api.Test;

class SimulatedOperatorTest {
  @Test
  void everyText_isUnderstoodAsTheReadingShown() {
    for (long seed = 1; seed <= 60; seed++) {
      PracticeRig rig = PracticeRig.ofSeed(seed).warm(60, 0.5);
      SimulatedOperator operator = new SimulatedOperator(seed);
      for (Target.Kind kind : Target.Kind.values()) {
        for (double ohms : new double[] {4, 0.5}) {
          Mode mode = seed % 2 == 0 ? Mode.STEREO : Mode.BRIDGED;
          Map<ReadingId, Double> shown = rig.read(mode, ohms, kind);
          operator
              .answers(rig, mode, ohms, kind)
              .forEach((id, text) -> assertUnderstood(id, text, shown.get(id)));
        }
      }
    }
  }

  @Test
  void sameSeed_typesTheSame_andSeedsDiffer() {
    PracticeRig rig = PracticeRig.ofSeed(1);
    Set<Map<ReadingId, String>> manners = new HashSet<>();
    for (long seed = 1; seed <= 30; seed++) {
      Map<ReadingId, String> once = answers(seed, rig);
      assertEquals(once, answers(seed, rig), "seed " + seed);
      manners.add(once);
    }
    assertTrue(manners.size() > 10, "only " + manners.size() + " manners of typing");
    String all = manners.toString();
    assertTrue(all.contains(","), "no decimal comma");
    assertTrue(all.contains(" V"), "no unit");
  }

  private static Map<ReadingId, String> answers(long seed, PracticeRig rig) {
    return new SimulatedOperator(seed).answers(rig, Mode.STEREO, 4, Target.Kind.LOADED);
  }

  private static void assertUnderstood(ReadingId id, String text, double shown) {
    Typed typed = EntryParser.parse(text, id.unit());
    Typed.Number number = assertInstanceOf(Typed.Number.class, typed, id.key() + ": " + text);
    assertEquals(shown, number.value(), 1e-9 * (1 + Math.abs(shown)), id.key() + ": " + text);
    assertEquals(id.unit(), number.unit(), text);
  }
}
