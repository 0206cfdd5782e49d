package loadwalk.walk.fact;

/** Says that a journal record holds no fact this version knows; the record is sound, not torn. */
public final class UnreadableFact extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** Makes it with one sentence. */
  public UnreadableFact(String sentence) {
    super(sentence);
  }
}
