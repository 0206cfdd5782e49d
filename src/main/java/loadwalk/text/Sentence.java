package loadwalk.text;

import java.util.Optional;

/**
 * Fills the slots of a sentence that stands whole in the source.
 *
 * <p>A sentence in one piece can be read, checked and put right as prose; one that is glued
 * together cannot. {@code Sentence.of("The fuse of {} A does not protect {}.", amps, name)}: each
 * {@code {}} takes the next word, number or text. Numbers with a unit or a fraction come already
 * printed, by {@code quantity.Printer}, so a bare {@code double} is refused. The template is a
 * literal, and so is each branch where two are to choose from: a test counts its slots.
 */
public final class Sentence {
  private static final String SLOT = "{}";
  private static final int USUAL_WORD = 16;

  private Sentence() {}

  /**
   * Returns the sentence with its slots filled in order.
   *
   * @param template the whole sentence, {@code {}} for each slot
   * @param slots what goes into the slots: text, characters, whole numbers, or what prints itself
   * @throws IllegalArgumentException if slots and their fillings differ in number, or one of these
   *     is null, optional or a number with a fraction
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
   * @param one the whole sentence where there is one of them
   * @param many the whole sentence else, with one slot for the count
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
