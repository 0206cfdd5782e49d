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
