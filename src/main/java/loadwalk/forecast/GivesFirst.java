package loadwalk.forecast;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Figures;
import loadwalk.bench.ReadingId;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.text.Sentence;

/**
 * What gives first at a step, how near the step comes to it, and the readings at which to stop: the
 * opening line of a brief.
 *
 * @param code the code of the caution that it would become
 * @param part what bears it, with its verb: "the bench fuse carries"
 * @param reading what it is a number of: supply amperes or output watts
 * @param asks what the step is likely to ask
 * @param bears what the part can be counted on for
 * @param stops the readings at which to stop, the first one being about this part
 */
public record GivesFirst(
    String code, String part, ReadingId reading, double asks, double bears, List<Stop> stops)
    implements Shaped<GivesFirst> {
  /** Checks that no field is null and copies the list. */
  public GivesFirst {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(reading, "reading");
    stops = List.copyOf(stops);
  }

  static final GivesFirst BLANK = new GivesFirst("", "", ReadingId.SUPPLY_AMPS, 0, 0, List.of());

  @Override
  public GivesFirst shape(Shape in) {
    return new GivesFirst(
        in.text("code", code),
        in.text("part", part),
        in.word("reading", reading, BenchFiles.READINGS),
        in.number("asks", asks),
        in.number("bears", bears),
        in.listOr("stops", stops, Stop.BLANK));
  }

  /**
   * A reading at which to stop.
   *
   * @param reading which reading
   * @param value from where on, in its unit
   */
  public record Stop(ReadingId reading, double value) implements Shaped<Stop> {
    private static final Stop BLANK = new Stop(ReadingId.SUPPLY_AMPS, 0);

    @Override
    public Stop shape(Shape in) {
      return new Stop(in.word("reading", reading, BenchFiles.READINGS), in.number("value", value));
    }

    private String text() {
      return with(value, reading);
    }

    private boolean isPassed(Map<ReadingId, Double> now) {
      return now.containsKey(reading) && !(now.get(reading) < value);
    }
  }

  /** Returns the line before the step starts. */
  public String line() {
    String likely = with(asks, reading);
    return stops.isEmpty()
        ? Sentence.of("{} of the {} that {}.", likely, with(bears, reading), part)
        : Sentence.of(
            "{} of the {} that {}; stop at {}.", likely, with(bears, reading), part, at());
  }

  /**
   * Returns the line while the step runs.
   *
   * @param now the newest reading of each kind, in its unit
   */
  public String line(Map<ReadingId, Double> now) {
    for (Stop stop : stops) {
      if (stop.isPassed(now)) {
        return Sentence.of(
            "STOP: {} read, stop at {}.", with(now.get(stop.reading()), stop.reading()), at());
      }
    }
    return now.containsKey(reading)
        ? new GivesFirst(code, part, reading, now.get(reading), bears, stops).line()
        : line();
  }

  /** Tells whether a reading has passed where to stop. */
  public boolean isPassed(Map<ReadingId, Double> now) {
    return stops.stream().anyMatch(stop -> stop.isPassed(now));
  }

  private String at() {
    List<String> all = stops.stream().map(Stop::text).toList();
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : Sentence.of("{} or {}", String.join(", ", all.subList(0, last)), all.get(last));
  }

  private static String with(double value, ReadingId reading) {
    return Sentence.of("{} {}", Figures.two(value), reading.unit().symbol());
  }
}
