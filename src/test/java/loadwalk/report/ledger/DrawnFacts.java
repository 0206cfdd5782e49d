package loadwalk.report.ledger;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.report.ledger.DrawnWalk.Run;
import loadwalk.report.ledger.DrawnWalk.WarmUp;
import loadwalk.result.Criterion;
import loadwalk.sequence.SequenceReader;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;

/** Writes a drawn walk as the journal that the program would have kept of it. */
final class DrawnFacts {
  private static final long START = 1_773_480_600_000L;
  private static final double WARM_MINUTES = 15;

  private final DrawnWalk walk;
  private final List<Fact> facts = new ArrayList<>();

  private DrawnFacts(DrawnWalk walk) {
    this.walk = walk;
  }

  /** Returns the bodies of its records, one fact each. */
  static List<String> bodies(DrawnWalk walk) {
    DrawnFacts drawn = new DrawnFacts(walk);
    drawn.write();
    List<String> bodies = new ArrayList<>();
    for (Fact fact : drawn.facts) {
      bodies.add(FactText.body(List.of(new Stamped(fact, START + 1000L * bodies.size()))));
    }
    return bodies;
  }

  private void write() {
    String text = sequence();
    facts.add(
        new Fact.Opened(
            walk.name(),
            "1.0.0",
            SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "drawn")
                .found()
                .orElseThrow(),
            text,
            amplifier(),
            bench(),
            walk.practice() ? OptionalLong.of(7) : OptionalLong.empty()));
    warmUp();
    walk.runs().forEach(this::run);
  }

  private String sequence() {
    String steps =
        walk.runs().stream()
            .map(
                run ->
                    "{\"do\":\"measure\",\"mode\":\""
                        + (run.bridged() ? "bridged" : "stereo")
                        + "\",\"ohms\":"
                        + run.milliohms() / 1000.0
                        + "}")
            .collect(Collectors.joining(","));
    String warmUp =
        walk.warmUp() == WarmUp.NONE
            ? ""
            : "{\"do\":\"warm-up\",\"minutes\":15,\"powerFraction\":0.5,"
                + "\"steadyCelsiusPerMinute\":0.5},";
    return "{\"format\":\"loadwalk-sequence/1\",\"name\":\""
        + walk.name()
        + "\",\"title\":\"Drawn\",\"tone\":{\"hertz\":"
        + walk.tone() / 10.0
        + "},\"limit\":{\"thdPercent\":"
        + walk.limit() / 1000.0
        + "},\"supplyVolts\":"
        + walk.supply() / 1000.0
        + ",\"steps\":["
        + warmUp
        + steps
        + "]}";
  }

  private Amplifier amplifier() {
    return new Amplifier(
        "Verrin",
        walk.name(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        OptionalInt.of(2),
        walk.ratings().stream()
            .map(
                r ->
                    new Rating(
                        mode(r.bridged()),
                        r.milliohms() / 1000.0,
                        r.watts(),
                        thousandth(r.supply()),
                        thousandth(r.thd())))
            .toList(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        walk.fuseAmps().isPresent() ? List.of((double) walk.fuseAmps().getAsInt()) : List.of(),
        walk.regulated());
  }

  private Bench bench() {
    Bench bench = Bench.unknown();
    if (!walk.describedBench()) {
      return bench;
    }
    Optional<Meter.Band> wide = Optional.of(new Meter.Band(10, 20_000));
    List<Integer> stock =
        walk.stockMilliohms().isEmpty() ? List.of(4000, 2000) : walk.stockMilliohms();
    return new Bench(
        "Drawn bench",
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        stock.stream()
            .map(
                r ->
                    new LoadResistor(
                        r + " milliohm", r / 1000.0, 1, 500, 4, OptionalDouble.empty()))
            .toList(),
        List.of(
            new Meter("AC volts", ReadingId.OUTPUT_VOLTS, 0.3, 2, 0.001, wide),
            new Meter("DC volts", ReadingId.SUPPLY_VOLTS, 0.1, 2, 0.001, Optional.empty()),
            new Meter("DC clamp", ReadingId.SUPPLY_AMPS, 1, 2, 0.01, Optional.empty())),
        0.9);
  }

  private void warmUp() {
    if (walk.warmUp() == WarmUp.NONE) {
      return;
    }
    facts.add(new Fact.Begun("warm-up"));
    if (walk.warmUp() != WarmUp.WITHOUT_A_CLOCK) {
      facts.add(new Fact.Warmed("warm-up", 60));
      facts.add(new Fact.Warmed("warm-up", walk.warmUp() == WarmUp.DONE ? 60 * WARM_MINUTES : 120));
    }
    if (walk.warmUp() == WarmUp.CUT_SHORT) {
      facts.add(new Fact.EndedEarly("warm-up", "the shop closes"));
    }
    facts.add(new Fact.Done("warm-up"));
  }

  private void run(Run run) {
    if (run.cooledBefore()) {
      facts.add(new Fact.Cooled(run.id(), "It stood for an hour."));
    }
    facts.add(new Fact.Begun(run.id()));
    Map<ReadingId, OptionalDouble> read = new LinkedHashMap<>();
    read.put(ReadingId.LOAD_OHMS, thousandth(run.loadRead()));
    read.put(ReadingId.OUTPUT_VOLTS, OptionalDouble.of(run.volts() / 1000.0));
    read.put(ReadingId.OTHER_OUTPUT_VOLTS, thousandth(run.otherVolts()));
    read.put(ReadingId.THD_PERCENT, thousandth(run.thd()));
    read.put(
        ReadingId.FREQUENCY_HERTZ,
        run.tone().isPresent()
            ? OptionalDouble.of(run.tone().getAsInt() / 10.0)
            : OptionalDouble.empty());
    read.put(ReadingId.SUPPLY_VOLTS, thousandth(run.supply()));
    read.put(ReadingId.SUPPLY_AMPS, thousandth(run.milliamps()));
    read.forEach((id, value) -> value.ifPresent(v -> enter(run, id, v, run.stoodBy())));
    if (run.stoodBy()) {
      facts.add(new Fact.StoodBy(run.id(), ReadingId.OUTPUT_VOLTS, "read twice"));
    }
    if (run.inDoubt()) {
      ReadingId doubted = ReadingId.OUTPUT_VOLTS;
      facts.add(new Fact.Doubted(run.id(), doubted, List.of(doubt(doubted))));
    }
    run.said()
        .flatMap(Criterion::ofWord)
        .ifPresent(point -> facts.add(new Fact.CriterionSet(run.id(), point)));
    facts.add(new Fact.Done(run.id()));
  }

  private void enter(Run run, ReadingId id, double value, boolean stoodBy) {
    boolean doubted = stoodBy && id == ReadingId.OUTPUT_VOLTS;
    facts.add(
        new Fact.Entered(
            run.id(),
            id,
            String.valueOf(value),
            value,
            0.001,
            doubted ? List.of(doubt(id)) : List.of(),
            0,
            Optional.empty(),
            OptionalDouble.empty()));
  }

  private static Doubt doubt(ReadingId id) {
    return new Doubt(id, Slip.UNNAMED, "It is off.", "Look at the meter.");
  }

  private static Mode mode(boolean bridged) {
    return bridged ? Mode.BRIDGED : Mode.STEREO;
  }

  private static OptionalDouble thousandth(OptionalInt value) {
    return value.isPresent()
        ? OptionalDouble.of(value.getAsInt() / 1000.0)
        : OptionalDouble.empty();
  }
}
