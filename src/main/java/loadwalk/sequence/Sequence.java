package loadwalk.sequence;

import java.util.List;
import java.util.Objects;

/**
 * A scripted procedure.
 *
 * @param name its name, as in {@code full-walk}
 * @param title what it is, one line
 * @param toneHertz the test tone, hertz
 * @param limitThdPercent the distortion at which volts are read, percent
 * @param supplyVolts the volts the supply is to be set to at the amplifier's terminals
 * @param steps the steps in order, at least one
 * @param contentHash the SHA-256 of the file's bytes, hexadecimal
 */
public record Sequence(
    String name,
    String title,
    double toneHertz,
    double limitThdPercent,
    double supplyVolts,
    List<Step> steps,
    String contentHash) {
  /** Copies the steps. */
  public Sequence {
    Objects.requireNonNull(name, "name");
    steps = List.copyOf(steps);
  }
}
