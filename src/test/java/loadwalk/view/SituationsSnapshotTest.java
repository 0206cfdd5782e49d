package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What each situation looks like, characters and styles, on the least terminal, a large one and two
 * too small; and what each key does there.
 */
class SituationsSnapshotTest {
  private static final List<Size> SIZES = List.of(Size.LEAST, new Size(120, 40));
  private static final List<Size> TOO_SMALL =
      List.of(
          new Size(40, 12),
          new Size(20, 5),
          new Size(Size.LEAST.columns() - 1, Size.LEAST.rows()),
          new Size(Size.LEAST.columns(), Size.LEAST.rows() - 1));

  private static Map<String, Supplier<Desk>> all() {
    Map<String, Supplier<Desk>> all = new LinkedHashMap<>(HomeSituations.all());
    all.putAll(WalkSituations.all());
    all.putAll(MeterSituations.all());
    return all;
  }

  static Stream<String> names() {
    return all().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void situation_looksAsItsPicture(String name) throws IOException {
    Desk desk = all().get(name).get();
    for (Size size : SIZES) {
      String file = "styled/" + name + "-" + size.columns() + "x" + size.rows();
      Snapshots.holds(file, StyledPicture.of(desk.frame(size)));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "home-resume",
        "practice-seed",
        "ledger-marked",
        "brief-halt",
        "running-doubt",
        "live-held",
        "warm-up-measured",
        "measured-so-far",
        "text-middle",
        "done"
      })
  void situation_inPlainAscii_looksAsItsPicture(String name) throws IOException {
    Program program = all().get(name).get().program();
    for (Size size : SIZES) {
      String file = "ascii/" + name + "-" + size.columns() + "x" + size.rows();
      String lines = String.join("\n", program.paint(size, new Look(true)).lines()) + "\n";
      assertTrue(lines.chars().allMatch(c -> c < 127), lines);
      Snapshots.holds(file, lines);
    }
  }

  /** Where a window gets wide or high enough for more: from one column or row to the next. */
  @ParameterizedTest
  @CsvSource({
    "ledger-marked, 109, 24",
    "ledger-marked, 110, 24",
    "measured-so-far, 117, 30",
    "measured-so-far, 118, 30",
    "measured-so-far, 118, 24",
    "meters-running, 89, 24",
    "meters-running, 90, 24",
    "meters-alarm-readings, 105, 24",
    "meters-alarm-readings, 140, 24",
    "running-filled, 98, 24",
    "wave-found, 80, 30",
    "live-held, 80, 32",
    "brief-halt, 80, 25",
    "brief-halt, 80, 27",
    "brief-halt, 90, 31",
    "brief-bridged, 80, 26",
    "brief-bridged, 86, 33",
    "brief-long-note, 80, 30",
    "meters-loaded-doubt, 80, 26",
    "running-two-doubts, 80, 28",
    "live-held, 80, 25",
    "live-held-in-doubt, 80, 26",
    "brief-many-steps, 90, 24",
    "measured-so-far, 118, 27",
    "measured-so-far, 118, 28",
    "measured-so-far, 118, 29",
    "wave-cautions, 82, 26"
  })
  void window_betweenTheUsualSizes_looksAsItsPicture(String name, int columns, int rows)
      throws IOException {
    String file = "sizes/" + name + "-" + columns + "x" + rows;
    Size size = new Size(columns, rows);
    Snapshots.holds(file, StyledPicture.of(all().get(name).get().frame(size)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"home-resume", "running-doubt", "stop-reason"})
  void situation_onATooSmallTerminal_saysWhatItNeeds(String name) throws IOException {
    Desk desk = all().get(name).get();
    for (Size size : TOO_SMALL) {
      String file = "styled/" + name + "-" + size.columns() + "x" + size.rows();
      Snapshots.holds(file, StyledPicture.of(desk.frame(size)));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void situation_answersEachKey(String name) throws IOException {
    Snapshots.holds("keys/" + name, KeyTable.of(all().get(name).get()));
  }
}
