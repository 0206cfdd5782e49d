package loadwalk.view;

/** Carries what is wrong with one line of a form out of its parsing. */
final class FormProblem extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int line;

  FormProblem(int line, String sentence) {
    super(sentence);
    this.line = line;
  }

  int line() {
    return line;
  }
}
