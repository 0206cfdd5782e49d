package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an amplifier's description allows, rates and protects. */
class AmplifierTest {
  private static final Rating STEREO_4 = rating(Mode.STEREO, 4, 50);
  private static final Rating STEREO_2 = rating(Mode.STEREO, 2, 85);
  private static final Rating BRIDGED_4 = rating(Mode.BRIDGED, 4, 170);

  private static Rating rating(Mode mode, double ohms, double watts) {
    return new Rating(mode, ohms, watts, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static OptionalDouble optional(String text) {
    return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }

  /** Bridged, each channel drives half the load: the least load is twice that of a channel. */
  @ParameterizedTest
  @CsvSource({
    // stereo, bridged as described; stereo, bridged as allowed
    "2, 4, 2, 4",
    "2, 3, 2, 3",
    "2, , 2, 4",
    ", 4, , 4",
    ", , , "
  })
  void leastLoad(String stereo, String bridged, String allowedStereo, String allowedBridged) {
    Amplifier amplifier = BareAmplifier.limited(optional(stereo), optional(bridged), List.of());
    assertEquals(optional(allowedStereo), amplifier.minimumOhms(Mode.STEREO));
    assertEquals(optional(allowedBridged), amplifier.minimumOhms(Mode.BRIDGED));
  }

  /** A file need not state both least loads; the one it states is written back alone. */
  @ParameterizedTest
  @CsvSource({"2,", ", 4", ","})
  void leastLoad_ofOneModeOnly_isWrittenAndReadBack(String stereo, String bridged) {
    Amplifier amplifier = BareAmplifier.limited(optional(stereo), optional(bridged), List.of());
    String written = BenchFiles.AMPLIFIER.text(amplifier);
    byte[] bytes = written.getBytes(StandardCharsets.UTF_8);
    assertEquals(Optional.of(amplifier), BenchFiles.AMPLIFIER.read(bytes, "a.json").found());
    assertEquals(stereo != null || bridged != null, written.contains("minimumOhms"), written);
  }

  @Test
  void fuses_carryTheirSum_andNoneIsUnknown() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(
        OptionalDouble.of(70), BareAmplifier.limited(none, none, List.of(40.0, 30.0)).fuseAmps());
    assertEquals(none, BareAmplifier.limited(none, none, List.of()).fuseAmps());
  }

  @ParameterizedTest
  @CsvSource({
    "STEREO, 4, 50",
    "STEREO, 4.04, 50",
    "STEREO, 3.97, 50",
    "STEREO, 4.05, ",
    "STEREO, 3.95, ",
    "STEREO, 2, 85",
    "BRIDGED, 4, 170",
    "BRIDGED, 2, "
  })
  void rating_isThatOfTheModeAndLoad_withinOnePercent(Mode mode, double ohms, Double watts) {
    Amplifier amplifier = BareAmplifier.rated(STEREO_4, STEREO_2, BRIDGED_4);
    assertEquals(Optional.ofNullable(watts), amplifier.rating(mode, ohms).map(Rating::watts));
  }

  @Test
  void name_isMakerAndModel() {
    assertEquals("Halvorsen & Pike Twin 50", BareAmplifier.rated().name());
    assertTrue(BareAmplifier.rated().rating(Mode.STEREO, 4).isEmpty());
  }
}
