/** The smallest program: what starting Java costs. */
final class Hello {
  private Hello() {}

  /** Prints one line. */
  public static void main(String[] arguments) {
    System.out.println("hello");
  }
}
