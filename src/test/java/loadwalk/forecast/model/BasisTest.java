package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Observation;
import org.junit.jupiter.api.Test;

class BasisTest {
  private static final Amplifier RATED = Amplifiers.rated(50);

  @Test
  void ratingsAlone_mayBeOff() {
    assertSentence(
        "From the ratings alone, which may be off by 3 dB either way.",
        RATED,
        Amplifiers.STEREO_4,
        List.of());
  }

  @Test
  void fusesAlone_orNothing_areSaidToBeWide() {
    assertSentence(
        "From the fuses alone, good for the order of magnitude only.",
        Amplifiers.with(List.of(), List.of(30.0)),
        Amplifiers.STEREO_4,
        List.of());
    assertSentence(
        "From the kind of amplifier alone, so the bands are wide.",
        Amplifiers.with(List.of(), List.of()),
        Amplifiers.STEREO_4,
        List.of());
  }

  @Test
  void readings_countBeforeAllElse() {
    assertSentence(
        "From the readings so far.", RATED, Amplifiers.STEREO_4, List.of(read(4, 20, Double.NaN)));
  }

  @Test
  void ratingThatCannotBe_isSaidToBeLeftOut() {
    Rating absurd = new Rating(Mode.STEREO, 4, 1e7, OptionalDouble.empty(), OptionalDouble.empty());
    assertSentence(
        "From the kind of amplifier alone, so the bands are wide. A rating that cannot be true is"
            + " left out.",
        Amplifiers.with(List.of(absurd), List.of()),
        Amplifiers.STEREO_4,
        List.of());
  }

  @Test
  void idle_isNotToldByRatings_untilItIsRead() {
    assertSentence(
        "From the ratings alone, which may be off by 3 dB either way. Ratings say nothing of idle"
            + " current.",
        RATED,
        Amplifiers.IDLE,
        List.of());
    Observation idle = new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_AMPS, 1.9));
    assertSentence(
        "From the ratings alone, which may be off by 3 dB either way.",
        RATED,
        Amplifiers.IDLE,
        List.of(idle));
  }

  /** Volts that go with the supply tell unregulated rails, volts that stay tell regulated ones. */
  @Test
  void rails_areTold_whereReadingsAtTwoSuppliesTellThem() {
    assertSentence(
        "From the readings so far. The rails follow the supply.",
        RATED,
        Amplifiers.STEREO_4,
        List.of(read(4, 20, 13.8), read(4, 18.1, 12.5), read(2, 19.4, 13.7)));
    assertSentence(
        "From the readings so far. The rails look regulated.",
        RATED,
        Amplifiers.STEREO_4,
        List.of(read(4, 20, 13.8), read(4, 20.05, 12.5), read(2, 19.4, 13.7)));
  }

  @Test
  void readingsThatContradict_areSaidToWiden() {
    String told =
        sentence(
            RATED,
            Amplifiers.STEREO_4,
            List.of(
                read(4, 14, Double.NaN),
                read(4, 19, Double.NaN),
                read(2, 12, Double.NaN),
                read(2, 17.5, Double.NaN)));
    assertEquals(
        "From the readings so far. Wide, because the readings scatter 9 times more than one"
            + " amplifier explains.",
        told);
  }

  private static void assertSentence(
      String expected, Amplifier amplifier, Target target, List<Observation> walk) {
    assertEquals(expected, sentence(amplifier, target, walk));
  }

  private static String sentence(Amplifier amplifier, Target target, List<Observation> walk) {
    return Basis.sentences(new WalkModel(Amplifiers.evidence(amplifier, walk)), target);
  }

  private static Observation read(double ohms, double volts, double supply) {
    Map<ReadingId, Double> readings =
        Double.isNaN(supply)
            ? Map.of(ReadingId.OUTPUT_VOLTS, volts)
            : Map.of(ReadingId.OUTPUT_VOLTS, volts, ReadingId.SUPPLY_VOLTS, supply);
    return new Observation(Target.loaded("stereo-" + ohms, Mode.STEREO, ohms), readings);
  }
}
