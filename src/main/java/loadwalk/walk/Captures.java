package loadwalk.walk;

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
import loadwalk.walk.fact.WalkState;

/** Enters the values of a captured wave as the readings of a step. */
final class Captures {
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
    boolean itsThd = capture.thdPercent().isPresent() && !capture.isOverdriven();
    if (asked.contains(ReadingId.THD_PERCENT) && itsThd) {
      texts.put(ReadingId.THD_PERCENT, Capture.percentText(capture.thdPercent().getAsDouble()));
    }
    if (asked.contains(ReadingId.FREQUENCY_HERTZ)) {
      texts.put(ReadingId.FREQUENCY_HERTZ, capture.hertzText());
    }
    Map<ReadingId, Instrument> instruments = new LinkedHashMap<>();
    texts.forEach((id, text) -> instruments.put(id, capture.instrument(text, take.wallMillis())));
    List<Fact> before = List.of(new Fact.Captured(take.step(), capture));
    double limit = state.opened().sequence().limitThdPercent();
    return entries.enter(
        model.saying(told(capture, limit)), take.step(), texts, instruments, before);
  }

  private static String told(Capture capture, double limit) {
    if (capture.isOverdriven()) {
      return Sentence.of(
          "{} The input of the recorder clipped, so its THD is not taken.", told(capture));
    }
    Criterion criterion = Criterion.reached(capture.thdPercent(), limit, Optional.empty());
    return Sentence.of("{} It counts as read {}.", told(capture), criterion.text());
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
}
