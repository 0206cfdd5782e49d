package loadwalk.app.meter;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.ReadingId;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.view.state.MeterFill;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;

/** The meters of the open walk: those its bench connects, or the practice bench's. */
public final class MetersOfWalk {
  /** A resumed practice walk runs at the pace that the practice screen offers first. */
  private static final int RESUMED_SPEED = 60;

  private final Clocks clocks;
  private Runnable nudge = () -> {};
  private Optional<MeterReplies> replies = Optional.empty();
  private Optional<MeterLinks> links = Optional.empty();
  private Optional<PracticeAnswers> practice = Optional.empty();
  private Optional<Moment> shown = Optional.empty();
  private int speed = RESUMED_SPEED;

  /** Makes the meters of no walk yet. */
  public MetersOfWalk(Clocks clocks) {
    this.clocks = clocks;
  }

  /** Sets what is run, on a meter's thread, whenever a meter has spoken. */
  public void nudging(Runnable whenMetersSpeak) {
    nudge = whenMetersSpeak;
  }

  /** Returns what is run whenever a meter has spoken. */
  public Runnable nudge() {
    return nudge;
  }

  /**
   * Starts to ask the connected meters whose address may be opened; without any, nothing is
   * started, and the others are left alone as if they were read by eye.
   */
  public void connect(Fact.Opened opened, Predicate<Connection.Line> mayBeOpened) {
    links.ifPresent(MeterLinks::close);
    Bench asked =
        opened
            .bench()
            .with(
                MeterLinks.connected(opened.bench()).stream()
                    .filter(meter -> mayBeOpened.test(meter.connection().orElseThrow().line()))
                    .toList());
    MeterReplies fresh = new MeterReplies(asked, clocks, nudge);
    replies = Optional.of(fresh);
    links = Optional.of(MeterLinks.start(asked, Port.OF_MACHINE, clocks, fresh::heard));
    practice = PracticeAnswers.in(opened);
  }

  /** Returns the practice bench of the walk, where it is on it. */
  public Optional<PracticeAnswers> practice() {
    return practice;
  }

  /** Sets how many warm-up seconds pass in one second on the practice bench. */
  public void pace(int warmSecondsASecond) {
    speed = warmSecondsASecond;
  }

  /** Returns how many warm-up seconds pass in one second. */
  public int pace() {
    return practice.isPresent() ? speed : 1;
  }

  /** Enters what the meters show. */
  public List<ProgramEvent> fill(Program program) {
    if (practice.isEmpty()) {
      MeterFill fill = MeterFill.all(program.state());
      ProgramEvent told = new ProgramEvent.Told(fill.told());
      return fill.intent()
          .<List<ProgramEvent>>map(intent -> List.of(new ProgramEvent.OfWalk(intent), told))
          .orElse(List.of(told));
    }
    Model model = program.walk().orElseThrow();
    double warmSeconds = model.clock().warmSeconds();
    Map<ReadingId, String> answers = practice.get().of(model.state(), warmSeconds);
    String step = model.state().currentId();
    boolean warming = answers.size() == 1 && answers.containsKey(ReadingId.SINK_CELSIUS);
    Map<ReadingId, String> texts =
        warming ? answers : PracticeAnswers.missing(answers, model.state().step(step));
    return List.of(
        texts.isEmpty()
            ? new ProgramEvent.Told("This step already has every reading.")
            : new ProgramEvent.OfWalk(new Intent.EnterAll(step, texts)));
  }

  /**
   * Returns what the meters show, where that is new. The practice bench's are read anew when the
   * walk has moved or its warm-up went on for a while.
   */
  public List<ProgramEvent> news(Program program) {
    Optional<ConnectedMeters> meters = replies.flatMap(MeterReplies::news);
    if (meters.isPresent()) {
      return List.of(new ProgramEvent.MetersRead(meters.get()));
    }
    Optional<Moment> now = practice.flatMap(bench -> program.walk()).map(Moment::of);
    if (now.equals(shown)) {
      return List.of();
    }
    shown = now;
    return List.of(new ProgramEvent.PracticeRead(now.map(this::read)));
  }

  private ProgramState.Practice read(Moment now) {
    return new ProgramState.Practice(practice.orElseThrow().of(now.state, now.warmSeconds), speed);
  }

  /** What the practice meters depend on. */
  private record Moment(WalkState state, double warmSeconds) {
    private static final double METERS_SETTLE_SECONDS = 10;

    static Moment of(Model model) {
      double settled =
          Math.floor(model.clock().warmSeconds() / METERS_SETTLE_SECONDS) * METERS_SETTLE_SECONDS;
      return new Moment(model.state(), settled);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Moment moment
          && warmSeconds == moment.warmSeconds
          && PracticeAnswers.areTheSame(state, moment.state);
    }

    @Override
    public int hashCode() {
      return Double.hashCode(warmSeconds);
    }
  }

  /** Lets the meters go. */
  public void close() {
    links.ifPresent(MeterLinks::close);
    links = Optional.empty();
    replies = Optional.empty();
    practice = Optional.empty();
  }
}
