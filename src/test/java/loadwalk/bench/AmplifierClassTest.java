package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmplifierClassTest {
  @ParameterizedTest
  @CsvSource({
    "D, D",
    "d, D",
    "class d, D",
    "Class-D, D",
    "CLASS D, D",
    "D (full range), D",
    "T, D",
    "D mono, D",
    "d class, D",
    "'class D, digital', D",
    "AB, AB",
    "A/B, AB",
    "a-b, AB",
    "Class AB, AB",
    "A B, AB",
    "class a/b stereo, AB",
    "A, A",
    "class A, A",
    "B, B",
    "G, G",
    "H, G",
    "G/H, G",
    "class: D, D"
  })
  void class_asPeopleWriteIt_isRead(String written, AmplifierClass is) {
    assertEquals(Optional.of(is), AmplifierClass.of(written));
  }

  /** "D/AB" is two classes in one case; a word that begins with a letter is no class. */
  @ParameterizedTest
  @ValueSource(strings = {"Z", "XR", "", "class", "dog", "D/AB", "a kind of D", "B+", "AD", "ABC"})
  void anythingElse_isUnknown(String written) {
    assertEquals(Optional.empty(), AmplifierClass.of(written));
  }
}
