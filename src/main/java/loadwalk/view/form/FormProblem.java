package loadwalk.view.form;

/** Carries what is wrong with one line of a form out of its parsing. */
public final class FormProblem extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int line;

  /** Makes the problem of one line. */
  public FormProblem(int line, String sentence) {
    super(sentence);
    this.line = line;
  }

  int line() {
    return line;
  }
}
