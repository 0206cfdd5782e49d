package loadwalk.view.state;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.fact.Capture;
import loadwalk.wave.file.CaptureSetup;

/**
 * What was found in a captured wave.
 *
 * @param capture what can be taken into a step; empty where nothing can
 * @param kept what was said of the calibration, to be kept for the next wave of the walk
 * @param lines what it shows, a sentence or a row each
 */
public record WaveFound(Optional<Capture> capture, CaptureSetup kept, List<String> lines) {
  /** Copies the lines. */
  public WaveFound {
    lines = List.copyOf(lines);
  }

  /** Returns what is said of a wave that could not be read. */
  public static WaveFound nothing(CaptureSetup kept, String sentence) {
    return new WaveFound(Optional.empty(), kept, List.of(sentence));
  }
}
