package loadwalk.quantity;

import java.util.Optional;

/** The outcome of reading what an operator typed: a number with a unit, or a problem. */
public sealed interface Typed {

  /** Returns the number, if the text is one. */
  Optional<Number> number();

  /** Returns what is wrong, if the text is not a number. */
  Optional<String> problem();

  /**
   * A number understood, in SI units.
   *
   * @param value the number, finite, prefix already applied
   * @param unit the unit typed, or the expected one where none was typed
   * @param resolution the value of one step of the last digit typed, in the unit, above 0
   */
  record Number(double value, Unit unit, double resolution) implements Typed {
    @Override
    public Optional<Number> number() {
      return Optional.of(this);
    }

    @Override
    public Optional<String> problem() {
      return Optional.empty();
    }
  }

  /**
   * Text that cannot be read as a number.
   *
   * @param sentence what is wrong and what would be accepted, one sentence
   */
  record Problem(String sentence) implements Typed {
    @Override
    public Optional<Number> number() {
      return Optional.empty();
    }

    @Override
    public Optional<String> problem() {
      return Optional.of(sentence);
    }
  }
}
