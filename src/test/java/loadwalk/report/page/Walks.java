package loadwalk.report.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.forecast.Verdict;
import loadwalk.plan.StockRules;
import loadwalk.practice.PracticeAmplifier;
import loadwalk.practice.PracticeBench;
import loadwalk.report.Hostile;
import loadwalk.report.Photos;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.text.Sha256;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.Targets;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;

/** Makes walks for the tests of this package: invented amplifiers on an invented bench. */
public final class Walks {
  /** The name of each of them. */
  public static final String NAME = "2026-03-14-0930-test";

  /** 2026-03-14 09:30 UTC. */
  public static final long START = 1_773_480_600_000L;

  private static final long SECOND_NANOS = 1_000_000_000L;

  private final Walker walker = new Walker(StockRules.RULES);
  private final List<List<Stamped>> records = new ArrayList<>();
  private Model model;
  private long nanos;
  private long wall = START;

  private Walks(Fact.Opened opened) {
    WalkState state = opened.applyTo(null, START);
    model = Model.of(state, 1);
    hear(new Event.Kept(List.of(new Stamped(opened, START))));
  }

  public static Walks opened(String sequence, Amplifier amplifier, Bench bench, OptionalLong seed) {
    String text = sequenceText(sequence);
    Sequence read =
        SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), sequence).found().orElseThrow();
    return new Walks(new Fact.Opened(NAME, "1.0.0", read, text, amplifier, bench, seed));
  }

  private static String sequenceText(String name) {
    try {
      return Files.readString(Path.of("sequences", name + ".json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A whole walk of a practice amplifier, every answer as its meters show it. */
  public static WalkState practice(long seed, String sequence) {
    return practicing(seed, sequence).toTheEnd().state();
  }

  public static Walks practicing(long seed, String sequence) {
    return opened(
        sequence,
        PracticeAmplifier.ofSeed(seed).printed(),
        PracticeBench.ofSeed(seed).described(),
        OptionalLong.of(seed));
  }

  /** An amplifier with everything known, a serial number among it. */
  public static Amplifier halvorsen() {
    return new Amplifier(
        "Halvorsen & Pike",
        "HP 250",
        Optional.of("HP-000417"),
        OptionalInt.of(1992),
        Optional.of("AB"),
        OptionalInt.of(2),
        List.of(
            new Rating(Mode.STEREO, 4, 50, OptionalDouble.of(14.4), OptionalDouble.of(1)),
            new Rating(Mode.STEREO, 2, 95, OptionalDouble.of(13.8), OptionalDouble.empty()),
            new Rating(Mode.BRIDGED, 4, 190, OptionalDouble.empty(), OptionalDouble.empty())),
        OptionalDouble.of(0.25),
        OptionalDouble.of(0.5),
        List.of(50.0, 50.0),
        Optional.of(false));
  }

  /** A bench with everything described. */
  public static Bench north() {
    Optional<Meter.Band> audio = Optional.of(new Meter.Band(45, 1000));
    return new Bench(
        "North bench",
        List.of(new Supply(13.8, 80), new Supply(13.8, 80)),
        List.of(
            new Lead("plus", new Lead.Awg(4), 1.5, 2), new Lead("minus", new Lead.Mm2(25), 1.5, 1)),
        OptionalDouble.of(150),
        List.of(
            new LoadResistor("4 ohm bank", 4, 1, 300, 2, OptionalDouble.of(50)),
            new LoadResistor("1 ohm bank", 1, 1, 1000, 4, OptionalDouble.empty())),
        List.of(
            new Meter("AC volts", ReadingId.OUTPUT_VOLTS, 0.5, 2, 0.01, audio),
            new Meter("DC volts", ReadingId.SUPPLY_VOLTS, 0.3, 2, 0.01, Optional.empty()),
            new Meter("DC clamp", ReadingId.SUPPLY_AMPS, 1.5, 2, 0.1, Optional.empty())),
        0.9);
  }

  /**
   * A walk in which everything happens: doubts with each answer, an amended value, a lifted halt
   * where there is one, a skip, notes, a stop, a warm-up ended early.
   */
  public static Walks eventful() {
    Walks w = opened("full-walk", halvorsen(), north(), OptionalLong.empty());
    w.begin();
    w.temperatures(23, 38, 45, 48.6, 50.2, 51.1, 51.5);
    w.hear(new Intent.EndEarly("steady already, and the shop closes"));
    w.begin();
    w.enter("idle", ReadingId.SUPPLY_AMPS, "1.6 A");
    w.enter("idle", ReadingId.SUPPLY_VOLTS, "13.8 V");
    w.hear(new Intent.Finish());
    w.measured("stereo-4", "15.9 V", "13.6 V", "13.2 A");
    w.enter("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS, "15.8 V");
    w.hear(new Intent.Finish());
    w.begin();
    w.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "150 V");
    w.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "15.0 V");
    w.enter("stereo-2", ReadingId.SUPPLY_VOLTS, "13.4 V");
    w.enter("stereo-2", ReadingId.SUPPLY_AMPS, "23.9 A");
    w.hear(new Intent.Note("fan came on <b>loud</b>"));
    w.hear(new Intent.Finish());
    w.begin();
    w.hear(new Intent.Stop());
    w.hear(new Intent.ExplainStop("smell from a load, moved it away"));
    w.hear(new Intent.Resume());
    w.begin();
    w.enter("stereo-1", ReadingId.OUTPUT_VOLTS, "9.1 V");
    w.enter("stereo-1", ReadingId.SUPPLY_VOLTS, "13.0 V");
    w.enter("stereo-1", ReadingId.SUPPLY_AMPS, "27.5 A");
    w.standByAll("stereo-1", "read twice, the limiter of this model sets in");
    w.hear(new Intent.Finish());
    w.measured("bridged-4", "30.1 V", "13.4 V", "25.0 A");
    w.standByAll("bridged-4", "both channels are equal");
    w.hear(new Intent.Finish());
    while (!w.state().isFinished()) {
      w.hear(new Intent.Skip("not today, the bank is too hot"));
    }
    return w;
  }

  /** A walk with a PNG and a JPEG attached, its captions meaning harm. */
  public static Walks photographed() {
    Walks w = practicing(3, "stereo-only").oneStep();
    w.attach("bench.png", Photos.png(), "the bench, loads to the left");
    w.attach("a b(1).jpg", Photos.jpeg(), Hostile.MARKUP + Hostile.LINK + Hostile.TURNING);
    return w;
  }

  private void attach(String name, byte[] file, String caption) {
    Picture picture = Picture.of(file).orElseThrow();
    String path = "sessions/test.photos/" + name;
    String hash = Sha256.of(picture.bytes());
    hear(new Event.PhotoKept(path, caption, hash, picture.mediaType()));
  }

  private void measured(String step, String volts, String supply, String amps) {
    begin();
    enter(step, ReadingId.OUTPUT_VOLTS, volts);
    enter(step, ReadingId.SUPPLY_VOLTS, supply);
    enter(step, ReadingId.SUPPLY_AMPS, amps);
  }

  private void temperatures(double... celsius) {
    for (double t : celsius) {
      enter(state().currentId(), ReadingId.SINK_CELSIUS, t + " degC");
      pass(100);
    }
  }

  public Walks toTheEnd() {
    while (!state().isFinished()) {
      oneStep();
    }
    return this;
  }

  /** Takes the current step as the practice bench answers it. */
  public Walks oneStep() {
    PlannedStep planned = state().current().orElseThrow();
    begin();
    if (planned.step().warmUp().isPresent()) {
      for (int i = 0; i <= planned.step().warmUp().orElseThrow().minutes() + 30; i++) {
        answerAll(planned.id());
        standByAll(planned.id(), "the meters show it");
        pass(60);
        hear(new Intent.Finish());
        if (state().step(planned.id()).status() == StepState.Status.DONE) {
          return this;
        }
      }
      hear(new Intent.EndEarly("practice took too long"));
      return this;
    }
    answerAll(planned.id());
    standByAll(planned.id(), "the meters show it");
    hear(new Intent.Finish());
    if (!state().step(planned.id()).status().isOver()) {
      throw new IllegalStateException(planned.id() + ": " + model.message().orElse("stuck"));
    }
    return this;
  }

  private void answerAll(String step) {
    PracticeAnswers bench = PracticeAnswers.in(state().opened()).orElseThrow();
    Map<ReadingId, String> answers = bench.of(state(), model.clock().warmSeconds());
    hear(new Intent.EnterAll(step, answers));
  }

  public void standByAll(String step, String why) {
    state().step(step).openDoubts().forEach(id -> hear(new Intent.StandBy(step, id, why)));
  }

  public void begin() {
    PlannedStep planned = state().current().orElseThrow();
    StepState step = state().step(planned.id());
    Verdict verdict = step.brief().orElseThrow().verdict();
    if (verdict == Verdict.HALT) {
      hear(new Intent.LiftHalt("the bank is cooled by a fan and watched"));
    }
    if (verdict == Verdict.CLEAR) {
      hear(new Intent.Begin());
    } else {
      double ohms = Targets.of(state(), planned).orElseThrow().ohms();
      hear(new Intent.Arm(ohms + " ohm"));
    }
    if (state().step(planned.id()).status() != StepState.Status.RUNNING) {
      throw new IllegalStateException(planned.id() + ": " + model.message().orElse("no word"));
    }
  }

  public void enter(String step, ReadingId id, String text) {
    hear(new Intent.Enter(step, id, text));
  }

  /** Lets time go on by ticks of ten seconds. */
  public void pass(int seconds) {
    for (int i = 0; i < seconds; i += 10) {
      nanos += 10 * SECOND_NANOS;
      wall += 10_000;
      hear(new Event.Tick(nanos, wall));
    }
  }

  public void hear(Event event) {
    if (event instanceof Event.Kept kept) {
      records.add(kept.facts());
    }
    Next next = walker.update(model, event);
    model = next.model();
    for (Effect effect : next.effects()) {
      if (effect instanceof Effect.AppendJournal append) {
        hear(new Event.Kept(append.facts()));
      }
    }
  }

  public WalkState state() {
    return model.state();
  }

  public List<Stamped> facts() {
    return records.stream().flatMap(List::stream).toList();
  }

  public List<List<Stamped>> records() {
    return records;
  }

  Optional<String> message() {
    return model.message();
  }
}
