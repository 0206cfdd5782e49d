package loadwalk.wave.analysis;

import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Quantity;
import loadwalk.wave.Harmonic;

/** Whether a capture shows the output at which the distortion reaches a limit. */
public sealed interface LimitFinding {
  /** Returns the output at the limit, where the capture shows it. */
  Optional<Found> reached();

  /** Returns what is missing, where it does not. */
  Optional<String> missing();

  /**
   * The output at the limit.
   *
   * @param output rms at the limit, without DC
   * @param limitPercent the THD limit
   * @param seconds when the capture passed it
   * @param method how it was found, in a few words
   * @param cycle one averaged period near the limit, in volts
   * @param harmonics the spectrum near the limit
   */
  record Found(
      Quantity output,
      double limitPercent,
      double seconds,
      String method,
      List<Double> cycle,
      List<Harmonic> harmonics)
      implements LimitFinding {
    /** Copies the lists. */
    public Found {
      cycle = List.copyOf(cycle);
      harmonics = List.copyOf(harmonics);
    }

    @Override
    public Optional<Found> reached() {
      return Optional.of(this);
    }

    @Override
    public Optional<String> missing() {
      return Optional.empty();
    }
  }

  /**
   * A capture that does not show the limit.
   *
   * @param sentence what is missing
   */
  record NotFound(String sentence) implements LimitFinding {
    @Override
    public Optional<Found> reached() {
      return Optional.empty();
    }

    @Override
    public Optional<String> missing() {
      return Optional.of(sentence);
    }
  }
}
