package loadwalk.result;

import java.util.Objects;
import loadwalk.quantity.Quantity;

/**
 * A bridged step compared with the stereo step in which each channel drove the same load.
 *
 * @param bridgedId the id of the bridged step, load R
 * @param stereoId the id of the stereo step, load R/2
 * @param ratio bridged volts over twice the stereo volts of one channel
 * @param withinUncertainty whether |ratio − 1| is at most its expanded uncertainty
 * @param text the outcome in one sentence
 */
public record BridgeComparison(
    String bridgedId, String stereoId, Quantity ratio, boolean withinUncertainty, String text) {
  /** Rejects missing parts. */
  public BridgeComparison {
    Objects.requireNonNull(bridgedId, "bridgedId");
    Objects.requireNonNull(stereoId, "stereoId");
    Objects.requireNonNull(ratio, "ratio");
    Objects.requireNonNull(text, "text");
  }
}
