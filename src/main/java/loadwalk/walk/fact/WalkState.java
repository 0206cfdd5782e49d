package loadwalk.walk.fact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import loadwalk.bench.ReadingId;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.StepContext;

/**
 * The state of a walk: the fold of the facts in its journal.
 *
 * @param opened how the walk began
 * @param plan the steps in order
 * @param steps the state of each step by id
 * @param notes the notes, oldest first
 * @param attachments the photos attached, oldest first
 * @param hold whether the walk runs, is paused or was stopped
 * @param stops every stop so far, oldest first
 * @param cooled why the amplifier counts as cold, if it does
 * @param controls how the amplifier's gain and controls are set, as the operator last said
 * @param lastWallMillis the wall clock of the newest fact, ms since 1970
 */
public record WalkState(
    Fact.Opened opened,
    List<PlannedStep> plan,
    Map<String, StepState> steps,
    List<Note> notes,
    List<Attachment> attachments,
    Hold hold,
    List<Stop> stops,
    Optional<String> cooled,
    Optional<String> controls,
    long lastWallMillis) {

  /** Whether the walk runs. */
  public enum Hold {
    RUNNING,
    PAUSED,
    /** Stopped at once; the reason is still missing. */
    STOPPED
  }

  /**
   * A note by the operator, or by Loadwalk where it wrote the walk anew.
   *
   * @param stepId the step at which it was written
   * @param text the note
   * @param wallMillis the wall clock, ms since 1970
   */
  public record Note(String stepId, String text, long wallMillis) {}

  /**
   * A stop.
   *
   * @param stepId the step at which it was pressed
   * @param wallMillis the wall clock, ms since 1970
   * @param reason why, as typed; empty until it is said
   */
  public record Stop(String stepId, long wallMillis, Optional<String> reason) {}

  /**
   * A photo that belongs to the walk.
   *
   * @param stepId the step at which it was attached
   * @param path where it is kept, relative to the data home, with slashes
   * @param caption what it shows, as typed
   * @param sha256 the SHA-256 of its bytes, 64 digits
   * @param mediaType {@code image/png} or {@code image/jpeg}
   * @param wallMillis the wall clock, ms since 1970
   */
  public record Attachment(
      String stepId,
      String path,
      String caption,
      String sha256,
      String mediaType,
      long wallMillis) {}

  /** Copies the collections. */
  public WalkState {
    plan = List.copyOf(plan);
    steps = Map.copyOf(steps);
    notes = List.copyOf(notes);
    attachments = List.copyOf(attachments);
    stops = List.copyOf(stops);
  }

  /** Returns the state right after a walk was opened. */
  public static WalkState begin(Fact.Opened opened, long wallMillis) {
    List<PlannedStep> plan = PlannedStep.of(opened.sequence());
    Map<String, StepState> steps = new LinkedHashMap<>();
    plan.forEach(p -> steps.put(p.id(), StepState.ahead()));
    return new WalkState(
        opened,
        plan,
        steps,
        List.of(),
        List.of(),
        Hold.RUNNING,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        wallMillis);
  }

  /** Returns the current step: the first that is not over; empty when all are. */
  public Optional<PlannedStep> current() {
    for (PlannedStep planned : plan) {
      if (!step(planned.id()).status().isOver()) {
        return Optional.of(planned);
      }
    }
    return Optional.empty();
  }

  /** Returns the id of the current step, or of the last step when all are over. */
  public String currentId() {
    return current().map(PlannedStep::id).orElseGet(() -> plan.get(plan.size() - 1).id());
  }

  /** Returns the last warm-up of the plan before a step. */
  public Optional<PlannedStep> warmUpBefore(String id) {
    return plan.stream()
        .takeWhile(planned -> !planned.id().equals(id))
        .filter(planned -> planned.step().warmUp().isPresent())
        .reduce((first, second) -> second);
  }

  /** Tells whether every step is done or skipped. */
  public boolean isFinished() {
    return current().isEmpty();
  }

  /** Returns the state of a step; an id that is not in the plan counts as ahead. */
  public StepState step(String id) {
    return steps.getOrDefault(id, StepState.ahead());
  }

  /** Finds a step of the plan. */
  public Optional<PlannedStep> planned(String id) {
    return plan.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /**
   * Returns the context of a step in the plan. A recheck repeats a step that was done; for a
   * recheck later in the walk, steps still ahead count too.
   */
  public StepContext context(PlannedStep planned) {
    boolean further =
        current().filter(now -> plan.indexOf(now) < plan.indexOf(planned)).isPresent();
    return planned.in(opened.sequence(), plan, p -> counts(step(p.id()).status(), further));
  }

  private static boolean counts(StepState.Status status, boolean further) {
    return status == StepState.Status.DONE || further && !status.isOver();
  }

  /** Returns every open doubt, in the order of the plan. */
  public List<OpenDoubt> openDoubts() {
    List<OpenDoubt> open = new ArrayList<>();
    for (PlannedStep p : plan) {
      step(p.id()).openDoubts().forEach(id -> open.add(new OpenDoubt(p.id(), id)));
    }
    return open;
  }

  /**
   * A doubt without an answer.
   *
   * @param stepId the step
   * @param reading the reading doubted
   */
  public record OpenDoubt(String stepId, ReadingId reading) {}

  WalkState step(String id, UnaryOperator<StepState> change) {
    StepState before = steps.get(id);
    if (before == null) {
      return this;
    }
    Map<String, StepState> all = new HashMap<>(steps);
    all.put(id, change.apply(before));
    return changed(d -> d.steps = all);
  }

  WalkState holding(Hold next) {
    return changed(d -> d.hold = next);
  }

  WalkState noted(Note note) {
    return changed(d -> d.notes = StepState.with(notes, note));
  }

  WalkState attached(Attachment attachment) {
    return changed(d -> d.attachments = StepState.with(attachments, attachment));
  }

  WalkState stopped(Stop stop) {
    return changed(d -> d.stops = StepState.with(stops, stop));
  }

  /** Gives the last stop its reason. */
  WalkState stoppedBecause(String reason) {
    if (stops.isEmpty()) {
      return this;
    }
    List<Stop> all = new ArrayList<>(stops);
    Stop last = all.remove(all.size() - 1);
    all.add(new Stop(last.stepId(), last.wallMillis(), Optional.of(reason)));
    return changed(d -> d.stops = all);
  }

  WalkState controlled(String text) {
    return changed(d -> d.controls = Optional.of(text));
  }

  WalkState cooledBecause(Optional<String> why) {
    return changed(d -> d.cooled = why);
  }

  WalkState at(long wallMillis) {
    return changed(d -> d.lastWallMillis = wallMillis);
  }

  private WalkState changed(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.of(opened, plan);
  }

  /** A state while it is being changed: each change names only what it changes. */
  private static final class Draft {
    private Map<String, StepState> steps;
    private List<Note> notes;
    private List<Attachment> attachments;
    private Hold hold;
    private List<Stop> stops;
    private Optional<String> cooled;
    private Optional<String> controls;
    private long lastWallMillis;

    Draft(WalkState from) {
      steps = from.steps;
      notes = from.notes;
      attachments = from.attachments;
      hold = from.hold;
      stops = from.stops;
      cooled = from.cooled;
      controls = from.controls;
      lastWallMillis = from.lastWallMillis;
    }

    WalkState of(Fact.Opened opened, List<PlannedStep> plan) {
      return new WalkState(
          opened, plan, steps, notes, attachments, hold, stops, cooled, controls, lastWallMillis);
    }
  }
}
