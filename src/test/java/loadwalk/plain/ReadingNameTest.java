package loadwalk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

/** Every reading has two words in plain mode: its id and its name on the screens. */
class ReadingNameTest {
  private static ReadingName name(ReadingId id, String rest) {
    return new ReadingName(id, rest);
  }

  @Test
  void everyReading_isFoundByItsId_andByItsNameOnTheScreens() {
    for (ReadingId id : ReadingId.values()) {
      for (String word : List.of(id.key(), id.label(), id.label().toUpperCase())) {
        assertEquals(Optional.of(name(id, "13,4 V")), ReadingName.at(word + "  13,4 V"), word);
        assertEquals(Optional.of(name(id, "")), ReadingName.at(" " + word + " "), word);
      }
    }
  }

  @Test
  void partsOfANameAndNamesRunTogether_areNone() {
    for (String text : List.of("", "output 13.4", "toner 40", "loads 4", "amplifier 4")) {
      assertEquals(Optional.empty(), ReadingName.at(text), text);
    }
  }
}
