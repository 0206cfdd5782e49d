package loadwalk.practice;

/** How the output stage of a practice amplifier turns rail current into load current. */
public enum OutputClass {
  /** Push-pull with a bias current. */
  AB("AB"),
  /** Push-pull without bias. */
  B("B"),
  /** Switching. */
  D("D");

  private final String word;

  OutputClass(String word) {
    this.word = word;
  }

  /** Returns the class as printed on the case. */
  public String word() {
    return word;
  }

  /** Tells whether the load current comes straight from the rails, as in a push-pull stage. */
  public boolean pushPull() {
    return this != D;
  }
}
