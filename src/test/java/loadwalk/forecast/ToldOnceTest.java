package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

/** A caution appears once, and again when its number has grown by a third. */
class ToldOnceTest {
  private static Forecast brief(Caution... cautions) {
    Verdict verdict =
        Stream.of(cautions).map(Caution::gravity).reduce(Verdict.CLEAR, Verdict::graver);
    return new Forecast(
        "step", 0.95, Map.of(), Forecast.Demand.unknown(), List.of(cautions), verdict, "");
  }

  private static Caution shock(double volts) {
    return Caution.once("shock-volts", "", Verdict.HEED, "Volts.", volts);
  }

  private static Caution supply(Verdict verdict, double amps) {
    return Caution.giving("supply-amps", "supplies", verdict, "Amperes.", amps, amps / 90);
  }

  private static Caution lead(String label, double amps) {
    return Caution.giving("lead-amps", label, Verdict.HEED, "Amperes.", amps, amps / 80);
  }

  private static void assertBrief(Forecast brief, Verdict verdict, Caution... cautions) {
    assertEquals(List.of(cautions), brief.cautions());
    assertEquals(verdict, brief.verdict());
  }

  @Test
  void firstBrief_tellsAll() {
    assertBrief(ToldOnce.after(List.of(), brief(shock(60))), Verdict.HEED, shock(60));
  }

  @Test
  void toldBefore_isLeftOut_untilItHasGrownByAThird() {
    List<Forecast> before = List.of(brief(shock(60)));
    assertBrief(ToldOnce.after(before, brief(shock(79.9))), Verdict.CLEAR);
    assertBrief(ToldOnce.after(before, brief(shock(80))), Verdict.HEED, shock(80));
    List<Forecast> twice = List.of(brief(shock(60)), brief(shock(80)));
    assertBrief(ToldOnce.after(twice, brief(shock(100))), Verdict.CLEAR);
  }

  private static Forecast opening(String code, Forecast brief) {
    GivesFirst first =
        new GivesFirst(code, "what carries", ReadingId.SUPPLY_AMPS, 86, 90, List.of());
    return new Forecast(
        brief.stepId(),
        brief.level(),
        brief.readings(),
        brief.demand(),
        brief.cautions(),
        brief.verdict(),
        Optional.of(first),
        brief.basis());
  }

  @Test
  void whatMayGive_keepsItsVerdict_thoughTheOpeningLineAloneTellsIt() {
    List<Forecast> before = List.of(brief(supply(Verdict.HEED, 85)));
    Forecast now = opening("supply-amps", brief(supply(Verdict.HEED, 86)));
    assertBrief(ToldOnce.after(before, now), Verdict.HEED);
  }

  @Test
  void whatMayGive_isToldAgain_whereTheOpeningLineIsAboutAnotherPart() {
    List<Forecast> before = List.of(brief(supply(Verdict.HEED, 85), lead("plus", 85)));
    Forecast now = brief(supply(Verdict.HEED, 86), lead("plus", 86));
    Caution worst = supply(Verdict.HEED, 86);
    assertBrief(ToldOnce.after(before, opening("bench-fuse", now)), Verdict.HEED, worst);
    assertBrief(ToldOnce.after(before, now), Verdict.HEED, worst);
    assertBrief(ToldOnce.after(before, opening("lead-amps", now)), Verdict.HEED);
  }

  @Test
  void halt_isAlwaysTold() {
    List<Forecast> before = List.of(brief(supply(Verdict.HALT, 200)));
    Caution halt = supply(Verdict.HALT, 95);
    assertBrief(ToldOnce.after(before, brief(halt)), Verdict.HALT, halt);
  }

  @Test
  void anotherPart_isAnotherCaution() {
    List<Forecast> before = List.of(brief(lead("plus", 70)));
    Caution minus = lead("minus", 70);
    assertBrief(ToldOnce.after(before, brief(lead("plus", 70), minus)), Verdict.HEED, minus);
  }

  @Test
  void cautionWithoutANumber_isAlwaysTold() {
    Caution cooled = new Caution("cooled", Verdict.HEED, "It has cooled.", 1);
    assertBrief(ToldOnce.after(List.of(brief(cooled)), brief(cooled)), Verdict.HEED, cooled);
  }
}
