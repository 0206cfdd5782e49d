package loadwalk.faults;

/** Says what is wrong with the list of faults, or with one of them. */
final class BadFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  BadFault(String message) {
    super(message);
  }
}
