package loadwalk.plain;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Typed;
import loadwalk.quantity.Unit;
import loadwalk.walk.Effect;
import loadwalk.wave.file.CaptureSetup;
import loadwalk.wave.file.CsvUnits;

/** Reads the arguments of the command {@code wave}: a file, then the meaning of its samples. */
final class PlainWave {
  private static final String FORM =
      "Type: wave FILE full-scale VOLTS divider RATIO, or wave FILE known VOLTS; percent,"
          + " channel, time-unit and volt-unit may follow. Put a name with spaces in \"quotes\".";
  private static final Map<String, Unit> WORDS =
      Map.of(
          "full-scale", Unit.VOLT,
          "known", Unit.VOLT,
          "divider", Unit.ONE,
          "percent", Unit.PERCENT,
          "channel", Unit.ONE);
  private static final Map<String, String> NO_UNITS = Map.of("time-unit", "", "volt-unit", "");
  private static final Set<String> SCALES = Set.of("full-scale", "known", "divider");

  private PlainWave() {}

  /**
   * Reads the rest of a line.
   *
   * @param kept the settings given before, which apply until they are changed
   * @param cautioned whether the cautions of a capture were confirmed; nothing is read before that
   */
  static PlainAnswer parse(String rest, CaptureSetup kept, boolean cautioned) {
    if (rest.isEmpty()) {
      return PlainAnswer.show(PlainAnswer.Text.CAUTIONS);
    }
    if (rest.toLowerCase(Locale.ROOT).equals("confirm")) {
      return PlainAnswer.ask(new Effect.ConfirmCautions()).saying("Confirmed. Type wave FILE.");
    }
    int end = rest.startsWith("\"") ? rest.indexOf('"', 1) : gap(rest);
    if (end < 1) {
      return PlainAnswer.say(FORM);
    }
    String file = rest.startsWith("\"") ? rest.substring(1, end) : rest.substring(0, end);
    String behind = rest.startsWith("\"") ? rest.substring(end + 1) : rest.substring(end);
    try {
      CaptureSetup setup = setup(behind.strip(), kept);
      return cautioned
          ? PlainAnswer.ask(new Effect.ReadCapture(file, setup, true))
          : PlainAnswer.show(PlainAnswer.Text.CAUTIONS);
    } catch (IllegalArgumentException wrong) {
      return PlainAnswer.say(wrong.getMessage());
    }
  }

  private static int gap(String text) {
    int at = 0;
    while (at < text.length() && !Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static CaptureSetup setup(String text, CaptureSetup kept) {
    Map<String, Double> said = new HashMap<>();
    String[] words = text.isEmpty() ? new String[0] : text.split("\\s+");
    Map<String, String> units = new HashMap<>(NO_UNITS);
    for (int i = 0; i < words.length; i += 2) {
      if (i + 1 < words.length && units.containsKey(words[i].toLowerCase(Locale.ROOT))) {
        units.put(words[i].toLowerCase(Locale.ROOT), words[i + 1]);
        continue;
      }
      Unit unit = WORDS.get(words[i].toLowerCase(Locale.ROOT));
      if (unit == null || i + 1 >= words.length) {
        throw new IllegalArgumentException(FORM);
      }
      Typed typed = EntryParser.parse(words[i + 1], unit);
      Optional<String> problem = typed.problem();
      if (problem.isPresent()) {
        throw new IllegalArgumentException(problem.get());
      }
      said.put(words[i].toLowerCase(Locale.ROOT), typed.number().orElseThrow().value());
    }
    boolean fresh = said.keySet().stream().anyMatch(SCALES::contains);
    double channel = said.getOrDefault("channel", (double) kept.channel());
    if (channel != Math.rint(channel)) {
      throw new IllegalArgumentException("A channel is a whole number.");
    }
    return new CaptureSetup(
        fresh ? said(said, "full-scale") : kept.fullScaleVolts(),
        fresh ? said(said, "divider") : kept.divider(),
        said(said, "known"),
        said.containsKey("percent") ? said(said, "percent") : kept.calibrationPercent(),
        (int) channel,
        units.equals(NO_UNITS)
            ? kept.given()
            : CsvUnits.given(units.get("time-unit"), units.get("volt-unit"), ""));
  }

  private static OptionalDouble said(Map<String, Double> said, String word) {
    return said.containsKey(word) ? OptionalDouble.of(said.get(word)) : OptionalDouble.empty();
  }
}
