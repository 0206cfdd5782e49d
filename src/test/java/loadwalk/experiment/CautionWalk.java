package loadwalk.experiment;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Verdict;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.walk.Event;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.StartOverride;
import loadwalk.walk.Targets;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * An operator who walks full-walk on a trial bench: arms what asks for it, passes over what is
 * halted, and types what the true bench gives.
 */
final class CautionWalk {
  private static final String FILE = "/loadwalk/sequences/full-walk.json";
  private static final String TEXT = text();
  private static final Sequence SEQUENCE =
      SequenceReader.read(TEXT, "full-walk.json").found().orElseThrow();
  private static final int WARM_TICKS = 3;
  private static final double TICK_SECONDS = 300;

  private final TrialBench bench;
  private final Walker walker;
  private final List<Step> steps = new ArrayList<>();
  private final RandomGenerator random;
  private Model model;
  private double seconds;

  private CautionWalk(TrialBench bench, Forecaster forecaster) {
    this.bench = bench;
    random = bench.specimen().random("caution walk", 0);
    walker = new Walker(forecaster, StartOverride.REHEARSED);
    Fact.Opened opened =
        new Fact.Opened(
            "trial",
            "test",
            SEQUENCE,
            TEXT,
            bench.amplifier(),
            bench.bench(),
            OptionalLong.empty());
    model = Model.of(WalkState.begin(opened, 0), 1);
  }

  /**
   * A step as it was briefed.
   *
   * @param id the step
   * @param brief what was said
   * @param asksToArm whether the load has to be typed before it starts
   * @param shares what it truly asks of every part; empty where it drives no load
   * @param typed what was read, where it was taken
   */
  record Step(
      String id,
      Forecast brief,
      boolean asksToArm,
      List<Exceeded> shares,
      Map<ReadingId, String> typed) {
    boolean drives() {
      return !shares.isEmpty();
    }

    /** Returns the worst of what is truly exceeded. */
    double worst() {
      return shares.stream().mapToDouble(Exceeded::ratio).max().orElse(0);
    }

    /** Returns the worst of what the bench says how much it bears. */
    double worstEntered() {
      return shares.stream()
          .filter(share -> share.part().isEntered())
          .mapToDouble(Exceeded::ratio)
          .max()
          .orElse(0);
    }
  }

  /** Walks to the end and returns every step. */
  static List<Step> of(TrialBench bench, Forecaster forecaster) {
    return new CautionWalk(bench, forecaster).walk();
  }

  private List<Step> walk() {
    take(new Event.Reopened(0, 0));
    Optional<PlannedStep> current = model.state().current();
    for (int step = 0; current.isPresent(); step++) {
      steps.add(step(current.get(), step));
      StepState state = model.state().step(current.get().id());
      if (!state.status().isOver()) {
        throw new IllegalStateException(
            bench.name() + ": " + current.get().id() + " did not end: " + model.message());
      }
      current = model.state().current();
    }
    return steps;
  }

  private Step step(PlannedStep planned, int number) {
    String id = planned.id();
    Forecast brief = model.state().step(id).brief().orElseThrow();
    Optional<Target> target = Targets.of(model.state(), planned);
    if (target.isEmpty()) {
      take(new Intent.Skip("nothing to measure"));
      return new Step(id, brief, false, List.of(), Map.of());
    }
    if (!target.get().kind().drives()) {
      Map<ReadingId, String> typed = bench.habits().ammeter() ? idle(number) : Map.of();
      boolean halted = brief.verdict() == Verdict.HALT;
      run(planned, halted ? Map.of() : typed, halted ? "halted" : "no ammeter");
      return new Step(id, brief, false, List.of(), typed);
    }
    return driven(planned, target.get(), brief, number);
  }

  private Step driven(PlannedStep planned, Target target, Forecast brief, int number) {
    TrialBench.StepTruth truth = bench.truth(target, number);
    double watts = truth.loadWatts(target.ohms());
    Optional<HotResistor> hottest =
        WiredLoads.truly(bench.bench(), target.mode(), target.ohms(), watts);
    List<Exceeded> shares = bench.shares(truth, target, hottest);
    boolean halted = brief.verdict() == Verdict.HALT;
    boolean arms = !halted && Gate.needsArming(model.state(), planned);
    boolean gives = !halted && bench.yields(truth, target);
    Map<ReadingId, String> typed = gives ? typed(truth.truth(), target, number) : Map.of();
    if (!gives) {
      take(new Intent.Skip(halted ? "halted" : "it gave way"));
    } else if (target.kind() == Target.Kind.WARM_UP) {
      warmUp(planned, target, number);
    } else {
      run(planned, typed, "nothing was read");
    }
    return new Step(planned.id(), brief, arms, shares, typed);
  }

  private void warmUp(PlannedStep planned, Target target, int number) {
    start(planned, target);
    double sink = bench.specimen().celsius(number);
    for (int tick = 1; tick <= WARM_TICKS; tick++) {
      seconds += TICK_SECONDS;
      take(new Event.Tick(Math.round(1e9 * seconds), Math.round(1000 * seconds)));
      if (bench.habits().thermometer()) {
        double risen = sink - (sink - 25) * Math.exp(-tick * TICK_SECONDS / 280);
        take(new Intent.EnterAll(planned.id(), Map.of(ReadingId.SINK_CELSIUS, celsius(risen))));
        standBy(planned.id());
      }
    }
    end(planned);
  }

  private void run(PlannedStep planned, Map<ReadingId, String> typed, String otherwise) {
    if (typed.isEmpty()) {
      take(new Intent.Skip(otherwise));
      return;
    }
    start(planned, Targets.of(model.state(), planned).orElseThrow());
    if (Targets.isAtALimit(model.state(), planned)) {
      take(new Intent.SetCriterion(planned.id(), Criterion.THD_LIMIT));
    }
    take(new Intent.EnterAll(planned.id(), typed));
    standBy(planned.id());
    end(planned);
  }

  private void start(PlannedStep planned, Target target) {
    boolean arms = Gate.needsArming(model.state(), planned);
    take(arms ? new Intent.Arm(String.valueOf(target.ohms())) : new Intent.Begin());
  }

  private void standBy(String id) {
    model.state().step(id).openDoubts().forEach(reading -> standBy(id, reading));
  }

  private void standBy(String id, ReadingId reading) {
    take(new Intent.StandBy(id, reading, "read twice"));
  }

  private void end(PlannedStep planned) {
    take(new Intent.Finish());
    if (!model.state().step(planned.id()).status().isOver()) {
      take(new Intent.Finish());
    }
  }

  private Map<ReadingId, String> idle(int number) {
    Map<ReadingId, String> typed = new LinkedHashMap<>();
    supply(typed, bench.device().idle());
    temperature(typed, number);
    return typed;
  }

  private Map<ReadingId, String> typed(Truth truth, Target target, int number) {
    Map<ReadingId, String> typed = new LinkedHashMap<>();
    double volts = shown(truth.outputVolts());
    if (target.kind() == Target.Kind.OPEN_LOAD) {
      typed.put(ReadingId.OUTPUT_VOLTS, volts(volts));
      typed.put(ReadingId.OPEN_VOLTS, volts(volts * 1.01));
      return typed;
    }
    if (bench.specimen().meters().showsWatts()) {
      double watts = volts * volts / target.ohms();
      typed.put(ReadingId.OUTPUT_WATTS, String.format(Locale.ROOT, "%.1f W", watts));
    } else {
      typed.put(ReadingId.OUTPUT_VOLTS, volts(volts));
    }
    if (bench.habits().bothChannels() && target.mode() == Mode.STEREO) {
      typed.put(ReadingId.OTHER_OUTPUT_VOLTS, volts(shown(truth.otherVolts())));
    }
    supply(typed, truth);
    temperature(typed, number);
    return typed;
  }

  private double shown(double volts) {
    Specimen.Meters meters = bench.specimen().meters();
    return volts * meters.outputGain() * (1 + meters.outputScatter() * random.nextGaussian());
  }

  private void supply(Map<ReadingId, String> typed, Truth truth) {
    Specimen.Meters meters = bench.specimen().meters();
    double scatter = 1 + meters.supplyScatter() * random.nextGaussian();
    typed.put(ReadingId.SUPPLY_VOLTS, volts(truth.supplyVolts() * meters.supplyGain() * scatter));
    double read = 1 + meters.ampsScatter() * random.nextGaussian();
    double amps = truth.supplyAmps() * meters.ampsGain() * read;
    if (bench.habits().ammeter()) {
      String form = meters.ampsResolution() < 0.1 ? "%.2f A" : "%.1f A";
      typed.put(ReadingId.SUPPLY_AMPS, String.format(Locale.ROOT, form, amps));
    }
  }

  private void temperature(Map<ReadingId, String> typed, int number) {
    if (bench.habits().thermometer()) {
      typed.put(ReadingId.SINK_CELSIUS, celsius(bench.specimen().celsius(number)));
    }
  }

  private static String volts(double volts) {
    return String.format(Locale.ROOT, "%.2f V", volts);
  }

  private static String celsius(double celsius) {
    return String.format(Locale.ROOT, "%.1f °C", celsius);
  }

  /** Updates the walk; facts count as kept at once. */
  private void take(Event event) {
    model = walker.update(model, event).model();
    while (model.isWriting()) {
      model = walker.update(model, new Event.Kept(model.waiting())).model();
    }
  }

  private static String text() {
    try {
      return TestText.of(FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
