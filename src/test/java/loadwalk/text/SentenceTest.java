package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SentenceTest {
  @Test
  void of_fillsSlotsInOrder() {
    assertEquals(
        "The fuse of 30 A does not protect lead {} of 4.",
        Sentence.of("The fuse of {} A does not protect {} of {}.", 30, "lead {}", '4'));
  }

  @Test
  void of_withoutSlots_isTheTemplate() {
    assertEquals("Nothing is paused.", Sentence.of("Nothing is paused."));
  }

  @Test
  void of_slotsAtBothEnds_areFilled() {
    assertEquals("true 5000000000", Sentence.of("{} {}", true, 5_000_000_000L));
  }

  @Test
  void of_tooFewOrTooMany_isABug() {
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("{} of {}", 1));
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("{} of {}", 1, 2, 3));
  }

  @Test
  void of_numberWithAFraction_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("{} V", 13.8));
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("{} V", 13.8f));
  }

  @Test
  void of_nullOrOptional_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("{}", (Object) null));
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("{}", Optional.of("x")));
  }

  @Test
  void plural_choosesByCount() {
    assertEquals("1 walk", Sentence.plural(1, "1 walk", "{} walks"));
    assertEquals("0 walks", Sentence.plural(0, "1 walk", "{} walks"));
    assertEquals("12 walks", Sentence.plural(12, "1 walk", "{} walks"));
  }
}
