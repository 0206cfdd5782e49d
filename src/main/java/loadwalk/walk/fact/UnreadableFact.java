package loadwalk.walk.fact;

/**
 * Signals that this version cannot read a fact in a journal record; the record is sound, not torn.
 */
public final class UnreadableFact extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** Makes the exception with one sentence. */
  public UnreadableFact(String sentence) {
    super(sentence);
  }
}
