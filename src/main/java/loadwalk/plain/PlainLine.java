package loadwalk.plain;

import loadwalk.walk.Intent;
import loadwalk.wave.CaptureSetup;

/** What one line of input means. */
public sealed interface PlainLine {

  /** Something the operator wants of the walk. */
  record Wants(Intent intent) implements PlainLine {}

  /** Something the operator wants to see or do beside the walk. */
  record Asks(Question question) implements PlainLine {}

  /** A captured wave is to be read from a file and taken into the step. */
  record Reads(String file, CaptureSetup setup) implements PlainLine {}

  /** A line that is not understood. */
  record Problem(String sentence) implements PlainLine {}

  /** The things that can be asked beside the walk. */
  enum Question {
    HELP,
    BRIEF,
    SHEET,
    FILL,
    CAUTION,
    CAUTION_READ,
    QUIT,
    NOTHING
  }
}
