package loadwalk.quantity;

/** The outcome of reading what an operator typed: a number with a unit, or a problem. */
public sealed interface Typed {

  /**
   * A number understood, in SI units.
   *
   * @param value the number, finite, prefix already applied
   * @param unit the unit typed, or the expected one where none was typed
   * @param resolution the value of one step of the last digit typed, in the unit, above 0
   */
  record Number(double value, Unit unit, double resolution) implements Typed {}

  /**
   * Text that cannot be taken as a number.
   *
   * @param sentence what is wrong and what would be accepted, one sentence
   */
  record Problem(String sentence) implements Typed {}
}
