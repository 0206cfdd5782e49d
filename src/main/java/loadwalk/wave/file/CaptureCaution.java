package loadwalk.wave.file;

import java.util.List;

/** Says what must be known before an amplifier's output meets a sound input. */
public final class CaptureCaution {
  /** The cautions, shown before the first capture, a sentence each. */
  public static final List<String> LINES =
      List.of(
          "An amplifier's output is tens of volts, a sound input takes about one: connect it only"
              + " through a divider.",
          "Bridged, both terminals are live and neither may meet the input's ground: bridged needs"
              + " an isolating transformer or a differential probe besides the divider.",
          "Divider values worked out are in safety-notes.md; Loadwalk does not know what is"
              + " connected.");

  private CaptureCaution() {}
}
