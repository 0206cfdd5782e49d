package loadwalk.view.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import loadwalk.view.canvas.Size;
import org.junit.jupiter.api.Test;

class HelpTest {
  @Test
  void everyLine_fitsTheSmallestTerminal() {
    Stream.of(Help.walk(), Help.home())
        .flatMap(List::stream)
        .forEach(line -> assertTrue(line.length() <= Size.LEAST.columns() - 1, line));
  }
}
