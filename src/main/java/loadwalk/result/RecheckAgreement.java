package loadwalk.result;

import java.util.Objects;
import java.util.Optional;
import loadwalk.quantity.Quantity;

/**
 * The comparison of two runs at the same load.
 *
 * @param firstId the id of the earlier step
 * @param recheckId the id of the later step
 * @param difference total watts of the later minus the earlier, with uncertainty from shared
 *     sources cancelled; empty if the two cannot be compared
 * @param limitWatts the largest |difference| that counts as agreement, watts; 0 if not compared
 * @param outcome whether they agree
 * @param text the outcome in one sentence
 */
public record RecheckAgreement(
    String firstId,
    String recheckId,
    Optional<Quantity> difference,
    double limitWatts,
    Outcome outcome,
    String text) {

  /** The possible outcomes of the comparison. */
  public enum Outcome {
    AGREES("agrees"),
    DISAGREES("disagrees"),
    NOT_COMPARABLE("not-comparable");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** Returns the name used in JSON output. */
    public String word() {
      return word;
    }
  }

  /** Rejects missing parts. */
  public RecheckAgreement {
    Objects.requireNonNull(firstId, "firstId");
    Objects.requireNonNull(recheckId, "recheckId");
    Objects.requireNonNull(difference, "difference");
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(text, "text");
    if (!(limitWatts >= 0)) {
      throw new IllegalArgumentException("limitWatts must be 0 or more, got " + limitWatts);
    }
  }
}
