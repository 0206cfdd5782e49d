package loadwalk.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.fact.WalkState.Hold;

/**
 * Updates a walk: the only place where events become facts.
 *
 * <p>Nothing counts before its record is on disk: an intent makes facts that wait in the model, and
 * {@link Event.Kept} folds them into the state. While facts wait, only the stop key is accepted.
 */
public final class Walker {
  private final Forecaster forecaster;
  private final Steps steps;

  /** Makes a walker that uses the given forecaster. */
  public Walker(Forecaster forecaster) {
    this(forecaster, StartOverride.NOTHING);
  }

  /** Makes a walker with an override, only for rehearsals, which drive no amplifier. */
  public Walker(Forecaster forecaster, StartOverride override) {
    this.forecaster = forecaster;
    this.steps = new Steps(new Entries(forecaster), override);
  }

  /** Returns the new model and the effects to perform. */
  public Next update(Model model, Event event) {
    return event.reach(model, this);
  }

  /** Handles an intent that waits its turn: first for the disk, then for the walk to be running. */
  Next intended(Model model, Intent.InTurn intent) {
    if (model.isWriting()) {
      String why = model.keepProblem().orElse("It is being written.");
      return Next.refused(
          model,
          Sentence.of("The last entry is not on disk yet. {} The walk waits until it is.", why));
    }
    return switch (model.state().hold()) {
      case STOPPED -> intent.whileStopped(model);
      case PAUSED -> intent.whilePaused(model);
      case RUNNING -> intent.whileRunning(model, steps);
    };
  }

  static Next stop(Model model) {
    if (model.isStopped()) {
      return Next.quiet(model);
    }
    List<Fact> facts = new ArrayList<>(WarmClock.soFar(model));
    facts.add(new Fact.Stopped(model.state().currentId()));
    return Next.keeping(model.stopping(true), facts);
  }

  /** Tries again to write the waiting facts, if there are any. */
  static Next retry(Model model) {
    if (!model.isWriting()) {
      return Next.quiet(model);
    }
    Model again = model.failing(Optional.empty());
    return new Next(again, List.of(new Effect.AppendJournal(again.waiting())));
  }

  /** Has the whole walk written anew; the place of every fact that waits is in it. */
  static Next writeAnew(Model model, String place) {
    Optional<String> why = model.keepProblem();
    if (why.isEmpty()) {
      return Next.refused(model, "Everything is on the disk; nothing needs to be written anew.");
    }
    Fact anew = new Fact.WrittenAnew(model.state().currentId(), why.get());
    List<Stamped> facts = new ArrayList<>(model.waiting());
    facts.add(new Stamped(anew, model.clock().wallMillis()));
    return new Next(model, List.of(new Effect.WriteAnew(place, facts)));
  }

  Next kept(Model model, List<Stamped> facts) {
    WalkState state = model.state();
    List<Stamped> rest = new ArrayList<>(model.waiting());
    boolean renew = false;
    for (Stamped stamped : facts) {
      state = stamped.fact().applyTo(state, stamped.wallMillis());
      rest.remove(stamped);
      renew |= stamped.fact().changesEvidence();
    }
    // What became known while the walk was held, such as that it cooled, is told when it goes on.
    renew |= model.state().hold() != Hold.RUNNING && state.hold() == Hold.RUNNING;
    boolean stopping = model.stopping() && state.hold() != Hold.STOPPED;
    Model.Clock clock = model.clock().failedAt(OptionalLong.empty());
    boolean sameStep = state.currentId().equals(model.state().currentId());
    boolean reset = facts.stream().anyMatch(s -> s.fact().resetsWarmClock());
    double warm =
        sameStep && !reset ? clock.warmSeconds() : state.step(state.currentId()).warmSeconds();
    Model next =
        model
            .with(state)
            .with(rest)
            .failing(Optional.empty())
            .stopping(stopping)
            .with(clock.warm(warm).held(held(clock, state, facts)));
    if (!rest.isEmpty()) {
      return new Next(next, List.of(new Effect.AppendJournal(rest)));
    }
    return followed(told(next, facts), renew);
  }

  /** Returns how long the current step has run; a walk that is held loses count. */
  private static OptionalDouble held(Model.Clock clock, WalkState state, List<Stamped> facts) {
    boolean runs =
        state.hold() == Hold.RUNNING && state.step(state.currentId()).status() == Status.RUNNING;
    boolean starts = facts.stream().anyMatch(s -> s.fact().startsStep());
    if (!runs || clock.monoNanos().isEmpty() || clock.scale() == 0) {
      return OptionalDouble.empty();
    }
    return starts ? OptionalDouble.of(0) : clock.heldSeconds();
  }

  /** Returns the model with a message about facts that no screen shows, such as a kept photo. */
  private static Model told(Model model, List<Stamped> facts) {
    Model told = model;
    for (Stamped stamped : facts) {
      Optional<String> message =
          stamped.fact().toldOnceKept().filter(text -> !Briefing.tells(model.state(), text));
      told = message.map(told::saying).orElse(told);
    }
    return told;
  }

  /** Briefs the current step when it is reached, and again when its evidence has changed. */
  private Next followed(Model model, boolean renew) {
    WalkState state = model.state();
    Optional<PlannedStep> current = state.current();
    if (current.isEmpty() || state.hold() != Hold.RUNNING) {
      return Next.quiet(model);
    }
    StepState step = state.step(current.get().id());
    boolean fresh = step.status() == Status.AHEAD;
    if (!fresh && !(renew && step.status() == Status.BRIEFED)) {
      return Next.quiet(model);
    }
    Forecast brief = Briefing.of(forecaster, state, current.get());
    if (!fresh && step.brief().equals(Optional.of(brief))) {
      return Next.quiet(model);
    }
    return Next.keeping(model, List.of(new Fact.Briefed(current.get().id(), brief)));
  }

  Next reopened(Model model, Event.Reopened event) {
    Model heard = model.with(model.clock().heard(event.monoNanos(), event.wallMillis()));
    if (model.state().plan().stream().allMatch(p -> isUntouched(model.state(), p))) {
      return followed(heard, false);
    }
    List<Fact> facts = new ArrayList<>();
    Optional<Fact> cooled = WarmClock.cooledBetween(model.state(), event.wallMillis());
    cooled.or(() -> briefedAnew(model.state())).ifPresent(facts::add);
    if (model.state().hold() == Hold.RUNNING && !model.state().isFinished()) {
      facts.add(new Fact.Resumed());
    }
    return Next.keeping(heard, facts);
  }

  /**
   * Returns a new brief for an armed step, so that it is armed again: the load may have been
   * changed in the meantime.
   */
  private Optional<Fact> briefedAnew(WalkState state) {
    return state
        .current()
        .filter(p -> state.step(p.id()).status() == Status.RUNNING)
        .filter(p -> Gate.needsArming(state, p))
        .map(p -> new Fact.Briefed(p.id(), Briefing.of(forecaster, state, p)));
  }

  private static boolean isUntouched(WalkState state, PlannedStep planned) {
    return state.step(planned.id()).status() == Status.AHEAD;
  }
}
