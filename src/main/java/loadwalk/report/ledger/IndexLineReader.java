package loadwalk.report.ledger;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.Outcome;
import loadwalk.bench.ThdKind;
import loadwalk.journal.Soundness;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.result.RatingComparison.Verdict;
import loadwalk.result.ReadBy;
import loadwalk.result.Repeatability;

/** One pass over a line of the index, field by field in the order of {@link IndexLine}. */
final class IndexLineReader {
  private final JsonParser in;

  IndexLineReader(JsonParser in) {
    this.in = in;
  }

  void into(Map<String, LedgerIndex.Kept> kept) throws IOException {
    need(JsonToken.START_ARRAY, in.nextToken());
    String journal = text();
    kept.put(journal, new LedgerIndex.Kept(text(), text(), entry()));
  }

  private LedgerEntry entry() throws IOException {
    String walk = text();
    String amplifier = text();
    boolean practice = flag();
    boolean finished = flag();
    int doubts = (int) number();
    long wall = (long) number();
    LedgerEntry.Done done = new LedgerEntry.Done(text(), text(), number(), number(), number());
    OptionalDouble fuse = optional();
    Optional<Boolean> rails = yesNo();
    Soundness soundness = new Soundness(one(Soundness.Standing.values(), number()), text());
    BenchRepeats repeats = new BenchRepeats(text(), pairs());
    List<LedgerEntry.Ended> ended = ended();
    List<Load> loads = new ArrayList<>();
    while (in.nextToken() == JsonToken.START_ARRAY) {
      loads.add(load());
      need(JsonToken.END_ARRAY, in.nextToken());
    }
    need(JsonToken.END_ARRAY, in.currentToken());
    return new LedgerEntry(
        walk, amplifier, practice, finished, doubts, wall, done, fuse, rails, loads, ended, repeats,
        soundness);
  }

  private List<Repeatability.Pair> pairs() throws IOException {
    List<Double> numbers = numbers();
    List<Repeatability.Pair> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < numbers.size(); i += 2) {
      pairs.add(new Repeatability.Pair(numbers.get(i), numbers.get(i + 1)));
    }
    return pairs;
  }

  private List<LedgerEntry.Ended> ended() throws IOException {
    List<Double> numbers = numbers();
    List<LedgerEntry.Ended> ended = new ArrayList<>();
    for (int i = 0; i + 2 < numbers.size(); i += 3) {
      ended.add(
          new LedgerEntry.Ended(
              one(Mode.values(), numbers.get(i)),
              numbers.get(i + 1),
              one(Outcome.values(), numbers.get(i + 2))));
    }
    return ended;
  }

  private Load load() throws IOException {
    return new Load(
        conditions(),
        number(),
        number(),
        numbers().stream().map(mark -> one(Mark.values(), mark)).toList(),
        channels(),
        watts(),
        optional(),
        word(Verdict.values()),
        optional(),
        optional());
  }

  private Conditions conditions() throws IOException {
    return new Conditions(
        one(Mode.values(), number()),
        number(),
        optional(),
        (int) number(),
        optional(),
        one(Criterion.values(), number()),
        flag(),
        optional(),
        optional(),
        around());
  }

  private Circumstances around() throws IOException {
    return new Circumstances(
        word(Criterion.values()),
        yesNo(),
        optional(),
        optional(),
        word(ThdKind.values()),
        optional(),
        word(ReadBy.values()),
        flag(),
        flag(),
        flag());
  }

  /** Reads four numbers a channel, the third of them perhaps none, to the end of the list. */
  private List<KeptWatts> channels() throws IOException {
    need(JsonToken.START_ARRAY, in.nextToken());
    List<KeptWatts> channels = new ArrayList<>();
    for (JsonToken token = in.nextToken(); token != JsonToken.END_ARRAY; token = in.nextToken()) {
      channels.add(new KeptWatts(due(token), number(), degrees(), number()));
    }
    return channels;
  }

  private KeptWatts watts() throws IOException {
    return new KeptWatts(number(), number(), degrees(), number());
  }

  private double degrees() throws IOException {
    return optional().orElse(Double.POSITIVE_INFINITY);
  }

  private List<Double> numbers() throws IOException {
    need(JsonToken.START_ARRAY, in.nextToken());
    List<Double> numbers = new ArrayList<>();
    for (JsonToken token = in.nextToken(); token != JsonToken.END_ARRAY; token = in.nextToken()) {
      numbers.add(due(token));
    }
    return numbers;
  }

  private static <T> T one(T[] values, double ordinal) {
    int at = (int) ordinal;
    if (at < 0 || at >= values.length) {
      throw new IllegalArgumentException("no such word");
    }
    return values[at];
  }

  private <T> Optional<T> word(T[] values) throws IOException {
    double ordinal = number();
    return ordinal == IndexLine.NONE ? Optional.empty() : Optional.of(one(values, ordinal));
  }

  private Optional<Boolean> yesNo() throws IOException {
    return word(new Boolean[] {false, true});
  }

  private boolean flag() throws IOException {
    JsonToken token = in.nextToken();
    if (token == null || !token.isBoolean()) {
      throw new IllegalArgumentException("true or false is due");
    }
    return token == JsonToken.VALUE_TRUE;
  }

  private String text() throws IOException {
    need(JsonToken.VALUE_STRING, in.nextToken());
    return in.getText();
  }

  private double number() throws IOException {
    return due(in.nextToken());
  }

  private double due(JsonToken token) throws IOException {
    if (token == null || !token.isNumeric()) {
      throw new IllegalArgumentException("a number is due");
    }
    return in.getDoubleValue();
  }

  private OptionalDouble optional() throws IOException {
    JsonToken token = in.nextToken();
    return token == JsonToken.VALUE_NULL ? OptionalDouble.empty() : OptionalDouble.of(due(token));
  }

  private static void need(JsonToken due, JsonToken found) {
    if (due != found) {
      throw new IllegalArgumentException(due + " is due");
    }
  }
}
