package loadwalk.walk.rehearse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.quantity.Typed;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Briefing;
import loadwalk.walk.Entries;
import loadwalk.walk.Model;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepReviewer;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.fact.WalkState;

/**
 * Runs a kept walk through today's rules and lists what would be judged differently.
 *
 * <p>Each brief and each entry is judged again from what the journal held at that moment, so that
 * one difference does not cause others after it.
 */
public final class Replay implements StepReviewer {
  private final Forecaster forecaster;
  private final Entries entries;
  private final List<Difference> differences = new ArrayList<>();
  private WalkState state;

  private Replay(Forecaster forecaster) {
    this.forecaster = forecaster;
    this.entries = new Entries(forecaster);
  }

  /** What is compared. */
  public enum What {
    VERDICT("verdict"),
    CAUTIONS("cautions"),
    DOUBTS("doubts");

    private final String word;

    What(String word) {
      this.word = word;
    }

    /** Returns the word shown and written. */
    public String word() {
      return word;
    }
  }

  /**
   * A judgement that would be different today.
   *
   * @param step the step
   * @param reading the reading, for doubts
   * @param typed what was typed, for doubts; empty otherwise
   * @param what what differs
   * @param kept the judgement in the journal: a verdict, codes of cautions or of slips
   * @param today the judgement today
   */
  public record Difference(
      String step,
      Optional<ReadingId> reading,
      String typed,
      What what,
      Set<String> kept,
      Set<String> today) {
    /** Copies the sets, in alphabetical order. */
    public Difference {
      kept = new TreeSet<>(kept);
      today = new TreeSet<>(today);
    }
  }

  /**
   * Compares a journal with today's rules.
   *
   * @param records the facts of each record, oldest first
   * @throws UnreadableFact if the first fact does not open a walk
   */
  public static List<Difference> of(Forecaster forecaster, List<List<Stamped>> records) {
    boolean opens =
        !records.isEmpty()
            && !records.get(0).isEmpty()
            && records.get(0).get(0).fact().opening().isPresent();
    if (!opens) {
      throw new UnreadableFact("the first fact does not open a walk");
    }
    Replay replay = new Replay(forecaster);
    records.forEach(replay::record);
    return List.copyOf(replay.differences);
  }

  private void record(List<Stamped> facts) {
    int next = 0;
    while (next < facts.size()) {
      int end = entryEnd(facts, next);
      if (end > next) {
        compareRun(judgements(facts.subList(next, end)));
      } else {
        end = next + 1;
        facts.get(next).fact().showTo(this);
      }
      facts.subList(next, end).forEach(s -> state = s.fact().applyTo(state, s.wallMillis()));
      next = end;
    }
  }

  /** Returns the end of a run of judgements: readings with their doubts, or late doubts alone. */
  private static int entryEnd(List<Stamped> facts, int start) {
    int end = start;
    while (end < facts.size() && facts.get(end).fact().judgement().isPresent()) {
      end++;
    }
    return end;
  }

  private static List<Fact.OfReading> judgements(List<Stamped> facts) {
    return judged(facts.stream().map(Stamped::fact).toList());
  }

  private static List<Fact.OfReading> judged(List<Fact> facts) {
    return facts.stream().flatMap(fact -> fact.judgement().stream()).toList();
  }

  private void compareRun(List<Fact.OfReading> kept) {
    Fact.OfReading first = kept.get(0);
    if (first.entered().isEmpty()) {
      compareEnd(first.step(), kept);
    } else {
      compareEntry(first.step(), kept);
    }
  }

  /**
   * Compares the doubts raised at the end of a step, which had waited for a reading that never
   * came.
   */
  private void compareEnd(String step, List<Fact.OfReading> kept) {
    target(step)
        .ifPresent(t -> compareSlips(step, kept, judged(entries.atEnd(state, t)), Map.of()));
  }

  private Optional<Target> target(String step) {
    return state.planned(step).flatMap(p -> Targets.of(state, p));
  }

  @Override
  public void briefed(Fact.Briefed kept) {
    String step = kept.step();
    state.planned(step).ifPresent(p -> compareBrief(step, kept.forecast(), p));
  }

  @Override
  public void ended(String step) {
    compareEnd(step, List.of());
  }

  private void compareBrief(String step, Forecast kept, PlannedStep planned) {
    Forecast today = Briefing.of(forecaster, state, planned);
    compare(step, What.VERDICT, Set.of(kept.verdict().word()), Set.of(today.verdict().word()));
    compare(step, What.CAUTIONS, codes(kept), codes(today));
  }

  private static Set<String> codes(Forecast forecast) {
    return forecast.cautions().stream().map(Caution::code).collect(Collectors.toSet());
  }

  private void compare(String step, What what, Set<String> kept, Set<String> today) {
    if (!kept.equals(today)) {
      differences.add(new Difference(step, Optional.empty(), "", what, kept, today));
    }
  }

  private void compareEntry(String step, List<Fact.OfReading> kept) {
    Optional<Target> target = target(step);
    if (target.isEmpty()) {
      return;
    }
    Map<ReadingId, String> texts = new LinkedHashMap<>();
    Map<ReadingId, Typed.Number> typed = new LinkedHashMap<>();
    Map<ReadingId, Instrument> instruments = new LinkedHashMap<>();
    for (Fact.OfReading fact : kept) {
      fact.entered()
          .ifPresent(
              e -> {
                texts.put(e.reading(), e.text());
                e.instrument().ifPresent(by -> instruments.put(e.reading(), by));
                typed.put(
                    e.reading(), new Typed.Number(e.value(), e.reading().unit(), e.resolution()));
              });
    }
    List<Fact> today = entries.facts(Model.of(state, 1), target.get(), texts, typed, instruments);
    compareSlips(step, kept, judged(today), texts);
  }

  private void compareSlips(
      String step,
      List<Fact.OfReading> kept,
      List<Fact.OfReading> today,
      Map<ReadingId, String> texts) {
    Map<ReadingId, Set<String>> before = slips(kept);
    Map<ReadingId, Set<String>> after = slips(today);
    Set<ReadingId> all = new TreeSet<>(before.keySet());
    all.addAll(after.keySet());
    for (ReadingId id : all) {
      Set<String> was = before.getOrDefault(id, Set.of());
      Set<String> is = after.getOrDefault(id, Set.of());
      if (!was.equals(is)) {
        differences.add(
            new Difference(step, Optional.of(id), shown(texts, step, id), What.DOUBTS, was, is));
      }
    }
  }

  private String shown(Map<ReadingId, String> texts, String step, ReadingId id) {
    String earlier = state.step(step).latest(id).map(Entry::text).orElse("");
    return texts.getOrDefault(id, earlier);
  }

  private static Map<ReadingId, Set<String>> slips(List<Fact.OfReading> facts) {
    Map<ReadingId, Set<String>> slips = new LinkedHashMap<>();
    facts.forEach(fact -> slips.put(fact.reading(), codes(fact.doubts())));
    return slips;
  }

  private static Set<String> codes(List<Doubt> doubts) {
    return doubts.stream().map(d -> d.slip().code()).collect(Collectors.toSet());
  }
}
