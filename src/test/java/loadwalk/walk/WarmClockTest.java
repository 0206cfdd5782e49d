package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.bench.ReadingId;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;

/** The warm-up clock: ticks, gaps, retries and when a heatsink counts as steady. */
class WarmClockTest {
  private final Floor floor = new Floor();

  private double warm() {
    return floor.model.clock().warmSeconds();
  }

  private void secondsPass(int seconds) {
    for (int i = 0; i < seconds; i++) {
      floor.letPass(1);
    }
  }

  private Steadiness steadiness() {
    return Steadiness.of(floor.model.state(), floor.model.state().current().orElseThrow(), warm());
  }

  @Test
  void tick_movesTheClockByTheForwardOnlyClockAlone() {
    floor.hear(new Intent.Begin()).letPass(1.5);
    assertEquals(1.5, warm(), 1e-9);
    long nanos = floor.model.clock().monoNanos().getAsLong();
    floor.hear(new Event.Tick(nanos + 2_000_000_000L, 1_000_000 - 3_600_000));
    assertEquals(3.5, warm(), 1e-9);
    floor.hear(new Event.Tick(nanos, 1_000_000 - 3_600_000));
    assertEquals(3.5, warm(), 1e-9);
  }

  @Test
  void clock_isKeptOnDiskEveryFifteenSeconds() {
    floor.hear(new Intent.Begin());
    secondsPass(14);
    assertFalse(floor.holds(Fact.Warmed.class));
    secondsPass(1);
    assertEquals(new Fact.Warmed("warm-up", 15), floor.last(Fact.Warmed.class));
    secondsPass(16);
    assertEquals(new Fact.Warmed("warm-up", 30), floor.last(Fact.Warmed.class));
  }

  @Test
  void end_ringsOnce_andOnlyThenTheWarmUpMayFinish() {
    floor.hear(new Intent.Begin());
    secondsPass(599);
    floor.hear(new Intent.Finish());
    assertEquals(Status.RUNNING, floor.step("warm-up").status());
    assertFalse(floor.effects.contains(new Effect.Bell()));
    secondsPass(5);
    assertEquals(1, floor.effects.stream().filter(Effect.Bell.class::isInstance).count());
    floor.hear(new Intent.Finish());
    assertEquals(Status.DONE, floor.step("warm-up").status());
  }

  @Test
  void tenMinutesOutOfSight_areBorne_andASecondMoreCools() {
    floor.hear(new Intent.Begin());
    secondsPass(20);
    floor.letPass(600);
    assertFalse(floor.holds(Fact.Cooled.class));
    floor.letPass(600.5);
    assertEquals("warm-up", floor.last(Fact.Cooled.class).step());
    assertEquals(0, warm());
    assertEquals(Status.BRIEFED, floor.step("warm-up").status());
  }

  @Test
  void sleepingMachine_whoseForwardClockStoodStill_isToldByTheWallClock() {
    floor.hear(new Intent.Begin()).letPass(20);
    long nanos = floor.model.clock().monoNanos().getAsLong();
    floor.hear(new Event.Tick(nanos + 1, floor.model.clock().wallMillis() + 7_200_000));
    assertTrue(floor.last(Fact.Cooled.class).why().contains("for 2 hours"));
  }

  @Test
  void coldAmplifier_cannotCool() {
    floor.at("stereo-4").letPass(1).letPass(86_400);
    assertFalse(floor.holds(Fact.Cooled.class));
  }

  @Test
  void failedWrite_isTriedAgainAfterThreeSeconds_andTheClockHoldsMeanwhile() {
    floor.hear(new Intent.Begin()).letPass(10);
    floor.disk = false;
    floor.letPass(10);
    assertEquals(Optional.of("The disk is full."), floor.model.keepProblem());
    double held = warm();
    int writes = floor.effects.size();
    floor.letPass(1).letPass(1);
    assertEquals(writes, floor.effects.size());
    floor.letPass(1);
    assertEquals(writes + 1, floor.effects.size());
    floor.disk = true;
    floor.letPass(3);
    assertFalse(floor.model.isWriting());
    assertEquals(OptionalLong.empty(), floor.model.clock().retryNanos());
    assertEquals(held, warm(), 1e-9);
  }

  private void reads(String celsius) {
    floor.hear(new Intent.Enter("warm-up", ReadingId.SINK_CELSIUS, celsius));
  }

  @Test
  void heatsinkThatStillWarms_isNotSteady_andTheNextTemperatureIsAskedForByTime() {
    floor.hear(new Intent.Begin());
    assertTrue(floor.model.state().step("warm-up").entries().isEmpty());
    secondsPass(601);
    assertTrue(steadiness().isSteady(), "without temperatures the clock alone decides");
    for (String celsius : new String[] {"50", "51", "52"}) {
      reads(celsius);
      secondsPass(30);
    }
    assertEquals(2.0, steadiness().slope().orElseThrow().celsiusPerMinute(), 1e-9);
    floor.hear(new Intent.Finish());
    assertTrue(floor.said().contains("moves +2.00 ± "), floor.said());
    assertTrue(floor.said().contains("Read the heatsink at 14:00"), floor.said());
    assertEquals(Status.RUNNING, floor.step("warm-up").status());
  }

  @Test
  void temperaturesEveryFiveMinutes_tellTheirSlope() {
    floor.hear(new Intent.Begin());
    for (String celsius : new String[] {"30", "41", "52"}) {
      secondsPass(300);
      reads(celsius);
    }
    assertEquals(2.2, steadiness().slope().orElseThrow().celsiusPerMinute(), 1e-9);
    floor.hear(new Intent.Finish());
    assertEquals(Status.RUNNING, floor.step("warm-up").status(), floor.said());
  }

  @Test
  void twoTemperatures_orOldOnes_doNotTell() {
    floor.hear(new Intent.Begin());
    secondsPass(605);
    reads("52.0");
    secondsPass(120);
    reads("52.0");
    assertEquals(Steadiness.Told.TOO_FEW, steadiness().told());
    assertFalse(steadiness().isSteady());
    secondsPass(120);
    reads("52.1");
    assertTrue(steadiness().isSteady(), steadiness().toString());
    secondsPass(179);
    assertTrue(steadiness().isSteady(), steadiness().toString());
    secondsPass(2);
    assertEquals(Steadiness.Told.TOO_OLD, steadiness().told());
    floor.hear(new Intent.Finish());
    assertTrue(floor.said().contains("too old"), floor.said());
  }

  @Test
  void rest_leavesWhatWasReadBeforeIt() {
    floor.hear(new Intent.Begin());
    secondsPass(605);
    for (String celsius : new String[] {"52.0", "52.0", "52.1"}) {
      reads(celsius);
      secondsPass(100);
    }
    assertTrue(steadiness().isSteady(), steadiness().toString());
    floor.hear(new Intent.Pause()).hear(new Intent.Resume());
    assertEquals(Steadiness.Told.TOO_FEW, steadiness().told());
    assertFalse(steadiness().isSteady());
  }

  @Test
  void warmUpBegunAgain_forgetsTheTemperaturesBeforeIt() {
    floor.hear(new Intent.Begin());
    for (int i = 0; i < 4; i++) {
      secondsPass(60);
      floor.hear(new Intent.Enter("warm-up", ReadingId.SINK_CELSIUS, String.valueOf(30 + 5 * i)));
    }
    floor.hear(new Intent.EndEarly("for the test")).hear(new Intent.WarmAgain());
    floor.hear(new Intent.Begin());
    assertEquals(0, warm());
    secondsPass(250);
    assertEquals(Optional.empty(), steadiness().slope());
  }

  @Test
  void stopAndPause_keepTheClockFirst() {
    floor.hear(new Intent.Begin());
    secondsPass(7);
    floor.hear(new Intent.Pause());
    assertEquals(new Fact.Warmed("warm-up", 7), floor.last(Fact.Warmed.class));
    floor.hear(new Intent.Resume());
    secondsPass(2);
    floor.hear(new Intent.Stop());
    assertEquals(new Fact.Warmed("warm-up", 9), floor.last(Fact.Warmed.class));
  }
}
