package loadwalk.report.wave;

import java.util.List;
import java.util.Optional;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.LimitFinding;

/**
 * Everything found out about one captured wave.
 *
 * @param name the name of the capture
 * @param sha256 the SHA-256 of its bytes
 * @param channel the channel judged, from 1
 * @param reading what it shows
 * @param limit the output at a limit, if one was asked for
 * @param notes what the reader must know as well
 */
public record JudgedWave(
    String name,
    String sha256,
    int channel,
    WaveReading reading,
    Optional<LimitFinding> limit,
    List<String> notes) {
  /** Copies the notes. */
  public JudgedWave {
    notes = List.copyOf(notes);
  }
}
