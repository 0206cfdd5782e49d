package loadwalk.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import loadwalk.bench.Lead;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.plan.wiring.WiringLoadBank;
import loadwalk.practice.PracticeRig;
import org.junit.jupiter.api.Test;

/** The rules against the forecaster they stand for, and with tables of their own. */
class RulesTest {
  private static final Target FOUR = Target.loaded("stereo-4", Mode.STEREO, 4);
  private static final Target TWO = Target.loaded("stereo-2", Mode.STEREO, 2);

  private final Forecaster behind =
      new StandardForecaster(new StepCautions(Tables.stock(), new WiringLoadBank(Tables.stock())));
  private final Rules rules = Rules.of(Map.of());

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
      var soFar = behind.judgeSoFar(evidence, TWO, typed);
      var whole = behind.judge(evidence, TWO, typed);
      assertEquals(soFar, rules.judgeSoFar(evidence, TWO, typed), volts + " V");
      assertEquals(whole, rules.judge(evidence, TWO, typed), volts + " V");
      waiting += soFar.equals(whole) ? 0 : 1;
    }
    assertNotEquals(0, waiting, "no output was judged otherwise while amps were to come");
  }

  @Test
  void ownTables_standBeforeTheStockOnes_andAWrongOneIsToldAtOnce() {
    String head = "gauge,ohmsPerKilometre,source,how\n";
    Rules own = Rules.of(Map.of("wire.csv", head + "AWG 4,8.15,measured,read\n"));
    Lead lead = new Lead("plus", new Lead.Awg(4), 1, 1);
    assertEquals(8.15e-3, own.wire().ohms(lead, 20), 1e-12);
    assertEquals(0.815e-3, rules.wire().ohms(lead, 20), 1e-6);
    assertThrows(
        IllegalArgumentException.class, () -> Rules.of(Map.of("wire.csv", head + "AWG 4,x,,\n")));
  }
}
