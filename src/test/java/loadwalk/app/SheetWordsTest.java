package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetWordsTest {
  private static Optional<SheetWords> of(String line) {
    return SheetWords.of(List.of(line.split(" ")));
  }

  @Test
  void sheet_alone_meansTheNewestWalk() {
    assertEquals(Optional.of(new SheetWords(Optional.empty(), Optional.empty())), of("sheet"));
  }

  @Test
  void sheet_withWalkAndHome_isTakenInEitherOrder() {
    SheetWords both = new SheetWords(Optional.of(Path.of("/bench")), Optional.of("north"));
    assertEquals(Optional.of(both), of("sheet north --home /bench"));
    assertEquals(Optional.of(both), of("sheet --home /bench north"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ledger",
        "sheet --html",
        "sheet north --csv x",
        "sheet --help",
        "sheet one two",
        "sheet --home",
        "sheet --home --ascii",
        "sheet --home a --home b",
        "sheet --home=a",
        "sheet @words",
        "sheet --",
      })
  void anythingElse_isLeftToTheCommandLine(String line) {
    assertEquals(Optional.empty(), of(line));
  }

  @Test
  void noWords_areLeftToTheCommandLine() {
    assertEquals(Optional.empty(), SheetWords.of(List.of()));
    assertEquals(Optional.empty(), SheetWords.of(List.of("sheet", "")));
  }
}
