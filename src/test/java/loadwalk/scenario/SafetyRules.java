package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.WalkState;

/**
 * Reads the facts of a journal one by one and checks the rules that keep people whole, with a
 * bookkeeping of its own that shares nothing with the gate but the meaning of a step's load.
 */
final class SafetyRules {
  private final String where;
  private final Map<String, Forecast> briefs = new HashMap<>();
  private final Map<String, Boolean> lifted = new HashMap<>();
  private final Map<String, Double> armed = new HashMap<>();
  private final Map<String, Boolean> openDoubts = new HashMap<>();
  private WalkState state;
  private boolean stopped;

  private SafetyRules(String where) {
    this.where = where;
  }

  static void check(List<Fact> facts, String where) {
    SafetyRules rules = new SafetyRules(where);
    facts.forEach(rules::hear);
    rules.doubtsAreOpenOrAnswered();
  }

  private void hear(Fact fact) {
    if (fact instanceof Fact.Briefed briefed) {
      briefs.put(briefed.step(), briefed.forecast());
      lifted.remove(briefed.step());
      armed.remove(briefed.step());
    } else if (fact instanceof Fact.HaltLifted lift) {
      long letters = lift.reason().chars().filter(Character::isLetter).count();
      lifted.put(lift.step(), letters >= 3);
    } else if (fact instanceof Fact.Armed arm) {
      armed.put(arm.step(), arm.ohms());
    } else if (fact instanceof Fact.Begun begun) {
      begun(begun.step());
    }
    doubts(fact);
    stops(fact);
    state = fact.applyTo(state, 0);
  }

  private void begun(String step) {
    assertTrue(!stopped, () -> where + ": " + step + " began while the walk was stopped");
    Forecast brief = briefs.get(step);
    assertTrue(brief != null, () -> where + ": " + step + " began without a brief");
    if (brief.verdict() == Verdict.HALT) {
      assertEquals(true, lifted.get(step), where + ": halted " + step + " began without a reason");
    }
    OptionalDouble load = load(step);
    if (brief.verdict() != Verdict.CLEAR && load.isPresent()) {
      Double typed = armed.get(step);
      assertTrue(typed != null, () -> where + ": " + step + " began without being armed");
      double off = Math.abs(typed / load.getAsDouble() - 1);
      assertTrue(off <= 0.1 + 1e-9, () -> where + ": " + step + " armed with " + typed);
    }
  }

  private OptionalDouble load(String step) {
    PlannedStep planned = state.planned(step).orElseThrow();
    return Targets.of(state, planned)
        .filter(t -> t.kind() == Target.Kind.LOADED || t.kind() == Target.Kind.WARM_UP)
        .map(t -> OptionalDouble.of(t.ohms()))
        .orElse(OptionalDouble.empty());
  }

  private void stops(Fact fact) {
    if (fact instanceof Fact.Stopped) {
      stopped = true;
    } else if (fact instanceof Fact.StopExplained explained) {
      assertTrue(!explained.reason().isBlank(), where);
      stopped = false;
    }
  }

  private void doubts(Fact fact) {
    if (fact instanceof Fact.Entered entered) {
      openDoubts.put(key(entered.step(), entered.reading()), !entered.doubts().isEmpty());
    } else if (fact instanceof Fact.Doubted doubted) {
      openDoubts.put(key(doubted.step(), doubted.reading()), true);
    } else if (fact instanceof Fact.StoodBy stood) {
      openDoubts.put(key(stood.step(), stood.reading()), false);
    }
  }

  /** Volts and watts of one output are one reading in two units. */
  private static String key(String step, ReadingId id) {
    return step + "/" + (id == ReadingId.OUTPUT_WATTS ? ReadingId.OUTPUT_VOLTS : id);
  }

  private void doubtsAreOpenOrAnswered() {
    List<String> open =
        state.openDoubts().stream().map(d -> key(d.stepId(), d.reading())).sorted().toList();
    List<String> expected =
        openDoubts.entrySet().stream()
            .filter(Map.Entry::getValue)
            .map(Map.Entry::getKey)
            .sorted()
            .toList();
    assertEquals(expected, open, where + ": a doubt went away without an answer");
  }
}
