package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.WalkState;

/**
 * A walk in progress: what its journal holds, and what is not on disk yet.
 *
 * @param state the fold of the facts on disk
 * @param waiting the facts on their way to disk, oldest first; the walk does not advance while any
 *     are left
 * @param keepProblem why they could not be written, if writing failed
 * @param stopping whether the stop key was pressed and its fact is not on disk yet
 * @param clock the clocks at the last tick
 * @param message the message for the operator now
 */
public record Model(
    WalkState state,
    List<Stamped> waiting,
    Optional<String> keepProblem,
    boolean stopping,
    Clock clock,
    Optional<String> message) {

  /** Copies the list. */
  public Model {
    waiting = List.copyOf(waiting);
  }

  /**
   * The clocks at the last tick.
   *
   * @param monoNanos the forward-only clock of the last tick, ns; empty before the first
   * @param wallMillis the wall clock, ms since 1970
   * @param warmSeconds the running warm-up clock, seconds
   * @param scale how many warm-up seconds pass in one second; above 1 only on the practice bench, 0
   *     where no clock runs
   * @param heldSeconds how long the current step has run, seconds, at the last tick; empty where
   *     this clock did not see it start or the walk was held since
   * @param retryNanos when writing last failed, ns; empty if it did not
   */
  public record Clock(
      OptionalLong monoNanos,
      long wallMillis,
      double warmSeconds,
      double scale,
      OptionalDouble heldSeconds,
      OptionalLong retryNanos) {
    Clock heard(long nanos, long wall) {
      return new Clock(OptionalLong.of(nanos), wall, warmSeconds, scale, heldSeconds, retryNanos);
    }

    Clock warm(double seconds) {
      return new Clock(monoNanos, wallMillis, seconds, scale, heldSeconds, retryNanos);
    }

    Clock held(OptionalDouble seconds) {
      return new Clock(monoNanos, wallMillis, warmSeconds, scale, seconds, retryNanos);
    }

    Clock failedAt(OptionalLong nanos) {
      return new Clock(monoNanos, wallMillis, warmSeconds, scale, heldSeconds, nanos);
    }
  }

  /** Returns the model of a walk just read or opened. */
  public static Model of(WalkState state, double scale) {
    double warm = state.step(state.currentId()).warmSeconds();
    Clock clock =
        new Clock(
            OptionalLong.empty(),
            state.lastWallMillis(),
            warm,
            scale,
            OptionalDouble.empty(),
            OptionalLong.empty());
    return new Model(state, List.of(), Optional.empty(), false, clock, Optional.empty());
  }

  /** Tells whether facts are waiting for the disk. */
  public boolean isWriting() {
    return !waiting.isEmpty();
  }

  /** Tells whether the stop screen must show. */
  public boolean isStopped() {
    return stopping || state.hold() == WalkState.Hold.STOPPED;
  }

  Model saying(String text) {
    return new Model(state, waiting, keepProblem, stopping, clock, Optional.of(text));
  }

  /** Returns the model without its message; every intent clears it. */
  public Model silent() {
    return message.isEmpty()
        ? this
        : new Model(state, waiting, keepProblem, stopping, clock, Optional.empty());
  }

  Model with(WalkState next) {
    return new Model(next, waiting, keepProblem, stopping, clock, message);
  }

  Model with(Clock next) {
    return new Model(state, waiting, keepProblem, stopping, next, message);
  }

  Model with(List<Stamped> facts) {
    return new Model(state, facts, keepProblem, stopping, clock, message);
  }

  Model waitingFor(List<Fact> facts) {
    List<Stamped> all = new ArrayList<>(waiting);
    facts.forEach(f -> all.add(new Stamped(f, clock.wallMillis())));
    return with(all);
  }

  /** Returns the model after facts could not be written; the walk holds and tries again later. */
  Model notKept(String why) {
    OptionalLong since = OptionalLong.of(clock.monoNanos().orElse(0));
    return failing(Optional.of(why)).with(clock.failedAt(since));
  }

  Model failing(Optional<String> why) {
    return new Model(state, waiting, why, stopping, clock, message);
  }

  Model stopping(boolean now) {
    return new Model(state, waiting, keepProblem, now, clock, message);
  }
}
