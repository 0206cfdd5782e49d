package loadwalk.view;

/** What a filled-in form says. */
sealed interface FormRead<T> {

  /** Everything was understood. */
  record Good<T>(T value) implements FormRead<T> {}

  /**
   * A line was not understood.
   *
   * @param line the index of the line
   * @param sentence what is wrong and what would be accepted
   */
  record Bad<T>(int line, String sentence) implements FormRead<T> {}
}
