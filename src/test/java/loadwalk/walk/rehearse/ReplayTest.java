package loadwalk.walk.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.plan.StockRules;
import loadwalk.sequence.Measure;
import loadwalk.sequence.Sequence;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.Replay.Difference;
import loadwalk.walk.rehearse.Replay.What;
import org.junit.jupiter.api.Test;

class ReplayTest {
  private static final Event SLIP =
      new Intent.EnterAll("stereo-2", Map.of(ReadingId.OUTPUT_VOLTS, "128 V"));
  private static final Fact.Opened OPENED =
      new Fact.Opened(
          "walk",
          "1",
          new Sequence(
              "two",
              "Two",
              40,
              1,
              13.8,
              List.of(new Measure(Mode.STEREO, 4, false), new Measure(Mode.STEREO, 2, false)),
              ""),
          "",
          Amplifier.named("Brightmoor", "B2"),
          Bench.unknown(),
          OptionalLong.empty());

  @Test
  void replay_byTheRulesOfTheWalk_differsNowhere() {
    List<List<Stamped>> records = walked(StockRules.RULES, SLIP);
    assertTrue(records.toString().contains("decimal point"), "the walk holds a doubt");
    assertEquals(List.of(), Replay.of(StockRules.RULES, records));
  }

  @Test
  void replay_byOtherRules_tellsVerdictCautionsAndDoubts() {
    List<Difference> differences = Replay.of(new Strict(), walked(StockRules.RULES, SLIP));
    Difference verdict = first(differences, What.VERDICT);
    assertEquals("stereo-4", verdict.step());
    assertEquals(Set.of("halt"), verdict.today());
    assertEquals("verdict", verdict.what().word());
    assertEquals(Set.of("strict"), first(differences, What.CAUTIONS).today());
    Difference doubt = first(differences, What.DOUBTS);
    assertEquals(Optional.of(ReadingId.OUTPUT_VOLTS), doubt.reading());
    assertEquals("13.4 V", doubt.typed());
    assertEquals(Set.of(), doubt.kept());
    assertEquals(Set.of("digits-swapped"), doubt.today());
  }

  @Test
  void doubtThatWaitedForAmps_comesAsTheStepEnds_andHoldsItOnce() {
    int late = 0;
    for (double volts = 5; volts < 30; volts += 0.5) {
      Event typed = new Intent.EnterAll("stereo-2", Map.of(ReadingId.OUTPUT_VOLTS, volts + " V"));
      int atEntry = doubts(walked(StockRules.RULES, typed));
      List<List<Stamped>> ended =
          walked(StockRules.RULES, typed, new Intent.Finish(), new Intent.Finish());
      late += doubts(ended) - atEntry;
      assertTrue(ended.toString().contains("Done[step=stereo-2]"), volts + " V");
      assertEquals(List.of(), Replay.of(StockRules.RULES, ended), volts + " V");
      boolean once =
          walked(StockRules.RULES, typed, new Intent.Finish())
              .toString()
              .contains("Done[step=stereo-2]");
      assertEquals(doubts(ended) == atEntry, once, volts + " V");
    }
    assertTrue(late > 0, "some output is doubted only where no amps come");
  }

  /** A doubt that waited for amps and came as the step ended is compared too, either way. */
  @Test
  void doubtAtTheEndOfAStep_isComparedWithTodays() {
    Event volts = new Intent.EnterAll("stereo-2", Map.of(ReadingId.OUTPUT_VOLTS, "12.9 V"));
    List<List<Stamped>> late = walked(new AtTheEnd(true), volts, new Intent.Finish());
    Difference gone = only(Replay.of(new AtTheEnd(false), late));
    assertEquals("stereo-2", gone.step());
    assertEquals("12.9 V", gone.typed());
    assertEquals(Set.of("digits-swapped"), gone.kept());
    assertEquals(Set.of(), gone.today());
    List<List<Stamped>> none = walked(new AtTheEnd(false), volts, new Intent.Finish());
    Difference fresh = only(Replay.of(new AtTheEnd(true), none));
    assertEquals(Set.of(), fresh.kept());
    assertEquals(Set.of("digits-swapped"), fresh.today());
  }

  private static Difference only(List<Difference> differences) {
    assertEquals(1, differences.size(), differences.toString());
    return differences.get(0);
  }

  private static int doubts(List<List<Stamped>> records) {
    return records.toString().split("Doubt\\[", -1).length - 1;
  }

  private static Difference first(List<Difference> all, What what) {
    return all.stream().filter(d -> d.what() == what).findFirst().orElseThrow();
  }

  /** Returns the journal of a walk to its second step, and of what happens there. */
  private static List<List<Stamped>> walked(Forecaster forecaster, Event... second) {
    Walker walker = new Walker(forecaster);
    List<List<Stamped>> records = new ArrayList<>();
    records.add(List.of(new Stamped(OPENED, 0)));
    Model model = Model.of(WalkState.begin(OPENED, 0), 1);
    List<Event> events =
        new ArrayList<>(
            List.of(
                new Event.Reopened(0, 0),
                new Intent.Arm("4"),
                new Intent.Begin(),
                new Intent.EnterAll(
                    "stereo-4",
                    Map.of(ReadingId.OUTPUT_VOLTS, "13.4 V", ReadingId.SUPPLY_AMPS, "10 A")),
                new Intent.Finish(),
                new Intent.Arm("2"),
                new Intent.Begin()));
    events.addAll(List.of(second));
    for (Event event : events) {
      model = walker.update(model, event).model();
      while (model.isWriting()) {
        records.add(model.waiting());
        model = walker.update(model, new Event.Kept(model.waiting())).model();
      }
    }
    return records;
  }

  /** Halts everything and doubts all output volts. */
  private static final class Strict implements Forecaster {
    @Override
    public Forecast forecast(Evidence evidence, Target target) {
      return new Forecast(
          target.stepId(),
          0.95,
          Map.of(),
          Forecast.Demand.unknown(),
          List.of(new Caution("strict", Verdict.HALT, "Everything halts.", 1)),
          Verdict.HALT,
          "Rests on nothing.");
    }

    @Override
    public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
      return entries.containsKey(ReadingId.OUTPUT_VOLTS)
          ? List.of(
              new Doubt(ReadingId.OUTPUT_VOLTS, Slip.DIGITS_SWAPPED, "It is off.", "Look at it."))
          : List.of();
    }
  }

  /** Finds nothing off while more may come; then doubts the output volts, or not. */
  private record AtTheEnd(boolean doubts) implements Forecaster {
    @Override
    public Forecast forecast(Evidence evidence, Target target) {
      return new Forecast(
          target.stepId(),
          0.95,
          Map.of(),
          Forecast.Demand.unknown(),
          List.of(),
          Verdict.CLEAR,
          "Rests on nothing.");
    }

    @Override
    public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
      return doubts ? new Strict().judge(evidence, target, entries) : List.of();
    }

    @Override
    public List<Doubt> judgeSoFar(
        Evidence evidence, Target target, Map<ReadingId, Double> entries) {
      return List.of();
    }
  }
}
