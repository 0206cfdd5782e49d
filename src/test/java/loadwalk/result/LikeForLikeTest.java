package loadwalk.result;

import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.rated;
import static loadwalk.result.Readings.rating;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a rating and a reading are of other conditions, the sheet says which. */
class LikeForLikeTest {
  /**
   * Supply volts are like the rated ones up to 1.5 % apart; the limit said is like the rated one
   * within a third of it (the design, section 4).
   */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "14.4, 1, 14.4, \"\"",
        "14.4, 1, 14.19, \"\"",
        "14.4, 1, 14.18, \"rated at a supply of 14.4 V, read at 14.18 V\"",
        "14.4, 1, 14.61, \"\"",
        "14.4, 1, 14.62, \"rated at a supply of 14.4 V, read at 14.62 V\"",
        "14.4, 0.76, 14.4, \"\"",
        "14.4, 0.74, 14.4, \"rated at 0.74 % THD, read at 1 %\"",
        "14.4, 1.49, 14.4, \"\"",
        "14.4, 1.51, 14.4, \"rated at 1.51 % THD, read at 1 %\"",
        "12, 0.05, 14.4, \"rated at 0.05 % THD, read at 1 %;"
            + " rated at a supply of 12 V, read at 14.40 V\"",
      })
  void differs(double ratedVolts, double ratedThd, double supply, String differs) {
    RatingComparison comparison =
        Readings.walk(
                rated(rating(Mode.STEREO, 4, 100, ratedVolts, ratedThd)),
                usual(),
                stereo(4, volts(20), of(ReadingId.SUPPLY_VOLTS, supply)))
            .steps()
            .get(0)
            .rating()
            .orElseThrow();
    assertEquals(differs, String.join("; ", comparison.differs()));
  }

  @Test
  void uncertaintyOfTheRatio_isThatOfTheWattsOverTheRating() {
    StepResult step =
        Readings.walk(rated(rating(Mode.STEREO, 4, 80, 14.4, 1)), usual(), stereo(4, volts(20)))
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
                stereo(4, volts(20), of(ReadingId.OTHER_OUTPUT_VOLTS, 20)))
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
}
