package loadwalk.forecast.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Mode;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.BriefedBench;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Verdict;
import loadwalk.forecast.Warmth;
import org.junit.jupiter.api.Test;

/** What a step that ended before it was measured means for the ones behind it. */
class EndedCautionsPropertyTest {
  private static final long SEED = 20_261_201L;
  private static final int WALKS = 4000;
  private static final double[] LADDER = {8, 4, 2.67, 2, 1.33, 1, 0.5, 0.25};

  private final Random random = new Random(SEED);

  /** A load of some kind of step, from the ladder. */
  private Target step(String id) {
    Mode mode = Mode.values()[random.nextInt(2)];
    double ohms = LADDER[random.nextInt(LADDER.length)] * (mode == Mode.BRIDGED ? 2 : 1);
    Target.Kind kind =
        List.of(Target.Kind.LOADED, Target.Kind.OPEN_LOAD, Target.Kind.WARM_UP)
            .get(random.nextInt(3));
    return new Target(id, kind, mode, ohms, kind == Target.Kind.WARM_UP ? 0.5 : 1);
  }

  private static StepCautions.Outcome ask(
      Target target, List<EndedStep> ended, Map<ReadingId, Band> bands) {
    BriefedBench bench = new BriefedBench();
    Evidence plain = bench.evidence();
    Evidence evidence =
        new Evidence(
            plain.amplifier(), plain.bench(), plain.conditions(), List.of(), ended, Warmth.UNKNOWN);
    return bench.cautions.of(evidence, target, bands, bench.demand);
  }

  private Map<ReadingId, Double> last() {
    Map<ReadingId, Double> last = new EnumMap<>(ReadingId.class);
    if (random.nextBoolean()) {
      last.put(ReadingId.SUPPLY_AMPS, 1 + 60 * random.nextDouble());
    }
    if (random.nextBoolean()) {
      last.put(ReadingId.SUPPLY_VOLTS, 11 + 3 * random.nextDouble());
    }
    return last;
  }

  @Test
  void noStepOfTheSameOrLowerOhmsAChannel_isClearBehindAProtectedOne() {
    int asked = 0;
    for (int i = 0; i < WALKS; i++) {
      List<EndedStep> ended = new ArrayList<>();
      for (int n = random.nextInt(3); n >= 0; n--) {
        Outcome outcome = Outcome.sayable().get(random.nextInt(3));
        ended.add(new EndedStep(step("before-" + n), outcome, last()));
      }
      Target target = step("now");
      double most = ended.stream().mapToDouble(EndedStep::channelOhms).max().orElseThrow();
      Map<ReadingId, Band> bands =
          random.nextBoolean()
              ? Map.of()
              : Map.of(ReadingId.SUPPLY_AMPS, new Band(0.1, 0.5, 1 + random.nextDouble()));
      if (target.mode().channelOhms(target.ohms()) <= most) {
        asked++;
        assertEquals(
            Verdict.HALT,
            ask(target, ended, bands).verdict(),
            "seed " + SEED + ", walk " + i + ": " + target + " behind " + ended);
      }
    }
    assertTrue(asked > WALKS / 3, "only " + asked + " steps asked the same again");
  }

  @Test
  void lighterLoad_isNotHeld_whereItsCurrentStaysBelow() {
    for (int i = 0; i < WALKS; i++) {
      double amps = 10 + 40 * random.nextDouble();
      Outcome outcome = random.nextBoolean() ? Outcome.PROTECTED : Outcome.FUSE_OPENED;
      EndedStep before =
          new EndedStep(
              Target.loaded("before", Mode.STEREO, 2),
              outcome,
              Map.of(ReadingId.SUPPLY_AMPS, amps));
      Target lighter = Target.loaded("now", Mode.STEREO, 2.2 + 6 * random.nextDouble());
      double high = amps * (0.5 + random.nextDouble());
      double middle = high * (0.5 + 0.5 * random.nextDouble());
      List<Verdict> found =
          ask(lighter, List.of(before), Map.of(ReadingId.SUPPLY_AMPS, new Band(0, middle, high)))
              .cautions()
              .stream()
              .filter(c -> c.code().endsWith("-before"))
              .map(Caution::gravity)
              .toList();
      String which = "seed " + SEED + ", walk " + i + ": " + middle + " to " + high + " of " + amps;
      if (high < amps) {
        assertEquals(List.of(), found, which);
      } else if (middle > amps) {
        assertEquals(List.of(Verdict.HALT), found, which);
      } else {
        assertEquals(1, found.size(), which);
      }
    }
  }

  @Test
  void caution_namesStepLoadAndCurrent_ofTheWorst() {
    EndedStep light =
        new EndedStep(Target.loaded("stereo-4", Mode.STEREO, 4), Outcome.PROTECTED, Map.of());
    EndedStep heavy =
        new EndedStep(
            Target.loaded("bridged-1", Mode.BRIDGED, 1),
            Outcome.PROTECTED,
            Map.of(ReadingId.SUPPLY_AMPS, 41.2));
    List<Caution> found =
        ask(Target.loaded("now", Mode.STEREO, 0.5), List.of(heavy, light), Map.of()).cautions();
    assertEquals(
        List.of(
            "At stereo-4, 4 Ω a channel, the amplifier shut itself off. Asked again: 0.5 Ω a"
                + " channel. Find the cause first."),
        texts(found));
    found = ask(Target.loaded("now", Mode.STEREO, 0.5), List.of(heavy), Map.of()).cautions();
    assertEquals(
        List.of(
            "At bridged-1, 0.5 Ω a channel, the amplifier shut itself off at 41.2 A. Asked again:"
                + " 0.5 Ω a channel. Find the cause first."),
        texts(found));
  }

  private static List<String> texts(List<Caution> cautions) {
    return cautions.stream()
        .filter(c -> c.code().equals("protected-before"))
        .map(Caution::text)
        .toList();
  }

  @Test
  void stepThatDrivesNothing_isNotHeld() {
    EndedStep before =
        new EndedStep(Target.loaded("stereo-4", Mode.STEREO, 4), Outcome.GAVE_OUT, Map.of());
    StepCautions.Outcome idle = ask(Target.idle("idle"), List.of(before), Map.of());
    assertNotEquals(Verdict.HALT, idle.verdict());
  }
}
