package loadwalk.view.walk;

import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Slip;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.Criterion;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * The point at which an output was read, as a row of the running step shows it.
 *
 * @param shown the point
 * @param isProposed whether Enter takes it as the operator's word
 * @param thd the distortion that it follows from, where one was read
 */
record PointRow(Criterion shown, boolean isProposed, Optional<Entry> thd) {
  static PointRow of(WalkState state, StepState step) {
    Optional<Entry> thd = step.latest(ReadingId.THD_PERCENT).filter(read -> step.pairs().isEmpty());
    Criterion reached = step.criterion(state.opened().sequence().limitThdPercent());
    boolean asked = thd.filter(PointRow::asksForThePoint).isPresent();
    boolean unsaid = thd.isEmpty() && step.said().isEmpty() && step.pairs().isEmpty();
    Criterion shown = reached == Criterion.NOT_KNOWN ? Criterion.THD_LIMIT : reached;
    return new PointRow(shown, unsaid || asked, thd);
  }

  private static boolean asksForThePoint(Entry thd) {
    return thd.isOpen() && thd.doubts().stream().anyMatch(d -> d.slip() == Slip.THD_OFF_LIMIT);
  }

  /** Returns the words of the row. */
  String words(boolean focus) {
    if (isProposed) {
      String asked = Sentence.of("{}?", shown.text());
      return focus ? Sentence.of("< {} >  Enter: yes", asked) : asked;
    }
    String text =
        thd.map(
                read ->
                    Sentence.of(
                        "{}, by the {} THD read",
                        shown.text(),
                        Printer.UTF8.reading(read.value(), Unit.PERCENT, read.resolution())))
            .orElse(shown.text());
    return focus ? Sentence.of("< {} >", text) : text;
  }
}
