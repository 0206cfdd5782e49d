package loadwalk.app;

/** Starts Loadwalk. */
public final class Main {
  private Main() {}

  /**
   * Runs the command named by the arguments.
   *
   * @param arguments the words after {@code loadwalk}
   */
  public static void main(String[] arguments) {
    System.out.println("Loadwalk");
  }
}
