package loadwalk.app;

import java.util.Optional;

/** Tells which process had which number when; a port, so that tests can have processes die. */
interface Processes {
  /** Stands for the start of a process that runs but does not let its start be seen. */
  String UNKNOWN_BIRTH = "unknown";

  /** Returns the number of this process. */
  long own();

  /**
   * Returns a mark of the start of a process, equal for the same process however often it is asked
   * and whatever the wall clock does; empty when there is no such process.
   */
  Optional<String> birth(long pid);
}
