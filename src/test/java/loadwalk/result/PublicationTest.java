package loadwalk.result;

import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.named;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of several runs at one load a sheet states, and the reason it gives. */
class PublicationTest {
  private static final String OTHERS = "; runs at another criterion or in doubt do not count";

  /** Runs in the order they were done: L at the THD limit, C at the onset of clipping, B below. */
  @ParameterizedTest(name = "[{index}] {0} states run {1}: {2}")
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "L20, 1, \"\"",
        "B20, 1, \"\"",
        "L20 L20.01, 1 2, the mean of 2 runs that agree",
        "L20 L20.01 L20, 1 2 3, the mean of 3 runs that agree",
        "L20 L19.5, 2, the lowest of 2 runs that disagree",
        "L19.5 L20, 1, the lowest of 2 runs that disagree",
        "L20 L20.01 L19.5, 3, the lowest of 3 runs that disagree",
        "L20 L19.5 L19.5, 2, the lowest of 3 runs that disagree",
        "C20 L21, 2, the only run read at the THD limit" + OTHERS,
        "L21 C20, 1, the only run read at the THD limit" + OTHERS,
        "B20 C18, 2, the only run read at the onset of clipping" + OTHERS,
        "C19 L20 L20.01, 2 3, the mean of 2 runs that agree" + OTHERS,
        "L20 C18 L19.5, 3, the lowest of 2 runs that disagree" + OTHERS,
        "B20 B25, 1, \"the first of 2 runs, all read below the limit\"",
        "C20 C20, 1 2, the mean of 2 runs that agree",
      })
  void runsAtOneLoad(String runs, String stated, String why) {
    String[] words = runs.split(" ");
    MeasuredStep[] steps = new MeasuredStep[words.length];
    for (int i = 0; i < words.length; i++) {
      steps[i] =
          named(loaded(Mode.BRIDGED, 1, criterion(words[i]), volts(read(words[i]))), "" + (i + 1));
    }
    PublishedPower published = walk(usual(), steps).published().get("1");
    List<String> from = List.of(stated.split(" "));
    List<String> chosen = from.stream().map(id -> words[Integer.parseInt(id) - 1]).toList();
    assertEquals(from, published.runs());
    assertEquals(why, published.why());
    assertEquals(
        chosen.stream().mapToDouble(w -> read(w) * read(w)).average().orElseThrow(),
        published.totalWatts().value(),
        1e-9);
    assertEquals(criterion(chosen.get(0)), published.criterion());
  }

  private static double read(String run) {
    return Double.parseDouble(run.substring(1));
  }

  @Test
  void bothChannelsRead_stateTheirMeanPerLoad() {
    PublishedPower published =
        walk(usual(), stereo(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 18)))
            .published()
            .get("stereo-4");
    assertEquals((100 + 81) / 2.0, published.meanWatts().orElseThrow().value(), 1e-9);
    assertEquals(181, published.totalWatts().value(), 1e-9);
  }

  @Test
  void oneChannelRead_statesThatChannelPerLoad() {
    PublishedPower published = walk(usual(), stereo(4, volts(20))).published().get("stereo-4");
    assertEquals(100, published.watts().value(), 1e-9);
  }

  @Test
  void bridged_statesItsOneLoadPerLoad() {
    PublishedPower published =
        walk(usual(), bridged(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 18)))
            .published()
            .get("bridged-4");
    assertEquals(100, published.watts().value(), 1e-9);
  }

  /** Loads count as one up to 1 in 1000 apart. */
  @Test
  void loadsAlmostTheSame_areOneLoad() {
    assertEquals(
        List.of("a"),
        List.copyOf(
            walk(usual(), named(stereo(4, volts(20)), "a"), named(stereo(4.0039, volts(20)), "b"))
                .published()
                .keySet()));
    assertEquals(
        List.of("a", "b"),
        List.copyOf(
            walk(usual(), named(stereo(4, volts(20)), "a"), named(stereo(4.0041, volts(20)), "b"))
                .published()
                .keySet()));
  }

  @Test
  void stereoAndBridged_areNeverOneLoad() {
    assertEquals(2, walk(usual(), stereo(4, volts(20)), bridged(4, volts(20))).published().size());
  }

  private static Criterion criterion(String run) {
    return switch (run.charAt(0)) {
      case 'L' -> Criterion.THD_LIMIT;
      case 'C' -> Criterion.CLIPPING_ONSET;
      default -> Criterion.BELOW_LIMIT;
    };
  }
}
