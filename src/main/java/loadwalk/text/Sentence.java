package loadwalk.text;

import java.util.Optional;

/**
 * Fills the slots of a sentence that is written whole in the source.
 *
 * <p>A sentence in one piece can be read, checked and corrected as prose; one glued together
 * cannot. {@code Sentence.of("The fuse of {} A does not protect {}.", amps, name)}: each {@code {}}
 * takes the next word, number or text. Numbers with a unit or a fraction are printed by {@code
 * quantity.Printer} first, so a bare {@code double} is refused. The template is a literal, or a
 * choice between literals: a test counts the slots.
 */
public final class Sentence {
  private static final String SLOT = "{}";
  private static final int USUAL_WORD = 16;

  private Sentence() {}

  /**
   * Returns the sentence with its slots filled in order.
   *
   * @param template the whole sentence, {@code {}} for each slot
   * @param slots the values for the slots: text, characters, whole numbers, or objects that print
   *     themselves
   * @throws IllegalArgumentException if the number of values differs from the number of slots, or a
   *     value is null, optional or a number with a fraction
   */
  public static String of(String template, Object... slots) {
    StringBuilder out = new StringBuilder(template.length() + USUAL_WORD * slots.length);
    int from = 0;
    for (Object slot : slots) {
      int at = template.indexOf(SLOT, from);
      if (at < 0) {
        throw new IllegalArgumentException(
            slots.length + " fillings are too many for: " + template);
      }
      out.append(template, from, at).append(filling(slot, template));
      from = at + SLOT.length();
    }
    if (template.indexOf(SLOT, from) >= 0) {
      throw new IllegalArgumentException(slots.length + " fillings are too few for: " + template);
    }
    return out.append(template, from, template.length()).toString();
  }

  /**
   * Returns the sentence for one or for many: {@code plural(n, "1 walk", "{} walks")}.
   *
   * @param count how many there are
   * @param one the whole sentence for a count of one
   * @param many the whole sentence for any other count, with one slot for it
   */
  public static String plural(long count, String one, String many) {
    return count == 1 ? of(one) : of(many, count);
  }

  private static String filling(Object slot, String template) {
    if (slot == null
        || slot instanceof Double
        || slot instanceof Float
        || slot instanceof Optional<?>) {
      throw new IllegalArgumentException("no word for a sentence: " + slot + ", in: " + template);
    }
    return slot.toString();
  }
}
