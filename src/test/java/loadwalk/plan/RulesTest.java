package loadwalk.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
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
    Map<String, String> tables = Map.of("wire.csv", head + "AWG 4,8.15,measured,read\n");
    Rules own = Rules.of(tables);
    assertEquals(tables, own.ownTables());
    Lead lead = new Lead("plus", new Lead.Awg(4), 1, 1);
    assertEquals(8.15e-3, own.wire().ohms(lead, 20), 1e-12);
    assertEquals(0.815e-3, rules.wire().ohms(lead, 20), 1e-6);
    assertThrows(
        IllegalArgumentException.class, () -> Rules.of(Map.of("wire.csv", head + "AWG 4,x,,\n")));
  }

  /** Plan, forecast and judgement go by the same tables, the operator's where there are any. */
  @Test
  void ownTables_reachThePlanAndTheCautions() {
    String rows =
        "key,value,unit,source,how\n"
            + "fuse-continuous-percent,50,percent,mine,read\nshock-volts,1,V,mine,read\n";
    Rules own = Rules.of(Map.of("limits.csv", rows));
    assertEquals(50, own.tables().limit("fuse-continuous-percent"));
    assertEquals(75, rules.tables().limit("fuse-continuous-percent"));
    assertEquals(50, continuousPercent(own));
    assertEquals(75, continuousPercent(rules));
    Evidence known = evidence();
    assertEquals(behind.forecast(known, TWO), rules.forecast(known, TWO));
    assertEquals(List.of(), codes(rules.forecast(known, TWO)));
    assertEquals(List.of("shock-volts"), codes(own.forecast(known, TWO)));
  }

  private static List<String> codes(Forecast forecast) {
    return forecast.cautions().stream().map(Caution::code).toList();
  }

  /** Returns the share of its rating that a plan allows an advised fuse, percent. */
  private static long continuousPercent(Rules rules) {
    PracticeRig rig = PracticeRig.ofSeed(1);
    String fuse =
        rules
            .plan(PlanExample.STEREO_4, rig.amplifier().printed(), Bench.unknown(), List.of())
            .needs()
            .stream()
            .filter(need -> need.startsWith("A "))
            .findFirst()
            .orElseThrow();
    String[] words = fuse.replaceAll("A (\\S+) A fuse .* good for (\\S+) A.*", "$1 $2").split(" ");
    return Math.round(100 * Double.parseDouble(words[1]) / Double.parseDouble(words[0]));
  }

  /** What the rules are made of is made once, however often they are asked. */
  @Test
  void everything_isMadeOnce() {
    rules.prepare();
    assertSame(rules.tables(), rules.tables());
    assertSame(rules.wire(), rules.wire());
  }
}
