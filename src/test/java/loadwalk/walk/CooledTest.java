package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Warmth;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** When warmth is taken as lost, to the millisecond. */
class CooledTest {
  private static final long DAY = 86_400_000L;

  private final Floor floor = new Floor();

  private String cooledAfter(long millis) {
    WalkState state = floor.model.state();
    return WarmClock.cooledBetween(state, state.lastWallMillis() + millis)
        .map(fact -> ((Fact.Cooled) fact).why())
        .orElse("");
  }

  @Test
  void warmth_isLostAfterTenMinutes_orWhereTheClockTellsNothing() {
    floor.hear(new Intent.Begin()).letPass(20);
    assertEquals("", cooledAfter(600_000));
    assertTrue(cooledAfter(600_001).contains("stood still for 10 minutes"), "one more");
    assertTrue(cooledAfter(366 * DAY).contains("stood still for 8784 hours"), "a year");
    assertTrue(cooledAfter(366 * DAY + 1).contains("set forward by more than a year"), "more");
    assertEquals("", cooledAfter(0));
    assertEquals("", cooledAfter(-1000));
    assertTrue(cooledAfter(-1001).contains("went backwards since the last record"), "back");
  }

  @Test
  void warmthThatNeverWas_cannotBeLost() {
    assertEquals("", cooledAfter(DAY));
    floor.at("idle").hear(new Intent.Begin());
    assertEquals(Status.RUNNING, floor.step("idle").status());
    assertEquals("", cooledAfter(DAY), "a step that runs does not warm");
    floor.letPass(1);
    assertFalse(floor.holds(Fact.Warmed.class));
  }

  @Test
  void warmthOfAWarmUpThatIsDone_isLostLikewise() {
    floor.hear(new Intent.Begin()).letPass(20).hear(new Intent.EndEarly("warm enough"));
    assertEquals("idle", floor.model.state().currentId());
    assertEquals("", cooledAfter(600_000));
    assertTrue(cooledAfter(600_001).contains("stood still for 10 minutes"), "between two steps");
  }

  @Test
  void practiceClock_isKeptAsOftenInRealTime() {
    floor.model = Model.of(floor.model.state(), 60);
    floor.hear(new Event.Reopened(0, 1_000_000)).hear(new Intent.Begin());
    for (int i = 0; i < 9; i++) {
      floor.letPass(1);
    }
    assertEquals(540, floor.model.clock().warmSeconds(), 1e-9);
    assertFalse(floor.holds(Fact.Warmed.class));
    floor.letPass(1);
    assertEquals(600, floor.last(Fact.Warmed.class).seconds(), "it rings, so it is kept");
    for (int i = 0; i < 14; i++) {
      floor.letPass(1);
    }
    assertEquals(600, floor.last(Fact.Warmed.class).seconds());
    floor.letPass(1);
    assertEquals(1500, floor.last(Fact.Warmed.class).seconds());
  }

  /** Reads every minute a heatsink of 20 °C that settles at 60 °C by Newton's law. */
  private void warmsBy(double tauMinutes) {
    floor.hear(new Intent.Begin());
    for (int minute = 1; minute <= 25; minute++) {
      for (int second = 0; second < 60; second++) {
        floor.letPass(1);
      }
      double celsius = 60 - 40 * Math.exp(-minute / tauMinutes);
      String typed = String.format(Locale.ROOT, "%.1f", celsius);
      floor.hear(new Intent.Enter("warm-up", ReadingId.SINK_CELSIUS, typed));
    }
    floor.hear(new Intent.EndEarly("warm enough"));
    assertEquals(Status.DONE, floor.step("warm-up").status(), floor.said());
  }

  /** Half of the rise is lost after τ ln 2, here 4 min 10 s. */
  @Test
  void rest_coolsByTheTimeConstantOfTheWarmUp() {
    warmsBy(6);
    assertEquals("", cooledAfter(240_000));
    String half = cooledAfter(260_000);
    assertTrue(half.contains("has cooled to about 39 °C"), half);
    String night = cooledAfter(DAY / 2);
    assertTrue(night.contains("stood still for 12 hours"), night);
    assertTrue(night.contains("has cooled to about 2"), night);
    Warmth warmth = Targets.evidenceBefore(floor.model.state(), "stereo-4").warmth();
    assertEquals(60, warmth.endCelsius().orElseThrow(), 0.3);
  }

  @Test
  void rest_ofAHeavyHeatsink_isBorneLonger() {
    warmsBy(20);
    assertEquals("", cooledAfter(700_000));
    assertTrue(cooledAfter(1_000_000).contains("has cooled to about"), "a quarter of an hour");
  }
}
