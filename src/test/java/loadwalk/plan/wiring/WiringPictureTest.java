package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Checks the text pictures against drawings made by hand. */
class WiringPictureTest {
  private static Network part(int number) {
    return Parts.part("4 ohm", number, 4, 5, 100);
  }

  private static final Network GRID =
      new Network.Parallel(
          List.of(
              new Network.Series(List.of(part(1), part(2))),
              new Network.Series(List.of(part(3), part(4)))));

  @Test
  void seriesParallel_isDrawnAndJoined() {
    assertEquals(
        List.of(
            "left+ --+-[R1]--[R2]-+-- left-", //
            "        +-[R3]--[R4]-+"),
        WiringPicture.lines(GRID, "left+", "left-"));
    assertEquals(
        List.of(
            "left+ to R1 left, R3 left",
            "R1 right to R2 left",
            "R3 right to R4 left",
            "left- to R2 right, R4 right"),
        WiringPicture.joints(GRID, "left+", "left-"));
    assertEquals(
        List.of(
            "R1 = 4 ohm #1, 4 Ω 100 W",
            "R2 = 4 ohm #2, 4 Ω 100 W",
            "R3 = 4 ohm #3, 4 Ω 100 W",
            "R4 = 4 ohm #4, 4 Ω 100 W"),
        WiringPicture.legend(GRID));
  }

  @Test
  void parallelInsideSeriesInsideParallel_keepsItsBuses() {
    Network pair = new Network.Parallel(List.of(part(2), part(3)));
    Network row = new Network.Series(List.of(part(1), pair));
    Network whole = new Network.Parallel(List.of(row, part(4)));
    assertEquals(
        List.of("a --+-[R1]--+-[R2]-+-+-- b", "    |       +-[R3]-+ |", "    +-[R4]-----------+"),
        WiringPicture.lines(whole, "a", "b"));
    assertEquals(
        List.of(
            "a to R1 left, R4 left",
            "R1 right to R2 left, R3 left",
            "b to R2 right, R3 right, R4 right"),
        WiringPicture.joints(whole, "a", "b"));
  }

  /** The bus of a parallel part runs no further than its lowest member. */
  @Test
  void lowestMember_ofSeveralLines_hasNoBusBesideIt() {
    Network pair = new Network.Parallel(List.of(part(2), part(3)));
    Network row = new Network.Series(List.of(pair, part(4)));
    assertEquals(
        List.of("a --+-[R1]-----------+-- b", "    +-+-[R2]-+--[R4]-+", "      +-[R3]-+"),
        WiringPicture.lines(new Network.Parallel(List.of(part(1), row)), "a", "b"));
  }

  @Test
  void singleResistor_isALine() {
    assertEquals(List.of("a --[R1]-- b"), WiringPicture.lines(part(1), "a", "b"));
    assertEquals(List.of("a to R1 left", "b to R1 right"), WiringPicture.joints(part(1), "a", "b"));
  }

  @Test
  void pictures_areAscii() {
    for (String line : WiringPicture.lines(GRID, "left+", "left-")) {
      assertTrue(line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }
}
