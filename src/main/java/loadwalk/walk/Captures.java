package loadwalk.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.Criterion;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Enters the values of a captured wave as the readings of a step. */
final class Captures {
  /** The fraction of the limit below which a tone does not count as being at the limit. */
  private static final double NEAR_LIMIT = 0.8;

  private Captures() {}

  static Next take(Entries entries, Model model, Intent.TakeCapture take) {
    WalkState state = model.state();
    List<ReadingId> asked =
        state
            .planned(take.step())
            .map(planned -> planned.readings(state.context(planned)))
            .orElse(List.of());
    if (!asked.contains(ReadingId.OUTPUT_VOLTS)) {
      return Next.refused(model, Sentence.of("{} takes no output from a wave.", take.step()));
    }
    Capture capture = take.capture();
    Map<ReadingId, String> texts = new LinkedHashMap<>();
    texts.put(ReadingId.OUTPUT_VOLTS, capture.voltsText());
    if (asked.contains(ReadingId.THD_PERCENT) && capture.thdPercent().isPresent()) {
      texts.put(ReadingId.THD_PERCENT, Capture.percentText(capture.thdPercent().getAsDouble()));
    }
    Map<ReadingId, Instrument> instruments = new LinkedHashMap<>();
    texts.forEach((id, text) -> instruments.put(id, capture.instrument(text, take.wallMillis())));
    List<Fact> before = new ArrayList<>(List.of(new Fact.Captured(take.step(), capture)));
    StepState step = state.step(take.step());
    double limit = state.opened().sequence().limitThdPercent();
    Optional<Criterion> criterion = criterion(capture, limit, step.criterion());
    criterion.ifPresent(c -> before.add(new Fact.CriterionSet(take.step(), c)));
    String told =
        criterion
            .map(c -> Sentence.of("{} It counts as read {}.", told(capture), c.text()))
            .orElseGet(() -> told(capture));
    return entries.enter(model.saying(told), take.step(), texts, instruments, before);
  }

  private static String told(Capture capture) {
    String volts = Printer.UTF8.value(capture.volts(), Unit.VOLT, 4);
    return capture.thdPercent().isPresent()
        ? Sentence.of(
            "Taken from {}: {} at {} THD.",
            capture.file(),
            volts,
            Printer.UTF8.value(capture.thdPercent().getAsDouble(), Unit.PERCENT, 3))
        : Sentence.of("Taken from {}: {}.", capture.file(), volts);
  }

  /** Returns the criterion that the wave shows, if the step has another. */
  private static Optional<Criterion> criterion(Capture capture, double limit, Criterion now) {
    if (capture.atLimit()) {
      return Optional.of(Criterion.THD_LIMIT).filter(c -> c != now);
    }
    boolean below = capture.thdPercent().orElse(limit) < NEAR_LIMIT * limit;
    return below && now == Criterion.THD_LIMIT
        ? Optional.of(Criterion.BELOW_LIMIT)
        : Optional.empty();
  }
}
