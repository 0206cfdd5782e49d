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
import loadwalk.bench.Target;
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

  /** Class A draws at idle about half of what it draws at full output (constant draw). */
  @Test
  void classA_idlesAtAboutHalfOfItsDraw() {
    WalkModel model = model(Optional.of("class A"));
    double idle = model.bands(Amplifiers.IDLE).bands().get(ReadingId.SUPPLY_AMPS).middle();
    double full = amps(Optional.of("A")).middle();
    assertEquals(0.5, idle / full, 0.1);
    double others = model(Optional.of("AB")).idle().amps();
    assertTrue(idle > 5 * others, idle + " A against " + others);
  }

  /** At half power class B draws 0.71 of its current above idle, class D half, class A 0.41. */
  @Test
  void halfPower_isDrawnByTheLawOfTheClass() {
    assertEquals(Math.sqrt(0.5), halfOfFull("B"), 0.03);
    assertEquals(0.5, halfOfFull("D"), 0.03);
    assertEquals(2 * Math.sqrt(0.5) - 1, halfOfFull("A"), 0.04);
  }

  private static double halfOfFull(String written) {
    WalkModel model = model(Optional.of(written));
    Target half = new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
    double idle = model.idle().amps();
    double part = model.bands(half).bands().get(ReadingId.SUPPLY_AMPS).middle() - idle;
    return part / (amps(Optional.of(written)).middle() - idle);
  }

  private static Band amps(Optional<String> amplifierClass) {
    return model(amplifierClass).bands(Amplifiers.STEREO_4).bands().get(ReadingId.SUPPLY_AMPS);
  }

  private static WalkModel model(Optional<String> amplifierClass) {
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
    return new WalkModel(Amplifiers.evidence(amplifier, List.of()));
  }
}
