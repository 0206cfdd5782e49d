package loadwalk.walk.fact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;

/**
 * The state of one step of a walk.
 *
 * @param status how far it has come
 * @param brief the newest brief, if one was shown
 * @param armedOhms the load the operator typed as connected, ohms
 * @param liftReason why a halt was lifted
 * @param entries every value entered, oldest first, by reading
 * @param said the point at which the operator said the output was read
 * @param pairs volts and THD read together near the limit
 * @param warmSeconds the warm-up clock, seconds
 * @param reason why it was skipped or ended early
 * @param coldAt how many values had been entered when the warm-up clock last started from zero
 * @param restedAt how many values had been entered when the walk last went on after a pause
 * @param captures the captured waves that were taken, oldest first
 * @param ended how it ended, where it ended before it could be measured
 * @param endedBefore how it ended before it was done again, oldest first
 */
public record StepState(
    Status status,
    Optional<Forecast> brief,
    OptionalDouble armedOhms,
    Optional<String> liftReason,
    Map<ReadingId, List<Entry>> entries,
    Optional<Criterion> said,
    List<LimitPair> pairs,
    double warmSeconds,
    Optional<String> reason,
    int coldAt,
    int restedAt,
    List<Capture> captures,
    Optional<Outcome> ended,
    List<Outcome> endedBefore) {

  /** How far a step has come. */
  public enum Status {
    /** Not reached yet. */
    AHEAD("ahead"),
    /** Its brief is on the screen. */
    BRIEFED("briefed"),
    /** The load is connected and the step runs. */
    RUNNING("running"),
    /** Its readings are in. */
    DONE("done"),
    /** Skipped, with a reason. */
    SKIPPED("skipped");

    private final String word;

    Status(String word) {
      this.word = word;
    }

    /** Returns the word shown. */
    public String word() {
      return word;
    }

    /** Tells whether the step is done or skipped. */
    public boolean isOver() {
      return this == DONE || this == SKIPPED;
    }
  }

  /** Copies the collections. */
  public StepState {
    Map<ReadingId, List<Entry>> copy = new EnumMap<>(ReadingId.class);
    entries.forEach((id, list) -> copy.put(id, List.copyOf(list)));
    entries = Collections.unmodifiableMap(copy);
    pairs = List.copyOf(pairs);
    captures = List.copyOf(captures);
    endedBefore = List.copyOf(endedBefore);
  }

  /** Returns the state of a step not reached yet. */
  static StepState ahead() {
    return Untouched.STEP;
  }

  private static final class Untouched {
    static final StepState STEP =
        new StepState(
            Status.AHEAD,
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of(),
            Optional.empty(),
            List.of(),
            0,
            Optional.empty(),
            0,
            0,
            List.of(),
            Optional.empty(),
            List.of());
  }

  /** Returns the newest entry of a reading; of output volts and watts only the later one counts. */
  public Optional<Entry> latest(ReadingId id) {
    Optional<Entry> newest = newest(id);
    ReadingId twin =
        id == ReadingId.OUTPUT_VOLTS
            ? ReadingId.OUTPUT_WATTS
            : id == ReadingId.OUTPUT_WATTS ? ReadingId.OUTPUT_VOLTS : id;
    Optional<Entry> other = newest(twin);
    boolean replaced =
        newest.isPresent() && other.isPresent() && other.get().order() > newest.get().order();
    return replaced ? Optional.empty() : newest;
  }

  /** Returns the newest entry of a reading, where output volts and watts are one reading. */
  Optional<Entry> latestInAnyUnit(ReadingId id) {
    boolean output = id == ReadingId.OUTPUT_VOLTS || id == ReadingId.OUTPUT_WATTS;
    return output ? output() : latest(id);
  }

  /** Returns the newest entry of the output, in volts or in watts. */
  public Optional<Entry> output() {
    return latest(ReadingId.OUTPUT_VOLTS).or(() -> latest(ReadingId.OUTPUT_WATTS));
  }

  /** Returns the newest entry of every reading that counts. */
  public Map<ReadingId, Entry> latest() {
    Map<ReadingId, Entry> all = new EnumMap<>(ReadingId.class);
    entries.keySet().forEach(id -> latest(id).ifPresent(e -> all.put(id, e)));
    return all;
  }

  /** Returns how the step ended, once it is over. */
  public Optional<Outcome> outcome() {
    if (status == Status.SKIPPED) {
      return Optional.of(Outcome.SKIPPED);
    }
    return status == Status.DONE ? Optional.of(ended.orElse(Outcome.MEASURED)) : Optional.empty();
  }

  /** Returns the newest value of every reading, in its unit. */
  public Map<ReadingId, Double> newestValues() {
    Map<ReadingId, Double> values = new EnumMap<>(ReadingId.class);
    latest().forEach((id, entry) -> values.put(id, entry.value()));
    return values;
  }

  /**
   * Returns the readings whose newest entry has an open doubt. A step that ended before its limit
   * has none: it was the limit that its readings were held against.
   */
  public List<ReadingId> openDoubts() {
    List<ReadingId> open = new ArrayList<>();
    if (ended.isPresent()) {
      return open;
    }
    for (ReadingId id : entries.keySet()) {
      if (latest(id).filter(Entry::isOpen).isPresent()) {
        open.add(id);
      }
    }
    return open;
  }

  /**
   * Returns the point at which the output was read: by the THD read, else by the operator's word.
   *
   * @param limitThdPercent the limit of the walk, percent
   */
  public Criterion criterion(double limitThdPercent) {
    OptionalDouble thd =
        latest(ReadingId.THD_PERCENT)
            .map(entry -> OptionalDouble.of(entry.value()))
            .orElseGet(OptionalDouble::empty);
    return Criterion.reached(thd, limitThdPercent, said);
  }

  /** Returns the captured wave that an entry was read from, if any. */
  public Optional<Capture> captureOf(Entry entry) {
    return entry.instrument().flatMap(this::captureOf);
  }

  /** Returns the captured wave that an instrument stands for, if it is one. */
  public Optional<Capture> captureOf(Instrument instrument) {
    return captures.stream()
        .filter(c -> c.isSourceOf(instrument))
        .reduce((first, second) -> second);
  }

  /** Returns the captured wave that the current output volts were read from, if any. */
  public Optional<Capture> captureOfOutput() {
    return latest(ReadingId.OUTPUT_VOLTS).flatMap(this::captureOf);
  }

  /** Returns how many values were entered. */
  public int entryCount() {
    return entries.values().stream().mapToInt(List::size).sum();
  }

  private Optional<Entry> newest(ReadingId id) {
    List<Entry> list = entries.getOrDefault(id, List.of());
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
  }

  StepState with(Status next) {
    return changed(d -> d.status = next);
  }

  StepState briefed(Forecast forecast) {
    return changed(
        d -> {
          d.status = Status.BRIEFED;
          d.brief = Optional.of(forecast);
          d.armedOhms = OptionalDouble.empty();
          d.liftReason = Optional.empty();
        });
  }

  StepState armed(double ohms) {
    return changed(d -> d.armedOhms = OptionalDouble.of(ohms));
  }

  StepState lifted(String why) {
    return changed(d -> d.liftReason = Optional.of(why));
  }

  StepState entered(ReadingId id, Entry entry) {
    return changed(d -> d.entries = withList(id, with(entries.getOrDefault(id, List.of()), entry)));
  }

  StepState stoodBy(ReadingId id, String why) {
    return changingNewest(id, entry -> entry.standingBy(why));
  }

  /** Returns the step with doubts on the newest entry of a reading. */
  public StepState doubted(ReadingId id, List<Doubt> doubts) {
    return changingNewest(id, entry -> entry.doubtedBy(doubts));
  }

  private StepState changingNewest(ReadingId id, UnaryOperator<Entry> change) {
    List<Entry> list = new ArrayList<>(entries.getOrDefault(id, List.of()));
    if (list.isEmpty()) {
      return this;
    }
    list.set(list.size() - 1, change.apply(list.get(list.size() - 1)));
    return changed(d -> d.entries = withList(id, list));
  }

  private Map<ReadingId, List<Entry>> withList(ReadingId id, List<Entry> list) {
    Map<ReadingId, List<Entry>> all = new EnumMap<>(ReadingId.class);
    all.putAll(entries);
    all.put(id, list);
    return all;
  }

  /** The word for a point that the distortion read bears out answers the doubt of that reading. */
  StepState at(Criterion taken) {
    StepState answered = changingNewest(ReadingId.THD_PERCENT, thd -> thd.readAt(taken));
    return answered.changed(d -> d.said = Optional.of(taken));
  }

  StepState paired(LimitPair pair) {
    return changed(d -> d.pairs = with(pairs, pair));
  }

  StepState captured(Capture capture) {
    return changed(d -> d.captures = with(captures, capture));
  }

  StepState warmed(double seconds) {
    return changed(d -> d.warmSeconds = seconds);
  }

  /** Returns the step with its warm-up clock at zero; earlier temperatures no longer count. */
  StepState cold() {
    return changed(
        d -> {
          d.warmSeconds = 0;
          d.coldAt = entryCount();
        });
  }

  /** Returns the step after a rest: what was read before it does not tell the slope now. */
  StepState rested() {
    return changed(d -> d.restedAt = entryCount());
  }

  /** Returns a warm-up that must be done again; how it ended before no longer counts. */
  StepState again() {
    return cold()
        .changed(
            d -> {
              d.status = Status.AHEAD;
              d.reason = Optional.empty();
              d.endedBefore = ended.map(outcome -> with(endedBefore, outcome)).orElse(endedBefore);
              d.ended = Optional.empty();
            });
  }

  StepState ended(Outcome outcome, String text) {
    return changed(
        d -> {
          d.status = Status.DONE;
          d.ended = Optional.of(outcome);
          d.reason = text.isBlank() ? Optional.empty() : Optional.of(text);
        });
  }

  StepState because(String why) {
    return changed(d -> d.reason = Optional.of(why));
  }

  /** Returns a list with one more item at its end. */
  static <T> List<T> with(List<T> list, T one) {
    List<T> more = new ArrayList<>(list);
    more.add(one);
    return more;
  }

  private StepState changed(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.state();
  }

  /** A state while it is being changed: each change names only what it changes. */
  private static final class Draft {
    private Status status;
    private Optional<Forecast> brief;
    private OptionalDouble armedOhms;
    private Optional<String> liftReason;
    private Map<ReadingId, List<Entry>> entries;
    private Optional<Criterion> said;
    private List<LimitPair> pairs;
    private double warmSeconds;
    private Optional<String> reason;
    private int coldAt;
    private int restedAt;
    private List<Capture> captures;
    private Optional<Outcome> ended;
    private List<Outcome> endedBefore;

    Draft(StepState from) {
      status = from.status;
      brief = from.brief;
      armedOhms = from.armedOhms;
      liftReason = from.liftReason;
      entries = from.entries;
      said = from.said;
      pairs = from.pairs;
      warmSeconds = from.warmSeconds;
      reason = from.reason;
      coldAt = from.coldAt;
      restedAt = from.restedAt;
      captures = from.captures;
      ended = from.ended;
      endedBefore = from.endedBefore;
    }

    StepState state() {
      return new StepState(
          status,
          brief,
          armedOhms,
          liftReason,
          entries,
          said,
          pairs,
          warmSeconds,
          reason,
          coldAt,
          restedAt,
          captures,
          ended,
          endedBefore);
    }
  }
}
