package loadwalk.sequence;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * A scripted procedure.
 *
 * @param name its name, such as {@code full-walk}
 * @param title its title, one line
 * @param toneHertz the test tone, hertz
 * @param limitThdPercent the distortion at which volts are read, percent
 * @param supplyVolts the supply volts specified at the amplifier's terminals
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
    String contentHash)
    implements Shaped<Sequence> {
  private static final int MOST_STEPS = 200;
  private static final int LONGEST_NAME = 64;
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");

  /** Copies the steps. */
  public Sequence {
    Objects.requireNonNull(name, "name");
    steps = List.copyOf(steps);
  }

  /**
   * Returns a placeholder for a sequence whose file has not been read yet.
   *
   * @param name the name that the file must state; empty if any will do
   * @param hash the hash of the file's bytes
   */
  static Sequence blank(String name, String hash) {
    return new Sequence(name, "", 1, 1, 1, List.of(new Idle()), hash);
  }

  @Override
  public Sequence shape(Shape in) {
    String stated = in.text("name", name);
    checkName(in, stated);
    String itsTitle = in.text("title", title);
    double hertz = in.part("tone", new Tone(toneHertz)).hertz;
    double percent = in.part("limit", new Limit(limitThdPercent)).thdPercent;
    double volts = in.number("supplyVolts", supplyVolts, 1, 100);
    List<Step> read = StepReader.steps(in, "steps", steps);
    if (read.isEmpty()) {
      in.refuse("steps", "«steps» must have at least one step");
    }
    if (read.size() > MOST_STEPS) {
      in.refuse("steps", Sentence.of("«steps» must not have more than {} steps", MOST_STEPS));
    }
    return new Sequence(stated, itsTitle, hertz, percent, volts, read, contentHash);
  }

  private void checkName(Shape in, String stated) {
    if (!stated.isEmpty() && !NAME.matcher(stated).matches()) {
      in.refuse(
          "name", "«name» must be 1 to 64 small letters, digits and hyphens, no hyphen first");
    } else if (!name.isEmpty() && !stated.equals(name)) {
      String file = Visible.line(name, LONGEST_NAME);
      in.refuse(
          "name",
          Sentence.of("«name» is «{}» but the file is named «{}»; they must match", stated, file));
    }
  }

  private record Tone(double hertz) implements Shaped<Tone> {
    @Override
    public Tone shape(Shape in) {
      return new Tone(in.number("hertz", hertz, 1, 100_000));
    }
  }

  private record Limit(double thdPercent) implements Shaped<Limit> {
    @Override
    public Limit shape(Shape in) {
      return new Limit(in.number("thdPercent", thdPercent, 0.001, 50));
    }
  }

  /**
   * Returns the first load that a step names; it is used for warm-ups and for the unloaded volts.
   */
  Optional<Load> firstLoad() {
    return steps.stream().flatMap(step -> step.load().stream()).findFirst();
  }

  /** Returns the first warm-up with another minimum time in minutes. */
  WarmUp warmUpOf(double minutes) {
    return steps.stream()
        .flatMap(step -> step.warmUp().stream())
        .findFirst()
        .map(warmUp -> warmUp.lastingInstead(minutes))
        .orElseGet(() -> WarmUp.lasting(minutes));
  }
}
