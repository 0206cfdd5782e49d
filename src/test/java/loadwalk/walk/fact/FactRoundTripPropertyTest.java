package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.practice.PracticeRig;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;
import loadwalk.result.Repeatability;
import loadwalk.sequence.SequenceReader;
import org.junit.jupiter.api.Test;

/** Random facts of every kind are the same after they were written and read back. */
class FactRoundTripPropertyTest {
  private static final long SEED = 4_711;
  private static final int BODIES = Integer.getInteger("facts.bodies", 3_000);
  private static final String[] STEPS = {"warm-up", "idle", "stereo-4", "bridged-0.5", "recheck"};
  private static final String[] PIECES = {
    "13,4 V", "Ω", "«», \"\\", "\u0007\u001b[31m", "\u2028", "\ud83d\udd25", "", " ", "ä", "null"
  };

  private static final String[] TYPES = {"image/png", "image/jpeg"};

  private final Random random = new Random(SEED);

  @Test
  void everyFact_isTheSameAfterWritingAndReading() {
    Set<String> kinds = new TreeSet<>();
    for (int i = 0; i < BODIES; i++) {
      List<Stamped> facts = new ArrayList<>();
      long at = random.nextLong() % 4_000_000_000_000L;
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        facts.add(new Stamped(fact(), random.nextInt(4) == 0 ? at + random.nextInt(9000) : at));
      }
      facts.forEach(f -> kinds.add(f.fact().getClass().getSimpleName()));
      String body = FactText.body(facts);
      assertEquals(facts, FactText.read(body), "seed " + SEED + ", body " + i + ": " + body);
    }
    assertEquals(24, kinds.size(), kinds::toString);
  }

  @Test
  void opening_isTheSameAfterWritingAndReading() throws IOException {
    try (InputStream in = getClass().getResourceAsStream("/loadwalk/sequences/full-walk.json")) {
      byte[] bytes = in.readAllBytes();
      for (long seed = 1; seed < 200; seed++) {
        PracticeRig rig = PracticeRig.ofSeed(seed);
        Fact opened =
            new Fact.Opened(
                "walk",
                "1.0.0",
                SequenceReader.read(bytes, "sequence").found().orElseThrow(),
                new String(bytes, StandardCharsets.UTF_8),
                rig.amplifier().printed(),
                rig.bench().described(),
                OptionalLong.of(seed == 199 ? Fact.Opened.LARGEST_SEED : seed),
                seed % 3 == 0
                    ? Optional.empty()
                    : Optional.of(Learned.of(new Repeatability(0.00123456 / seed, (int) seed))));
        List<Stamped> facts = List.of(new Stamped(opened, seed));
        String body = FactText.body(facts);
        assertTrue(body.startsWith("{\"format\":\"loadwalk-journal/2\""), body);
        assertEquals(facts, FactText.read(body), "seed " + seed);
      }
    }
  }

  @Test
  void unknownFact_isRefusedWithASentence() {
    String body = "{\"at\":\"2026-01-31T09:30:00Z\",\"facts\":[{\"fact\":\"levitated\"}]}";
    UnreadableFact thrown = assertThrows(UnreadableFact.class, () -> FactText.read(body));
    assertEquals("«levitated» is a fact this version does not know", thrown.getMessage());
  }

  @Test
  void attachedFact_withAWrongHashOrType_isRefusedWithASentence() {
    String body =
        "{\"at\":\"2026-01-31T09:30:00Z\",\"facts\":[{\"fact\":\"attached\",\"step\":\"idle\","
            + "\"path\":\"a.png\",\"caption\":\"c\",\"sha256\":\"%s\",\"mediaType\":\"%s\"}]}";
    String hash = "0".repeat(64);
    for (String wrong :
        List.of(
            body.formatted("12", "image/png"),
            body.formatted(hash, "image/svg+xml"),
            body.formatted(hash.replace('0', 'G'), "image/jpeg"))) {
      assertThrows(UnreadableFact.class, () -> FactText.read(wrong), wrong);
    }
    assertEquals(1, FactText.read(body.formatted(hash, "image/png")).size());
  }

  private Fact fact() {
    String step = STEPS[random.nextInt(STEPS.length)];
    ReadingId id = one(ReadingId.values());
    switch (random.nextInt(23)) {
      case 0:
        return new Fact.Briefed(step, forecast(step));
      case 1:
        return new Fact.Armed(step, text(), positive());
      case 2:
        return new Fact.HaltLifted(step, List.of(text(), text()), text());
      case 3:
        return new Fact.Begun(step);
      case 4:
        return new Fact.Warmed(step, positive());
      case 5:
        return new Fact.Entered(
            step, id, text(), number(), positive(), doubts(), positive(), meter(), held());
      case 6:
        return new Fact.Doubted(step, id, doubts());
      case 7:
        return new Fact.StoodBy(step, id, text());
      case 8:
        return new Fact.CriterionSet(step, one(Criterion.values()));
      case 9:
        return new Fact.PairAdded(step, new LimitPair(positive(), positive()));
      case 10:
        return new Fact.Captured(step, capture());
      default:
        return plainFact(step);
    }
  }

  private OptionalDouble held() {
    return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(positive());
  }

  private Optional<Instrument> meter() {
    boolean one = random.nextBoolean();
    return random.nextBoolean()
        ? Optional.empty()
        : Optional.of(
            new Instrument(
                text(), text(), text(), random.nextInt(), one ? 1 : 8, one ? 0 : positive()));
  }

  private Capture capture() {
    return new Capture(
        text(),
        text(),
        1 + random.nextInt(8),
        positive(),
        positive(),
        positive(),
        positive(),
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(positive()),
        text(),
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(positive()),
        random.nextBoolean(),
        text(),
        text(),
        text(),
        List.of(number(), number(), number()),
        random.nextBoolean() ? List.of() : List.of(positive(), positive()));
  }

  private Fact plainFact(String step) {
    List<Fact> facts =
        List.of(
            new Fact.EndedEarly(step, text()),
            new Fact.Ended(step, one(Outcome.sayable().toArray(Outcome[]::new)), text()),
            new Fact.Done(step),
            new Fact.Skipped(step, text()),
            new Fact.Noted(step, text()),
            new Fact.ControlsSet(text()),
            new Fact.Attached(step, text(), text(), hash(), one(TYPES)),
            new Fact.Stopped(step),
            new Fact.StopExplained(text()),
            new Fact.Paused(),
            new Fact.Resumed(),
            new Fact.Cooled(step, text()),
            new Fact.WarmAgain(step));
    return facts.get(random.nextInt(facts.size()));
  }

  private String hash() {
    return String.format("%016x", random.nextLong()).repeat(4);
  }

  private Forecast forecast(String step) {
    Map<ReadingId, Band> readings = new EnumMap<>(ReadingId.class);
    for (int n = random.nextInt(5); n > 0; n--) {
      readings.put(one(ReadingId.values()), band());
    }
    double severity = random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : positive();
    List<Caution> cautions =
        List.of(
            new Caution(text(), one(Verdict.values()), text(), severity),
            Caution.giving(text(), text(), one(Verdict.values()), text(), number(), severity),
            Caution.once(text(), text(), one(Verdict.values()), text(), number()));
    return new Forecast(
        step,
        positive(),
        readings,
        new Forecast.Demand(maybe(), maybe(), maybe(), maybe()),
        random.nextBoolean() ? List.of() : cautions,
        one(Verdict.values()),
        text());
  }

  private Optional<Band> maybe() {
    return random.nextBoolean() ? Optional.empty() : Optional.of(band());
  }

  private Band band() {
    double[] ends = {number(), number(), number()};
    java.util.Arrays.sort(ends);
    return new Band(ends[0], ends[1], ends[2]);
  }

  private List<Doubt> doubts() {
    List<Doubt> doubts = new ArrayList<>();
    for (int n = random.nextInt(3); n > 0; n--) {
      Optional<String> earlier = random.nextBoolean() ? Optional.empty() : Optional.of(text());
      doubts.add(new Doubt(one(ReadingId.values()), one(Slip.values()), text(), text(), earlier));
    }
    return doubts;
  }

  private String text() {
    return PIECES[random.nextInt(PIECES.length)] + PIECES[random.nextInt(PIECES.length)];
  }

  private double positive() {
    return Math.abs(number()) + Double.MIN_NORMAL;
  }

  /** Any finite number but negative zero, which no entry yields. */
  private double number() {
    switch (random.nextInt(4)) {
      case 0:
        return random.nextInt(100_000) / 1000.0;
      case 1:
        return random.nextInt(1000);
      case 2:
        return Math.scalb(random.nextDouble() - 0.5, random.nextInt(600) - 300) + 0.0;
      default:
        return random.nextGaussian();
    }
  }

  private <T> T one(T[] values) {
    return values[random.nextInt(values.length)];
  }
}
