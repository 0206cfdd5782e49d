package loadwalk.cli;

/** Says in one sentence what is wrong with a file or word that was given. */
public final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** Takes the sentence that is shown as it stands. */
  public BadInput(String sentence) {
    super(sentence);
  }
}
