package loadwalk.view.form;

import java.util.function.Function;

/** What a filled-in form says. */
public sealed interface FormRead<T> {
  /** Stands for no line where lines are refused only together. */
  int NO_LINE = -1;

  /** Goes on with what was understood, or with what was not. */
  <R> R either(Function<? super T, R> good, Function<? super Bad<T>, R> bad);

  /** Everything was understood. */
  record Good<T>(T value) implements FormRead<T> {
    @Override
    public <R> R either(Function<? super T, R> good, Function<? super Bad<T>, R> bad) {
      return good.apply(value);
    }
  }

  /**
   * A line was not understood.
   *
   * @param line the index of the line, {@link #NO_LINE} where it is no single one
   * @param sentence what is wrong and what would be accepted
   */
  record Bad<T>(int line, String sentence) implements FormRead<T> {
    @Override
    public <R> R either(Function<? super T, R> good, Function<? super Bad<T>, R> bad) {
      return bad.apply(this);
    }
  }
}
