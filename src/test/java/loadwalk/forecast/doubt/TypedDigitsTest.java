package loadwalk.forecast.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Digits as a hand types them: no trailing zeros, two neighbours swapped by a slip. */
class TypedDigitsTest {
  @Test
  void decimals_areThoseThatTheNumberNeeds() {
    assertEquals(1, TypedDigits.decimals(13.40));
    assertEquals(3, TypedDigits.decimals(0.025));
    assertEquals(0, TypedDigits.decimals(1200));
    assertEquals(0, TypedDigits.decimals(Double.NaN));
    assertEquals(0, TypedDigits.decimals(Double.POSITIVE_INFINITY));
  }

  @Test
  void significant_countsNeitherLeadingNorTrailingZeros() {
    assertEquals(3, TypedDigits.significant(13.4));
    assertEquals(2, TypedDigits.significant(0.025));
    assertEquals(2, TypedDigits.significant(1200));
    assertEquals(1, TypedDigits.significant(0));
    assertEquals(1, TypedDigits.significant(Double.NaN));
  }

  @Test
  void swapped_exchangesEachPairOfNeighbours() {
    assertEquals(List.of(31.4, 14.3), TypedDigits.swapped(13.4, 1));
  }

  @Test
  void swapped_takesTheZerosOfTheOtherReadingsIn() {
    assertEquals(List.of(31.4, 14.3, 13.04), TypedDigits.swapped(13.4, 2));
    assertEquals(List.of(5.0), TypedDigits.swapped(0.5, 1));
    assertEquals(List.of(0.5), TypedDigits.swapped(0.05, 2));
  }

  @Test
  void swapped_equalDigits_giveNothingNew() {
    assertEquals(List.of(12.1), TypedDigits.swapped(11.2, 1));
    assertEquals(List.of(), TypedDigits.swapped(7, 0));
  }

  @Test
  void behindZero_isTheNumberWhoseFirstDigitAndZeroWereSwapped() {
    assertEquals(OptionalDouble.of(30.49), TypedDigits.behindZero(3.49, 2));
    assertEquals(OptionalDouble.of(209), TypedDigits.behindZero(29, 0));
    assertEquals(OptionalDouble.of(209.0), TypedDigits.behindZero(29, 1));
    assertEquals(OptionalDouble.empty(), TypedDigits.behindZero(0.49, 2));
    assertEquals(OptionalDouble.empty(), TypedDigits.behindZero(Double.NaN, 2));
  }

  @Test
  void swapped_ofMoreDigitsThanAMeterShows_isNotTried() {
    assertEquals(6, TypedDigits.swapped(1234567, 0).size());
    assertEquals(List.of(), TypedDigits.swapped(12345678, 0));
  }

  @Test
  void swapped_ofWhatNobodyTypes_isEmpty() {
    for (double value : new double[] {0, -13.4, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertEquals(List.of(), TypedDigits.swapped(value, 1));
    }
  }
}
