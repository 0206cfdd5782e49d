package loadwalk.wave;

/** Thrown with one sentence why a capture cannot be read or judged. */
public final class CaptureException extends Exception {
  private static final long serialVersionUID = 1;

  /** Takes the sentence shown to the operator. */
  public CaptureException(String sentence) {
    super(sentence);
  }
}
