package loadwalk.walk;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.sequence.SequenceReader;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** A walk for unit tests: every fact is kept at once, and the forecast says what the test wants. */
public final class Floor implements Forecaster {
  public static final String SEQUENCE =
      """
      {"format":"loadwalk-sequence/1","name":"short","title":"Short","tone":{"hertz":40},
       "limit":{"thdPercent":1.0},"supplyVolts":13.8,
       "steps":[
        {"do":"warm-up","minutes":10,"powerFraction":0.5,"steadyCelsiusPerMinute":0.5},
        {"do":"idle"},
        {"do":"measure","mode":"stereo","ohms":4},
        {"do":"measure","mode":"bridged","ohms":4},
        {"do":"measure","mode":"bridged","ohms":2},
        {"do":"measure","mode":"stereo","ohms":1},
        {"do":"open-load"},
        {"do":"recheck","of":["heaviest"]}]}
      """;

  public Verdict verdict = Verdict.CLEAR;
  double severity = 2;
  public Evidence asked;
  public List<ReadingId> doubted = List.of();
  public boolean doubtsOnlyAtTheEnd;
  Optional<String> blamed = Optional.empty();
  public Model model;
  final List<Fact> facts = new ArrayList<>();
  final List<Effect> effects = new ArrayList<>();
  boolean disk = true;
  private final Walker walker = new Walker(this);

  public Floor() {
    this(SEQUENCE);
  }

  /** Opens a walk of another sequence. */
  public Floor(String sequence) {
    Fact.Opened opened =
        new Fact.Opened(
            "walk",
            "test",
            SequenceReader.read(sequence.getBytes(StandardCharsets.UTF_8), "short")
                .found()
                .orElseThrow(),
            sequence,
            Amplifier.named("Brightmoor", "B-70 II"),
            Bench.unknown(),
            OptionalLong.empty());
    model = Model.of(WalkState.begin(opened, 1_000_000), 1);
    hear(new Event.Reopened(0, 1_000_000));
  }

  @Override
  public Forecast forecast(Evidence evidence, Target target) {
    asked = evidence;
    List<Caution> cautions =
        verdict == Verdict.CLEAR
            ? List.of()
            : List.of(new Caution("test", verdict, "A caution of the test.", severity));
    return new Forecast(
        target.stepId(), 0.95, Map.of(), Forecast.Demand.unknown(), cautions, verdict, "Test.");
  }

  @Override
  public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    asked = evidence;
    return doubted.stream()
        .filter(entries::containsKey)
        .map(id -> new Doubt(id, Slip.DECIMAL_POINT, "It is off.", "Look at the meter.", blamed))
        .toList();
  }

  @Override
  public List<Doubt> judgeSoFar(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return doubtsOnlyAtTheEnd ? List.of() : judge(evidence, target, entries);
  }

  /** Hears an event and, where the disk takes it, everything that follows from it. */
  Floor hear(Event event) {
    Next next = walker.update(model, event);
    model = next.model();
    for (Effect effect : next.effects()) {
      effects.add(effect);
      if (effect instanceof Effect.AppendJournal append) {
        if (disk) {
          append.facts().forEach(f -> facts.add(f.fact()));
          hear(new Event.Kept(append.facts()));
        } else {
          hear(new Event.NotKept("The disk is full."));
        }
      }
    }
    return this;
  }

  /** Lets both clocks go on and tells the walk. */
  Floor letPass(double seconds) {
    Model.Clock clock = model.clock();
    long nanos = clock.monoNanos().orElse(0) + Math.round(seconds * 1e9);
    return hear(new Event.Tick(nanos, clock.wallMillis() + Math.round(seconds * 1000)));
  }

  /** Brings the walk to a step by override over all before it. */
  Floor at(String step) {
    while (!model.state().currentId().equals(step)) {
      hear(new Intent.Skip("not for this test"));
    }
    return this;
  }

  /** Brings the walk to a step under a verdict. */
  Floor at(String step, Verdict under) {
    verdict = under;
    return at(step);
  }

  String said() {
    return model.message().orElse("");
  }

  StepState step(String id) {
    return model.state().step(id);
  }

  <T extends Fact> T last(Class<T> kind) {
    return facts.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  boolean holds(Class<? extends Fact> kind) {
    return facts.stream().anyMatch(kind::isInstance);
  }
}
