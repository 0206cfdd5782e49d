package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.quantity.Unit;

/**
 * Reads the lines of a form.
 *
 * @param texts the lines as typed
 */
record FormLines(List<String> texts) {

  /** Returns a line; half a character, left by the delete key, becomes a question mark. */
  String text(int line) {
    return texts.get(line).strip().replaceAll("\\p{Cs}", "?");
  }

  Optional<String> optionalText(int line) {
    return text(line).isEmpty() ? Optional.empty() : Optional.of(text(line));
  }

  String requiredText(int line, String what) {
    return optionalText(line).orElseThrow(() -> new FormProblem(line, what + " is needed."));
  }

  OptionalDouble optionalNumber(int line, Unit unit) {
    return text(line).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(number(line, text(line), unit));
  }

  static double number(int line, String text, Unit unit) {
    Typed typed = EntryParser.parse(text, unit);
    if (typed instanceof Typed.Problem problem) {
      throw new FormProblem(line, problem.sentence());
    }
    return ((Typed.Number) typed).value();
  }

  /** Reads a line of several parts, each matched whole by a pattern. */
  <T> List<T> parts(int line, Pattern pattern, String example, Function<Matcher, T> read) {
    List<T> parts = new ArrayList<>();
    for (String part : text(line).split(";")) {
      if (part.isBlank()) {
        continue;
      }
      Matcher matcher = pattern.matcher(part.strip());
      if (!matcher.matches()) {
        throw new FormProblem(line, "«" + part.strip() + "» is not understood; type " + example);
      }
      parts.add(read.apply(matcher));
    }
    return parts;
  }

  /** Reads a whole form; what a record refuses is told at the line that was read last. */
  static <T> FormRead<T> read(List<String> texts, Function<FormLines, T> form) {
    try {
      return new FormRead.Good<>(form.apply(new FormLines(texts)));
    } catch (FormProblem problem) {
      return new FormRead.Bad<>(problem.line(), problem.getMessage());
    } catch (IllegalArgumentException refused) {
      return new FormRead.Bad<>(-1, refused.getMessage() + ".");
    }
  }
}
