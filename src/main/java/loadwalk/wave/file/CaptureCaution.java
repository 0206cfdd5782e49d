package loadwalk.wave.file;

import java.util.List;

/** The cautions to read before an amplifier's output is connected to a sound input. */
public final class CaptureCaution {
  /** The cautions shown before the first capture, one sentence each. */
  public static final List<String> LINES =
      List.of(
          "An amplifier puts out tens of volts; a sound input takes about one. Connect it only"
              + " through a divider.",
          "Bridged, both terminals are live, and neither may touch the input's ground. Add an"
              + " isolating transformer or a differential probe to the divider.",
          "safety-notes.md has worked divider values. Loadwalk does not know what is connected.");

  private CaptureCaution() {}
}
