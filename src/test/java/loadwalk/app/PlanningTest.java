package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Map;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.practice.PracticeRig;
import org.junit.jupiter.api.Test;

/** The forecaster of the screen against the one it stands for. */
class PlanningTest {
  private static final Target FOUR = Target.loaded("stereo-4", Mode.STEREO, 4);
  private static final Target TWO = Target.loaded("stereo-2", Mode.STEREO, 2);

  private final Planning planning = Planning.of(Tables.stock());
  private final Forecaster shown = Planning.forecasting(() -> planning);

  private static Evidence evidence() {
    PracticeRig rig = PracticeRig.ofSeed(1).warm(900, 0.125);
    Map<ReadingId, Double> read = rig.read(Mode.STEREO, 4, Target.Kind.LOADED);
    return new Evidence(
        rig.amplifier().printed(),
        rig.bench().described(),
        new Evidence.Conditions(1000, 1, 13.8),
        List.of(new Observation(FOUR, read)));
  }

  /** A doubt that the supply amps may settle waits for them on the screen too. */
  @Test
  void entrySoFar_isJudgedAsSuch() {
    Evidence evidence = evidence();
    int waiting = 0;
    for (double volts = 1; volts < 60; volts += 0.5) {
      Map<ReadingId, Double> typed = Map.of(ReadingId.OUTPUT_VOLTS, volts);
      var soFar = planning.forecaster().judgeSoFar(evidence, TWO, typed);
      var whole = planning.forecaster().judge(evidence, TWO, typed);
      assertEquals(soFar, shown.judgeSoFar(evidence, TWO, typed), volts + " V");
      assertEquals(whole, shown.judge(evidence, TWO, typed), volts + " V");
      waiting += soFar.equals(whole) ? 0 : 1;
    }
    assertNotEquals(0, waiting, "no output was judged otherwise while amps were to come");
  }
}
