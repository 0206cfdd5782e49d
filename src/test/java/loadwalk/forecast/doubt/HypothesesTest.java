package loadwalk.forecast.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Slip;
import org.junit.jupiter.api.Test;

/** Bayes' rule between nothing wrong and every slip. */
class HypothesesTest {
  private static final Set<ReadingId> VOLTS = Set.of(ReadingId.OUTPUT_VOLTS);
  private static final Set<ReadingId> AMPS = Set.of(ReadingId.SUPPLY_AMPS);
  private static final double NONE = Double.NEGATIVE_INFINITY;

  private final Hypotheses hypotheses = new Hypotheses();

  private void add(Set<ReadingId> faulty, Slip slip, double meant, double weight) {
    hypotheses.add(faulty, slip, meant, Math.log(weight));
  }

  @Test
  void odds_areOfAllSlipsTogether_againstNone() {
    hypotheses.honest(Math.log(0.2));
    add(VOLTS, Slip.DECIMAL_POINT, 1.3, 0.1);
    add(VOLTS, Slip.UNNAMED, Double.NaN, 0.3);
    add(AMPS, Slip.DIGITS_SWAPPED, 17, 0.2);
    Hypotheses.Finding finding = hypotheses.find(0);
    assertEquals(Math.log(3), finding.logOdds(), 1e-12);
    assertEquals(VOLTS, finding.faulty());
    assertEquals(Slip.UNNAMED, finding.slip());
  }

  @Test
  void doubt_needsMoreThanTheOddsAskedFor() {
    hypotheses.honest(Math.log(0.2));
    add(VOLTS, Slip.DECIMAL_POINT, 1.3, 0.6);
    assertEquals(VOLTS, hypotheses.find(Math.log(2.9)).faulty());
    Hypotheses.Finding none = hypotheses.find(Math.log(3.1));
    assertEquals(Set.of(), none.faulty());
    assertEquals(Slip.UNNAMED, none.slip());
    assertTrue(Double.isNaN(none.meant()));
    assertEquals(Math.log(3), none.logOdds(), 1e-12);
  }

  /** Two ways to one slip count together; the likelier of them says what was meant. */
  @Test
  void slip_isTheLikeliestOfAllWaysTogether() {
    hypotheses.honest(Math.log(0.01));
    add(VOLTS, Slip.PEAK_FOR_RMS, 14, 0.4);
    add(VOLTS, Slip.DECIMAL_POINT, 1.9, 0.2);
    add(VOLTS, Slip.DECIMAL_POINT, 190, 0.3);
    Hypotheses.Finding finding = hypotheses.find(0);
    assertEquals(Slip.DECIMAL_POINT, finding.slip());
    assertEquals(190, finding.meant());
  }

  /** The readings at fault are settled before the slip, however likely one slip of others is. */
  @Test
  void fault_isSettledBeforeItsSlip() {
    hypotheses.honest(Math.log(0.01));
    add(AMPS, Slip.SUPPLY_AMPS_TEN_TIMES, 17, 0.4);
    add(VOLTS, Slip.PEAK_FOR_RMS, 14, 0.25);
    add(VOLTS, Slip.DECIMAL_POINT, 1.9, 0.25);
    assertEquals(VOLTS, hypotheses.find(0).faulty());
  }

  @Test
  void hypothesisThatIsNoNumber_isImpossible() {
    hypotheses.honest(Math.log(0.1));
    hypotheses.add(VOLTS, Slip.DECIMAL_POINT, 1.3, Double.NaN);
    hypotheses.add(VOLTS, Slip.DECIMAL_POINT, 1.3, NONE);
    assertEquals(NONE, hypotheses.find(-100).logOdds());
    assertEquals(Set.of(), hypotheses.find(-100).faulty());
  }

  @Test
  void nothingHonest_andNothingElse_isNoDoubt() {
    assertEquals(Set.of(), hypotheses.find(0).faulty());
    add(VOLTS, Slip.UNNAMED, Double.NaN, 1e-6);
    assertEquals(VOLTS, hypotheses.find(0).faulty(), "where no honest entry can be");
  }
}
