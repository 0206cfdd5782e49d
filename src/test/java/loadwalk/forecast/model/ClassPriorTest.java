package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import org.junit.jupiter.api.Test;

/** Supply amps forecast by class: a converter loses little in class D, much in class A. */
class ClassPriorTest {
  @Test
  void amps_areExpectedByClass_howeverItIsWritten() {
    Band d = amps(Optional.of("D"));
    Band ab = amps(Optional.of("AB"));
    assertTrue(d.middle() < 0.9 * ab.middle());
    assertTrue(ab.middle() < 0.8 * amps(Optional.of("A")).middle());
    assertEquals(d, amps(Optional.of(" d ")));
    assertEquals(d, amps(Optional.of("T")));
    assertEquals(ab, amps(Optional.of("a/b")));
    assertEquals(ab, amps(Optional.of("B")));
    Band g = amps(Optional.of("G"));
    assertEquals(g, amps(Optional.of("H")));
    assertTrue(g.middle() < ab.middle() && g.middle() > d.middle());
  }

  @Test
  void classNobodyKnows_isLikeNone_andWider() {
    Band none = amps(Optional.empty());
    Band ab = amps(Optional.of("AB"));
    assertEquals(none, amps(Optional.of("Z")));
    assertTrue(none.middle() < ab.middle() && none.middle() > amps(Optional.of("D")).middle());
    assertTrue(none.high() / none.low() > ab.high() / ab.low());
  }

  private static Band amps(Optional<String> amplifierClass) {
    Rating rating = new Rating(Mode.STEREO, 4, 50, OptionalDouble.of(13.8), OptionalDouble.empty());
    Amplifier amplifier =
        new Amplifier(
            "Halvorsen & Pike",
            "HP-250",
            Optional.empty(),
            OptionalInt.empty(),
            amplifierClass,
            OptionalInt.of(2),
            List.of(rating),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(),
            Optional.empty());
    WalkModel model = new WalkModel(Amplifiers.evidence(amplifier, List.of()));
    return model.bands(Amplifiers.STEREO_4).bands().get(ReadingId.SUPPLY_AMPS);
  }
}
