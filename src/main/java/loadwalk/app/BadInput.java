package loadwalk.app;

/** Says in one sentence what is wrong with a file or word that was given. */
final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1;

  BadInput(String sentence) {
    super(sentence);
  }
}
