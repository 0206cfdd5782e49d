package loadwalk.walk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * Runs the warm-up clock from a clock that only goes forward.
 *
 * <p>A jump of the wall clock changes nothing. If both clocks together show that the machine slept
 * or the program was held for long, the amplifier counts as cooled and the warm-up restarts.
 */
public final class WarmClock {
  /**
   * The gap after which a warm amplifier counts as cooled where its own warm-up tells no time
   * constant, seconds; common practice, no source.
   */
  public static final double COOLED_AFTER_SECONDS = 600;

  /** How often the warm-up clock is journalled, warm-up seconds. */
  static final double KEPT_EVERY_SECONDS = 15;

  /**
   * The longest gap taken as real, seconds; after a longer one the clock was set, such as one that
   * starts at 1970 without its battery.
   */
  private static final double LONGEST_GAP_SECONDS = 366 * 86_400.0;

  /** A gap that no amplifier cools in, seconds. Chosen by hand. */
  private static final double SHORTEST_REST_SECONDS = 60;

  private static final double NANOS = 1e9;
  private static final double RETRY_SECONDS = 3;

  private WarmClock() {}

  /** Handles a tick: advances the clock, journals its progress, rings at the end. */
  static Next tick(Model model, Event.Tick tick) {
    Model.Clock before = model.clock();
    double seconds =
        before.monoNanos().isEmpty()
            ? 0
            : Math.max(0, (tick.monoNanos() - before.monoNanos().getAsLong()) / NANOS);
    double wallSeconds = (tick.wallMillis() - before.wallMillis()) / 1000.0;
    boolean first = before.monoNanos().isEmpty();
    double gap = Math.max(seconds, first ? 0 : wallSeconds);
    OptionalDouble held = held(before, seconds, gap);
    Model heard = model.with(before.heard(tick.monoNanos(), tick.wallMillis()).held(held));
    if (retryDue(heard)) {
      return Walker.retry(heard);
    }
    if (heard.isWriting() || heard.state().hold() != WalkState.Hold.RUNNING) {
      return Next.quiet(heard);
    }
    if (isCold(heard.state(), gap)) {
      return Next.keeping(heard, List.of(cooled(heard.state(), gap)));
    }
    Optional<PlannedStep> warming = warming(heard.state());
    return warming.isPresent()
        ? advance(heard, warming.get(), seconds * before.scale())
        : Next.quiet(heard);
  }

  /** Returns how long the step has run after a tick; a gap that lost the amplifier loses count. */
  private static OptionalDouble held(Model.Clock before, double seconds, double gap) {
    return before.heldSeconds().isPresent() && gap <= COOLED_AFTER_SECONDS
        ? OptionalDouble.of(before.heldSeconds().getAsDouble() + seconds * before.scale())
        : OptionalDouble.empty();
  }

  private static boolean retryDue(Model model) {
    Model.Clock clock = model.clock();
    return model.keepProblem().isPresent()
        && clock.retryNanos().isPresent()
        && clock.monoNanos().orElseThrow() - clock.retryNanos().getAsLong()
            >= RETRY_SECONDS * NANOS;
  }

  private static Next advance(Model model, PlannedStep planned, double seconds) {
    double total = model.clock().warmSeconds() + seconds;
    Model moved = model.with(model.clock().warm(total));
    double target = planned.step().warmUp().orElseThrow().minutes() * 60;
    double kept = model.state().step(planned.id()).warmSeconds();
    boolean rings = model.clock().warmSeconds() < target && total >= target;
    boolean due = rings || total - kept >= KEPT_EVERY_SECONDS * model.clock().scale();
    Next next =
        due
            ? Next.keeping(moved, List.of(new Fact.Warmed(planned.id(), total)))
            : Next.quiet(moved);
    return rings ? next.and(new Effect.Bell()) : next;
  }

  /** Returns the running warm-up, if there is one. */
  static Optional<PlannedStep> warming(WalkState state) {
    return state
        .current()
        .filter(p -> p.step().warmUp().isPresent())
        .filter(p -> state.step(p.id()).status() == Status.RUNNING);
  }

  /**
   * Returns the clock of a running warm-up as a fact, so that it is on disk before a hold begins.
   */
  static List<Fact> soFar(Model model) {
    double seconds = model.clock().warmSeconds();
    return warming(model.state())
        .<Fact>map(p -> new Fact.Warmed(p.id(), seconds))
        .map(List::of)
        .orElse(List.of());
  }

  static Fact cooled(WalkState state, double gapSeconds) {
    String stepId = state.currentId();
    if (gapSeconds > LONGEST_GAP_SECONDS) {
      return new Fact.Cooled(
          stepId,
          "The wall clock was set forward by more than a year, so there is no telling how long the"
              + " amplifier cooled. Take it as cold and warm it up again before a heavy step.");
    }
    OptionalDouble celsius = WarmHistory.celsiusAfter(state, gapSeconds);
    return new Fact.Cooled(
        stepId,
        celsius.isPresent()
            ? Sentence.of(
                "The walk stood still for {}: by its own warm-up the heatsink has cooled to about"
                    + " {}. Warm it up again before a heavy step.",
                duration(gapSeconds),
                Printer.UTF8.value(celsius.getAsDouble(), Unit.CELSIUS, 2))
            : Sentence.of(
                "The walk stood still for {}: the amplifier has cooled. Warm it up again before a"
                    + " heavy step.",
                duration(gapSeconds)));
  }

  /**
   * Returns the fact that the amplifier cooled while the walk was not running, if that must be
   * assumed.
   */
  static Optional<Fact> cooledBetween(WalkState state, long wallMillis) {
    double gap = (wallMillis - state.lastWallMillis()) / 1000.0;
    if (gap < -1 ? !isWarm(state) : !isCold(state, gap)) {
      return Optional.empty();
    }
    return Optional.of(
        gap < 0
            ? new Fact.Cooled(
                state.currentId(),
                "The wall clock went backwards since the last record, so there is no telling how"
                    + " long the amplifier cooled. Take it as cold and warm it up again before a"
                    + " heavy step.")
            : cooled(state, gap));
  }

  /**
   * Tells whether a rest has cooled a warm amplifier: half of its rise is lost, by the time
   * constant of its own warm-up where that showed one, otherwise the usual gap is over.
   */
  private static boolean isCold(WalkState state, double gapSeconds) {
    return gapSeconds > SHORTEST_REST_SECONDS
        && isWarm(state)
        && gapSeconds > WarmHistory.halfCooledSeconds(state).orElse(COOLED_AFTER_SECONDS);
  }

  /** Tells whether there is warmth to lose: a warm-up has begun and steps are left. */
  private static boolean isWarm(WalkState state) {
    return !state.isFinished()
        && state.plan().stream()
            .filter(p -> p.step().warmUp().isPresent())
            .map(p -> state.step(p.id()))
            .anyMatch(
                s ->
                    s.warmSeconds() > 0
                        || s.status() == Status.RUNNING
                        || s.status() == Status.DONE);
  }

  private static String duration(double seconds) {
    long minutes = Math.round(seconds / 60);
    return minutes < 120
        ? Sentence.of("{} minutes", minutes)
        : Sentence.of("{} hours", Math.round(minutes / 60.0));
  }
}
