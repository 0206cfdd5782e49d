package loadwalk.outside;

import java.nio.file.Path;

/**
 * One fault from outside.
 *
 * @param name what is done, in a few words
 * @param trial does it to the program and holds what is to come of it
 */
record Fault(String name, Trial trial) {
  /** Does a fault in an empty folder of its own. */
  interface Trial {
    void in(Path folder) throws Exception;
  }
}
