package loadwalk.cautions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the cells of a table of situations: short lists of things in the words of the trade. */
final class Words {
  /** A number in a pattern, caught as a group. */
  static final String NUMBER = "(\\d+(?:\\.\\d+)?)";

  private Words() {}

  /** Matches a whole text against a form, or says what was expected. */
  static Matcher match(Pattern form, String text, String expected) {
    Matcher matcher = form.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("«" + text + "» is not " + expected);
    }
    return matcher;
  }

  /** Returns a group as a number; {@code otherwise} where it is missing. */
  static double number(Matcher matcher, String group, double otherwise) {
    String found = matcher.group(group);
    return found == null ? otherwise : Double.parseDouble(found);
  }

  /** Returns the parts of a cell; none for {@link MarkdownTable#NONE}. */
  static <T> List<T> list(String cell, String between, Function<String, T> each) {
    List<T> parts = new ArrayList<>();
    if (!cell.equals(MarkdownTable.NONE)) {
      for (String part : cell.split(Pattern.quote(between), -1)) {
        parts.add(each.apply(part.strip()));
      }
    }
    return parts;
  }
}
