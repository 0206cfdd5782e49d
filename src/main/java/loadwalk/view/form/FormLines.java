package loadwalk.view.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.json.Fault;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Reads the lines of a form.
 *
 * @param texts the lines as typed
 */
public record FormLines(List<String> texts) {

  /** Returns a line; half a character, left by the delete key, becomes a question mark. */
  public String text(int line) {
    return texts.get(line).strip().replaceAll("\\p{Cs}", "?");
  }

  Optional<String> optionalText(int line) {
    return text(line).isEmpty() ? Optional.empty() : Optional.of(text(line));
  }

  /**
   * Returns a line that must not be empty.
   *
   * @param missing what is said where it is, a sentence
   */
  public String requiredText(int line, String missing) {
    return optionalText(line).orElseThrow(() -> new FormProblem(line, missing));
  }

  /** Returns the number on a line, where there is one. */
  public OptionalDouble optionalNumber(int line, Unit unit) {
    return text(line).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(number(line, text(line), unit));
  }

  static double number(int line, String text, Unit unit) {
    Typed typed = EntryParser.parse(text, unit);
    Optional<String> problem = typed.problem();
    if (problem.isPresent()) {
      throw new FormProblem(line, problem.get());
    }
    return typed.number().orElseThrow().value();
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
        throw new FormProblem(
            line, Sentence.of("«{}» is not understood; type {}.", part.strip(), example));
      }
      parts.add(read.apply(matcher));
    }
    return parts;
  }

  /**
   * Reads a whole form.
   *
   * <p>What it says goes into a journal, so what a journal's reader would refuse is refused here.
   *
   * @param needed how many of the first lines must not be empty
   * @param form makes the record
   * @param faults finds what would keep the record from being read again
   */
  public static <T> FormRead<T> read(
      List<String> texts,
      int needed,
      Function<FormLines, T> form,
      Function<T, List<Fault>> faults) {
    try {
      return judged(texts, form, faults);
    } catch (FormProblem problem) {
      return new FormRead.Bad<>(problem.line(), problem.getMessage());
    } catch (IllegalArgumentException refused) {
      int line = refusedLine(texts, needed, form, faults);
      return new FormRead.Bad<>(line, closed(refused.getMessage()));
    }
  }

  /** A record says what is wrong with or without a full stop; the form says it with one. */
  private static String closed(String refusal) {
    return refusal.endsWith(".") ? refusal : refusal + ".";
  }

  private static <T> FormRead<T> judged(
      List<String> texts, Function<FormLines, T> form, Function<T, List<Fault>> faults) {
    T value = form.apply(new FormLines(texts));
    List<Fault> found = faults.apply(value);
    if (!found.isEmpty()) {
      throw new IllegalArgumentException(found.get(0).sentence());
    }
    return new FormRead.Good<>(value);
  }

  /** Finds the line that a record is refused for: the first that is refused without the others. */
  private static <T> int refusedLine(
      List<String> texts,
      int needed,
      Function<FormLines, T> form,
      Function<T, List<Fault>> faults) {
    for (int line = 0; line < texts.size(); line++) {
      List<String> alone = new ArrayList<>(Collections.nCopies(texts.size(), ""));
      Collections.fill(alone.subList(0, needed), "name");
      alone.set(line, texts.get(line));
      try {
        judged(alone, form, faults);
      } catch (IllegalArgumentException refused) {
        return line;
      }
    }
    return FormRead.NO_LINE;
  }
}
