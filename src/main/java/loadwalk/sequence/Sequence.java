package loadwalk.sequence;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

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

  /** Returns the first load that a step names: the one for warm-ups and for the unloaded volts. */
  public Optional<Load> firstLoad() {
    return steps.stream().flatMap(step -> step.load().stream()).findFirst();
  }

  /** Returns the first warm-up as it would be with another least time, minutes. */
  WarmUp warmUpOf(double minutes) {
    return steps.stream()
        .flatMap(step -> step.warmUp().stream())
        .findFirst()
        .map(warmUp -> warmUp.lastingInstead(minutes))
        .orElseGet(() -> WarmUp.lasting(minutes));
  }
}
