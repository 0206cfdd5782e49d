package loadwalk.result;

import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.rated;
import static loadwalk.result.Readings.rating;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a rating and a reading are of other conditions, the sheet says which. */
class LikeForLikeTest {
  /** Supply volts count as the rated ones up to 2 % apart, the THD limit up to 1 %. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "14.4, 1, 14.4, \"\"",
        "14.4, 1, 14.13, \"\"",
        "14.4, 1, 14.1, \"rated at a supply of 14.4 V, measured at 14.1 V\"",
        "14.4, 1, 14.68, \"\"",
        "14.4, 1, 14.7, \"rated at a supply of 14.4 V, measured at 14.7 V\"",
        "14.4, 0.991, 14.4, \"\"",
        "14.4, 0.989, 14.4, \"rated at 0.989 % THD, measured at 1 %\"",
        "14.4, 1.009, 14.4, \"\"",
        "14.4, 1.011, 14.4, \"rated at 1.011 % THD, measured at 1 %\"",
        "12, 0.05, 14.4, \"rated at 0.05 % THD, measured at 1 %;"
            + " rated at a supply of 12 V, measured at 14.4 V\"",
      })
  void note(double ratedVolts, double ratedThd, double supply, String note) {
    assertEquals(
        note, note(Criterion.THD_LIMIT, ratedVolts, ratedThd, of(ReadingId.SUPPLY_VOLTS, supply)));
  }

  @Test
  void supplyNotRead_countsAsTheWalksSetting() {
    assertEquals("", note(Criterion.THD_LIMIT, 14.4, 1));
    assertEquals(
        "rated at a supply of 13.8 V, measured at 14.4 V", note(Criterion.THD_LIMIT, 13.8, 1));
  }

  @Test
  void onsetOfClipping_isSaidInFull() {
    // 4.75 % more power at 1 % THD of a hard clipper: reference class-b, computed.
    assertEquals(
        "rated at 1 % THD, read at the onset of clipping: a hard clipper gives 4.75 % more power at"
            + " 1 % THD",
        note(Criterion.CLIPPING_ONSET, 14.4, 1));
  }

  @Test
  void belowTheLimit_theRatedThdSaysNothing() {
    assertEquals(
        "read below the limit: the amplifier may deliver more",
        note(Criterion.BELOW_LIMIT, 14.4, 0.1));
  }

  @Test
  void uncertaintyOfTheRatio_isThatOfTheWattsOverTheRating() {
    StepResult step =
        Readings.walk(
                rated(rating(Mode.STEREO, 4, 80, 14.4, 1)), usual(), Readings.stereo(4, volts(20)))
            .steps()
            .get(0);
    RatingComparison comparison = step.rating().orElseThrow();
    assertEquals(100.0 / 80, comparison.ratio().value(), 1e-12);
    assertEquals(step.watts().orElseThrow().u() / 80, comparison.ratio().u(), 1e-12);
  }

  @Test
  void equalChannels_areComparedByTheFirst() {
    StepResult step =
        Readings.walk(
                rated(rating(Mode.STEREO, 4, 80, 14.4, 1)),
                usual(),
                Readings.stereo(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 20)))
            .steps()
            .get(0);
    assertEquals(step.watts(), step.rating().map(RatingComparison::measured));
  }

  @Test
  void stepThatDoesNotMeasure_isNotCompared() {
    MeasuredStep warm = Readings.below("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, volts(14));
    WalkResult result = Readings.walk(rated(rating(Mode.STEREO, 4, 80, 14.4, 1)), usual(), warm);
    assertEquals(Optional.empty(), result.steps().get(0).rating());
    assertEquals(0, result.published().size());
  }

  private static String note(
      Criterion criterion, double ratedVolts, double ratedThd, TakenReading... more) {
    TakenReading[] readings = new TakenReading[more.length + 1];
    readings[0] = volts(20);
    System.arraycopy(more, 0, readings, 1, more.length);
    RatingComparison comparison =
        Readings.walk(
                rated(rating(Mode.STEREO, 4, 100, ratedVolts, ratedThd)),
                usual(),
                loaded(Mode.STEREO, 4, criterion, readings))
            .steps()
            .get(0)
            .rating()
            .orElseThrow();
    List<String> all = new ArrayList<>(comparison.differs());
    all.addAll(comparison.notes());
    return String.join("; ", all);
  }
}
