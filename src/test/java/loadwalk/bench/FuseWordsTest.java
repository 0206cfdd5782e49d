package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a fuse lasts, in the words of the plan and the cautions. */
class FuseWordsTest {
  private static final FuseCurve FUSE =
      new FuseCurve(
          "slow",
          100,
          List.of(
              point(1.1, 14_400, OptionalDouble.empty()),
              point(1.35, 120, OptionalDouble.of(1800)),
              point(2, 119.9, OptionalDouble.of(7200)),
              point(3.5, 0.3, OptionalDouble.of(7199)),
              point(6, 0.1, OptionalDouble.of(119.9))));

  private static FuseCurve.Point point(double multiple, double least, OptionalDouble most) {
    return new FuseCurve.Point(multiple, least, most, "an invented fuse", "read");
  }

  @ParameterizedTest
  @CsvSource({
    "0, may never open", "1.099, may never open", "1.1, 'not before 4 h, may never open'",
    "1.349, 'not before 2.03 min, may never open'", "1.35, 2 min to 30 min", "2, 120 s to 2 h",
    "3.5, 0.3 s to 120 min", "6, 0.1 s to 120 s", "6.01, within 120 s (beyond the table)"
  })
  void opening(double multiple, String words) {
    assertEquals(words, FUSE.opening(multiple).text());
  }

  /** The largest of each kind, and what is a little larger, by the sizes that are made. */
  @ParameterizedTest
  @CsvSource({
    "0.1, type C",
    "40, type C",
    "40.1, type E",
    "120, type E",
    "120.1, SF30",
    "200, SF30",
    "200.1, SF51",
    "500, SF51",
    "501, SF51"
  })
  void kind_isTheSmallestMadeInTheRating(double amps, String kind) {
    String type = Tables.stock().fuseFor(amps).type();
    assertEquals(kind, type.replaceAll(".*(type C|type E|SF30|SF51).*", "$1"));
  }
}
