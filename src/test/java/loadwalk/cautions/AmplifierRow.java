package loadwalk.cautions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;

/** Makes an amplifier of a row of the table of amplifiers. */
final class AmplifierRow {
  static final List<String> COLUMNS =
      List.of(
          "amplifier",
          "class",
          "channels",
          "rated",
          "least stereo",
          "least bridged",
          "own fuses",
          "rails");

  private static final Pattern RATING =
      Pattern.compile(
          "(?<mode>stereo|bridged) (?<ohms>[\\d.]+) Ω (?<watts>[\\d.]+) W( at (?<volts>[\\d.]+)"
              + " V)?");
  private static final Pattern OHMS = Pattern.compile(Words.NUMBER + " Ω");
  private static final Pattern FUSES = Pattern.compile("((?<count>\\d+) × )?(?<amps>[\\d.]+) A");

  private AmplifierRow() {}

  static Amplifier amplifier(Map<String, String> cells) {
    String rails = cells.get("rails");
    if (!List.of("regulated", "unregulated", MarkdownTable.NONE).contains(rails)) {
      throw new IllegalArgumentException("«" + rails + "» are no rails");
    }
    List<Double> fuses = new ArrayList<>();
    Words.list(cells.get("own fuses"), "+", AmplifierRow::fuses).forEach(fuses::addAll);
    String channels = cells.get("channels");
    return new Amplifier(
        "Brightmoor",
        cells.get("amplifier"),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(cells.get("class")).filter(c -> !c.equals(MarkdownTable.NONE)),
        channels.equals(MarkdownTable.NONE)
            ? OptionalInt.empty()
            : OptionalInt.of(Integer.parseInt(channels)),
        Words.list(cells.get("rated"), ",", AmplifierRow::rating),
        ohms(cells.get("least stereo")),
        ohms(cells.get("least bridged")),
        fuses,
        rails.equals(MarkdownTable.NONE)
            ? Optional.empty()
            : Optional.of(rails.equals("regulated")));
  }

  private static Rating rating(String text) {
    Matcher found = Words.match(RATING, text, "a rating such as stereo 4 Ω 70 W at 14.4 V");
    String volts = found.group("volts");
    return new Rating(
        found.group("mode").equals("stereo") ? Mode.STEREO : Mode.BRIDGED,
        Double.parseDouble(found.group("ohms")),
        Double.parseDouble(found.group("watts")),
        volts == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(volts)),
        OptionalDouble.empty());
  }

  private static OptionalDouble ohms(String text) {
    return text.equals(MarkdownTable.NONE)
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Double.parseDouble(Words.match(OHMS, text, "a load such as 2 Ω").group(1)));
  }

  private static List<Double> fuses(String text) {
    Matcher found = Words.match(FUSES, text, "fuses such as 2 × 25 A");
    double amps = Double.parseDouble(found.group("amps"));
    int count = (int) Words.number(found, "count", 1);
    return java.util.Collections.nCopies(count, amps);
  }
}
