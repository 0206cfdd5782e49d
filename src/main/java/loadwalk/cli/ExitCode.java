package loadwalk.cli;

/** The exit codes of every command. */
public final class ExitCode {
  /** Done. */
  public static final int DONE = 0;

  /** A fault of Loadwalk. */
  public static final int FAULT = 1;

  /** Bad usage or input, or a disk or an output that does not take what is written. */
  public static final int BAD_INPUT = 2;

  /** Held by a halt or by a doubt without an answer. */
  public static final int HELD = 3;

  /** A damaged journal. */
  public static final int DAMAGED = 4;

  private ExitCode() {}
}
