package loadwalk.walk;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.json.Faults;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;

/** Reads the facts of a journal record back; see {@link FactWriter} for their form. */
public final class FactReader {
  private FactReader() {}

  /**
   * Returns the facts of one record.
   *
   * @throws UnreadableFact if the body holds something this version does not know
   */
  public static List<Stamped> facts(String body) {
    Members members = Members.of(parsed(JsonText.strict("journal").read(body)));
    long at = wallMillis(members.text("at"));
    List<Stamped> facts = new ArrayList<>();
    for (Node item : members.items("facts")) {
      try {
        Members fact = Members.of(item);
        long own = fact.optional("at").isPresent() ? wallMillis(fact.text("at")) : at;
        facts.add(new Stamped(fact(fact), own));
      } catch (IllegalArgumentException refused) {
        throw new UnreadableFact(refused.getMessage());
      }
    }
    return facts;
  }

  /**
   * Returns the walk that the bodies of a journal tell.
   *
   * @throws UnreadableFact if a body holds something this version does not know, or the first fact
   *     opens no walk
   */
  public static WalkState walk(List<String> bodies) {
    WalkState state = null;
    for (String body : bodies) {
      for (Stamped stamped : facts(body)) {
        if (state == null && !(stamped.fact() instanceof Fact.Opened)) {
          throw new UnreadableFact("the first fact does not open a walk");
        }
        state = stamped.fact().applyTo(state, stamped.wallMillis());
      }
    }
    if (state == null) {
      throw new UnreadableFact("the journal opens no walk");
    }
    return state;
  }

  private static <T> T parsed(Read<T> read) {
    return read.found().orElseThrow(() -> new UnreadableFact(read.faults().get(0).sentence()));
  }

  private static long wallMillis(String text) {
    try {
      return MomentText.millis(text).orElseGet(() -> Instant.parse(text).toEpochMilli());
    } catch (DateTimeParseException | ArithmeticException e) {
      throw new UnreadableFact("«at» is no time");
    }
  }

  private static Fact fact(Members m) {
    String name = m.text("fact");
    switch (name) {
      case "opened":
        return opened(m);
      case "briefed":
        return new Fact.Briefed(m.text("step"), forecast(m.text("step"), m.object("forecast")));
      case "armed":
        return new Fact.Armed(m.text("step"), m.text("text"), m.number("ohms"));
      case "halt-lifted":
        return new Fact.HaltLifted(m.text("step"), texts(m.items("codes")), m.text("reason"));
      case "begun":
        return new Fact.Begun(m.text("step"));
      case "warmed":
        return new Fact.Warmed(m.text("step"), m.number("seconds"));
      case "entered":
        return entered(m);
      case "captured":
        return new Fact.Captured(m.text("step"), CaptureForm.read(m));
      case "doubted":
        return new Fact.Doubted(m.text("step"), m.reading("reading"), doubts(m));
      case "stood-by":
        return new Fact.StoodBy(m.text("step"), m.reading("reading"), m.text("reason"));
      case "criterion-set":
        return new Fact.CriterionSet(m.text("step"), criterion(m.text("criterion")));
      case "pair-added":
        LimitPair pair = new LimitPair(m.number("volts"), m.number("thdPercent"));
        return new Fact.PairAdded(m.text("step"), pair);
      default:
        return plain(name, m);
    }
  }

  private static Fact plain(String name, Members m) {
    switch (name) {
      case "ended-early":
        return new Fact.EndedEarly(m.text("step"), m.text("reason"));
      case "done":
        return new Fact.Done(m.text("step"));
      case "skipped":
        return new Fact.Skipped(m.text("step"), m.text("reason"));
      case "cooled":
        return new Fact.Cooled(m.text("step"), m.text("reason"));
      case "warm-again":
        return new Fact.WarmAgain(m.text("step"));
      case "noted":
        return new Fact.Noted(m.text("step"), m.text("text"));
      case "attached":
        return new Fact.Attached(
            m.text("step"),
            m.text("path"),
            m.text("caption"),
            m.text("sha256"),
            m.text("mediaType"));
      case "stopped":
        return new Fact.Stopped(m.text("step"));
      case "stop-explained":
        return new Fact.StopExplained(m.text("reason"));
      case "paused":
        return new Fact.Paused();
      case "resumed":
        return new Fact.Resumed();
      default:
        throw new UnreadableFact("«" + name + "» is a fact this version does not know");
    }
  }

  private static Fact opened(Members m) {
    String text = m.text("sequenceText");
    Sequence sequence =
        parsed(SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "sequence"));
    Faults faults = new Faults("journal");
    Optional<Amplifier> amplifier = BenchFiles.AMPLIFIER.embedded(m.node("amplifier"), faults);
    Optional<Bench> bench = BenchFiles.BENCH.embedded(m.node("bench"), faults);
    if (!faults.isEmpty()) {
      throw new UnreadableFact(faults.list().get(0).sentence());
    }
    OptionalLong seed =
        m.optional("practiceSeed").isPresent()
            ? OptionalLong.of((long) m.number("practiceSeed"))
            : OptionalLong.empty();
    return new Fact.Opened(
        m.text("walk"),
        m.text("version"),
        sequence,
        text,
        amplifier.orElseThrow(),
        bench.orElseThrow(),
        seed);
  }

  private static Fact entered(Members m) {
    return new Fact.Entered(
        m.text("step"),
        m.reading("reading"),
        m.text("text"),
        m.number("value"),
        m.number("resolution"),
        doubts(m),
        m.number("warmSeconds"),
        m.optional("instrument").map(Members::of).map(FactReader::instrument));
  }

  private static Instrument instrument(Members m) {
    return new Instrument(
        m.text("meter"),
        m.text("identity"),
        m.text("raw"),
        wallMillis(m.text("at")),
        (int) m.number("count"),
        m.number("scatter"));
  }

  private static List<Doubt> doubts(Members m) {
    return m.items("doubts").stream()
        .map(Members::of)
        .map(
            d ->
                new Doubt(
                    d.reading("reading"),
                    slip(d.text("slip")),
                    d.text("text"),
                    d.text("lookAt"),
                    d.optionalText("earlierStep")))
        .toList();
  }

  private static Forecast forecast(String step, Members m) {
    Map<ReadingId, Band> readings = new EnumMap<>(ReadingId.class);
    m.object("readings")
        .object()
        .members()
        .forEach((key, member) -> readings.put(Members.readingOf(key), band(member.value())));
    Members demand = m.object("demand");
    List<Caution> cautions =
        m.items("cautions").stream().map(Members::of).map(FactReader::caution).toList();
    return new Forecast(
        step,
        m.number("level"),
        readings,
        new Forecast.Demand(
            demand.optional("loadWatts").map(FactReader::band),
            demand.optional("totalWatts").map(FactReader::band),
            demand.optional("heatWatts").map(FactReader::band),
            demand.optional("leadVolts").map(FactReader::band)),
        cautions,
        verdict(m.text("verdict")),
        m.text("basis"));
  }

  private static Caution caution(Members m) {
    return new Caution(
        m.text("code"),
        verdict(m.text("gravity")),
        m.text("text"),
        m.optionalNumber("severity").orElse(Double.POSITIVE_INFINITY));
  }

  private static Band band(Node node) {
    if (node instanceof Node.Arr list && list.items().size() == 3) {
      List<Node> ends = list.items();
      return new Band(
          Members.number(ends.get(0), "low"),
          Members.number(ends.get(1), "middle"),
          Members.number(ends.get(2), "high"));
    }
    throw new UnreadableFact("a band must be a list of three numbers");
  }

  private static List<String> texts(List<Node> items) {
    List<String> texts = new ArrayList<>();
    for (Node item : items) {
      if (!(item instanceof Node.Str text)) {
        throw new UnreadableFact("a list of texts is expected");
      }
      texts.add(text.text());
    }
    return texts;
  }

  private static Verdict verdict(String word) {
    return known(Arrays.stream(Verdict.values()).filter(v -> v.word().equals(word)), word);
  }

  private static Slip slip(String code) {
    return known(Arrays.stream(Slip.values()).filter(s -> s.code().equals(code)), code);
  }

  private static Criterion criterion(String word) {
    return known(Criterion.ofWord(word).stream(), word);
  }

  private static <T> T known(Stream<T> found, String word) {
    return found
        .findFirst()
        .orElseThrow(
            () -> new UnreadableFact("«" + word + "» is a word this version does not know"));
  }
}
