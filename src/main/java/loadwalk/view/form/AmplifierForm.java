package loadwalk.view.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loadwalk.bench.Amplifier;
import loadwalk.bench.AmplifierClass;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.ScreenWords;

/** The form of an amplifier: its lines, and the way to and from a record. */
public final class AmplifierForm {
  /** What each line of the form is called. */
  public static final List<String> LABELS =
      List.of(
          "maker",
          "model",
          "serial number",
          "year",
          "class",
          "channels",
          "ratings",
          "min. load, stereo",
          "min. load, bridged",
          "fuses",
          "regulated rails");

  /** What to type into each line. */
  public static final List<String> HINTS =
      List.of(
          "required",
          "required",
          "",
          "for example 1994",
          "for example AB or D",
          "for example 2",
          "for example stereo 4 60 W at 14.4 V 0.1 %; bridged 4 180 W",
          "the lowest load of a channel, for example 2",
          "the lowest load of a bridged pair, for example 4",
          "amperes of each, for example 30 30",
          "yes or no; leave empty if unknown");

  private static final Pattern RATING =
      Pattern.compile(
          "(?i)(stereo|bridged)\\s+([^\\s]+?)\\s*(?:ohms?|Ω)?\\s+([^\\s]+?)\\s*W?"
              + "(?:\\s+(?:at\\s+)?([0-9.,]+)\\s*V)?(?:\\s+([0-9.,]+)\\s*%)?");

  /** A comma between whole fuses looks like a decimal comma; no fuse has two decimals. */
  private static final Pattern TWO_OR_ONE = Pattern.compile("[0-9]+,[0-9]{2,3}");

  private static final int CLASS = 4;
  private static final int RATINGS = 6;
  private static final int STEREO = 7;
  private static final int BRIDGED = 8;
  private static final int FUSES = 9;
  private static final int REGULATED = 10;

  private AmplifierForm() {}

  /** Returns the lines of an empty form. */
  public static List<String> blank() {
    return Collections.nCopies(LABELS.size(), "");
  }

  /** Returns the lines that describe this amplifier. */
  public static List<String> texts(Amplifier a) {
    return List.of(
        a.maker(),
        a.model(),
        a.serial().orElse(""),
        a.year().isPresent() ? String.valueOf(a.year().getAsInt()) : "",
        a.amplifierClass().orElse(""),
        a.channels().isPresent() ? String.valueOf(a.channels().getAsInt()) : "",
        a.ratings().stream().map(AmplifierForm::text).collect(Collectors.joining("; ")),
        text(a.minimumStereoOhms()),
        text(a.minimumBridgedOhms()),
        a.fuses().stream().map(ScreenWords::number).collect(Collectors.joining(" ")),
        a.regulated().map(yes -> yes ? "yes" : "no").orElse(""));
  }

  /** Reads the amplifier from its lines. */
  public static FormRead<Amplifier> read(List<String> texts) {
    return FormLines.read(texts, 2, AmplifierForm::amplifier, BenchFiles.AMPLIFIER::faults);
  }

  private static Amplifier amplifier(FormLines lines) {
    return new Amplifier(
        lines.requiredText(0, "The maker is required."),
        lines.requiredText(1, "The model is required."),
        lines.optionalText(2),
        whole(lines, 3),
        amplifierClass(lines),
        whole(lines, 5),
        lines.parts(RATINGS, RATING, HINTS.get(RATINGS), AmplifierForm::rating),
        lines.optionalNumber(STEREO, Unit.OHM),
        lines.optionalNumber(BRIDGED, Unit.OHM),
        fuses(lines),
        regulated(lines));
  }

  /** Refuses a class that would be forecast as none. */
  private static Optional<String> amplifierClass(FormLines lines) {
    Optional<String> typed = lines.optionalText(CLASS);
    if (typed.isPresent() && AmplifierClass.of(typed.get()).isEmpty()) {
      throw new FormProblem(
          CLASS,
          Sentence.of(
              "«{}» is no class that is known here. Type {}, or leave it empty if unknown.",
              typed.get(),
              AmplifierClass.KNOWN));
    }
    return typed;
  }

  private static OptionalInt whole(FormLines lines, int line) {
    OptionalDouble number = lines.optionalNumber(line, Unit.ONE);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    double value = number.getAsDouble();
    if (value != Math.rint(value) || value < 1 || value > 9999) {
      throw new FormProblem(line, "Type a whole number from 1 to 9999.");
    }
    return OptionalInt.of((int) value);
  }

  private static Rating rating(Matcher m) {
    return new Rating(
        m.group(1).equalsIgnoreCase(Mode.STEREO.word()) ? Mode.STEREO : Mode.BRIDGED,
        FormLines.number(RATINGS, m.group(2), Unit.OHM),
        FormLines.number(RATINGS, m.group(3), Unit.WATT),
        optional(m.group(4), Unit.VOLT),
        optional(m.group(5), Unit.PERCENT));
  }

  private static OptionalDouble optional(String text, Unit unit) {
    return text == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(FormLines.number(RATINGS, text, unit));
  }

  private static List<Double> fuses(FormLines lines) {
    List<Double> fuses = new ArrayList<>();
    for (String word : lines.text(FUSES).split("[\\s;]+")) {
      if (TWO_OR_ONE.matcher(word).matches()) {
        throw new FormProblem(
            FUSES,
            Sentence.of(
                "«{}» can mean two fuses or one; type {} for two, {} for one.",
                word,
                word.replace(',', ' '),
                word.replace(',', '.')));
      }
      if (!word.isEmpty()) {
        fuses.add(FormLines.number(FUSES, word, Unit.AMPERE));
      }
    }
    return fuses;
  }

  private static Optional<Boolean> regulated(FormLines lines) {
    String text = lines.text(REGULATED).toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (!text.equals("yes") && !text.equals("no")) {
      throw new FormProblem(REGULATED, "Type yes or no; leave it empty if unknown.");
    }
    return Optional.of(text.equals("yes"));
  }

  private static String text(Rating r) {
    List<String> words = new ArrayList<>();
    words.add(r.mode().word());
    words.add(ScreenWords.number(r.ohms()));
    words.add(ScreenWords.number(r.watts()) + " W");
    r.supplyVolts()
        .ifPresent(volts -> words.add(Sentence.of("at {} V", ScreenWords.number(volts))));
    r.thdPercent().ifPresent(thd -> words.add(ScreenWords.number(thd) + " %"));
    return String.join(" ", words);
  }

  private static String text(OptionalDouble number) {
    return number.isPresent() ? ScreenWords.number(number.getAsDouble()) : "";
  }
}
