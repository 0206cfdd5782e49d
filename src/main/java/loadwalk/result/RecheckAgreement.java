package loadwalk.result;

import java.util.Objects;
import java.util.Optional;
import loadwalk.quantity.Quantity;

/**
 * Compares two runs at the same load.
 *
 * @param firstId the id of the earlier step
 * @param recheckId the id of the later step
 * @param difference total watts of the later less the earlier; parts of equal source cancel; empty
 *     where the two cannot be compared
 * @param limitWatts the largest |difference| that still agrees, watts; 0 where not compared
 * @param outcome whether they agree
 * @param text one sentence saying so
 */
public record RecheckAgreement(
    String firstId,
    String recheckId,
    Optional<Quantity> difference,
    double limitWatts,
    Outcome outcome,
    String text) {

  /** The outcomes of a comparison of two runs. */
  public enum Outcome {
    AGREES("agrees"),
    DISAGREES("disagrees"),
    NOT_COMPARABLE("not-comparable");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** Returns the word used in JSON output. */
    public String word() {
      return word;
    }
  }

  /** Checks that nothing is missing. */
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
