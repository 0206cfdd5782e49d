package loadwalk.cautions;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.json.Read;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;

/**
 * The step of a situation and the sequence it stands in.
 *
 * <p>{@code full-walk/stereo-4} is a step of a stock sequence; {@code stereo 4 Ω, 45 Hz, 14.4 V} is
 * written out, with 40 Hz and 13.8 V where the cell says nothing else.
 *
 * @param sequence the sequence
 * @param text its text
 * @param id the step's id
 */
record StepCell(Sequence sequence, String text, String id) {
  private static final Pattern STOCK = Pattern.compile("(?<sequence>[a-z-]+)/(?<step>.+)");
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?<kind>warm-up|idle|measure|open-load|recheck|music|note)"
              + "( (?<mode>stereo|bridged) (?<ohms>[\\d.]+) Ω)?"
              + "(, (?<hertz>[\\d.]+) Hz)?(, (?<volts>[\\d.]+) V)?");

  /** The steps of a written sequence by what its step does; $ stands for the measurement. */
  private static final Map<String, String> STEPS =
      Map.of(
          "measure", "$",
          "idle", "{\"do\":\"idle\"}",
          "note", "{\"do\":\"note\",\"text\":\"Look at the fuses.\"}",
          "music", "{\"do\":\"music\",\"minutes\":5}",
          "warm-up", "{\"do\":\"warm-up\",\"minutes\":15},$",
          "open-load", "$,{\"do\":\"open-load\"}",
          "recheck", "$,{\"do\":\"recheck\",\"of\":[\"heaviest\"]}");

  static StepCell of(String cell) {
    Matcher stock = STOCK.matcher(cell);
    return stock.matches() ? stock(stock.group("sequence"), stock.group("step")) : written(cell);
  }

  private static StepCell stock(String name, String step) {
    try (InputStream in =
        StepCell.class.getResourceAsStream("/loadwalk/sequences/" + name + ".json")) {
      if (in == null) {
        throw new IllegalArgumentException("there is no stock sequence «" + name + "»");
      }
      return read(new String(in.readAllBytes(), StandardCharsets.UTF_8), step);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static StepCell written(String cell) {
    Matcher found =
        Words.match(WRITTEN, cell, "a step such as full-walk/stereo-4 or measure stereo 4 Ω");
    String kind = found.group("kind");
    String measure = "";
    String id = kind;
    if (found.group("mode") != null) {
      measure =
          "{\"do\":\"measure\",\"mode\":\"%s\",\"ohms\":%s}"
              .formatted(found.group("mode"), found.group("ohms"));
      id = kind.equals("measure") ? found.group("mode") + "-" + found.group("ohms") : kind;
    } else if (STEPS.get(kind).contains("$")) {
      throw new IllegalArgumentException("«" + cell + "» names no load");
    }
    String text =
        """
        {"format":"loadwalk-sequence/1","name":"written","title":"Written","tone":{"hertz":%s},
         "limit":{"thdPercent":1.0},"supplyVolts":%s,"steps":[%s]}
        """
            .formatted(
                Words.number(found, "hertz", 40),
                Words.number(found, "volts", 13.8),
                STEPS.get(kind).replace("$", measure));
    return read(text, id);
  }

  private static StepCell read(String text, String id) {
    Read<Sequence> read = SequenceReader.read(text, "sequence");
    Sequence sequence =
        read.found().orElseThrow(() -> new IllegalArgumentException(read.faults().toString()));
    if (PlannedStep.of(sequence).stream().noneMatch(p -> p.id().equals(id))) {
      throw new IllegalArgumentException("the sequence has no step «" + id + "»");
    }
    return new StepCell(sequence, text, id);
  }
}
