package loadwalk.walk.fact;

import java.util.List;
import java.util.OptionalLong;
import loadwalk.json.JsonOut;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import loadwalk.json.Shape;
import loadwalk.json.ShapeWriter;
import loadwalk.json.Shaped;

/**
 * Writes the facts of one moment as the body of one journal record, so that they are kept together
 * or not at all; reads them back.
 *
 * <p>A body is {@code
 * {"format"?,"at":"2026-01-31T09:30:00.123Z","records"?,"facts":[{"fact":…,…,"at"?}]}}; only the
 * first record of a walk carries the format. Where the walk is finished with a record, it says how
 * many records there are, so that a finished journal is known to be whole. A fact carries a time
 * only if it differs from the record's, since facts that waited for the disk are written together.
 */
public final class FactText {
  /** The format named by the first record of a walk. */
  public static final String FORMAT = "loadwalk-journal/2";

  private static final String COUNTING = "{\"format\":\"" + FORMAT + "\"";

  private FactText() {}

  /**
   * Returns the body of one record; a fact from another moment than the first carries its own time.
   */
  public static String body(List<Stamped> facts) {
    return body(facts, OptionalLong.empty());
  }

  /**
   * Returns the body of the record with a number, written after a state; where the walk is finished
   * with it, it says that there are as many records.
   */
  public static String body(WalkState before, List<Stamped> facts, long seq) {
    WalkState after = before;
    for (Stamped stamped : facts) {
      after = stamped.fact().applyTo(after, stamped.wallMillis());
    }
    return body(facts, after.isFinished() ? OptionalLong.of(seq) : OptionalLong.empty());
  }

  private static String body(List<Stamped> facts, OptionalLong records) {
    long at = facts.get(0).wallMillis();
    List<Line> lines = facts.stream().map(f -> new Line(f.fact(), f.wallMillis(), at)).toList();
    return JsonOut.line(out -> ShapeWriter.write(out, new Body(at, records, lines)));
  }

  /**
   * Tells whether the bodies of a journal say that they are all: the last counts them or, in a
   * journal from before records were counted, every step is over.
   *
   * @param finished whether every step of the walk read from them is over
   */
  public static boolean isClosed(List<String> bodies, boolean finished) {
    if (!finished) {
      return false;
    }
    OptionalLong records = shaped(bodies.get(bodies.size() - 1)).records;
    return records.isPresent()
        ? records.getAsLong() == bodies.size()
        : !bodies.get(0).startsWith(COUNTING);
  }

  /**
   * Returns the facts of one record.
   *
   * @throws UnreadableFact if the body contains something this version does not know
   */
  public static List<Stamped> read(String body) {
    return shaped(body).lines.stream()
        .map(line -> new Stamped(line.fact, line.wallMillis))
        .toList();
  }

  private static Body shaped(String body) {
    Read<Node> read = JsonText.strict("journal").read(body);
    Node tree = read.found().orElseThrow(() -> new UnreadableFact(read.faults().get(0).sentence()));
    try {
      return new Body(0, OptionalLong.empty(), List.of()).shape(JournalShape.of(tree));
    } catch (IllegalArgumentException refused) {
      throw new UnreadableFact(refused.getMessage());
    }
  }

  /**
   * Returns the walk recorded in the bodies of a journal.
   *
   * @throws UnreadableFact if a body contains something this version does not know, or the first
   *     fact does not open a walk
   */
  public static WalkState walk(List<String> bodies) {
    WalkState state = null;
    for (String body : bodies) {
      for (Stamped stamped : read(body)) {
        if (state == null && stamped.fact().opening().isEmpty()) {
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

  private record Body(long at, OptionalLong records, List<Line> lines) implements Shaped<Body> {
    @Override
    public Body shape(Shape in) {
      if (!lines.isEmpty() && lines.get(0).fact.opening().isPresent()) {
        in.text("format", FORMAT);
      }
      long moment = in.moment("at", at);
      OptionalLong all = in.whole("records", records, 1, Long.MAX_VALUE);
      return new Body(moment, all, in.list("facts", lines, new Line(null, moment, moment)));
    }
  }

  private record Line(Fact fact, long wallMillis, long bodyMillis) implements Shaped<Line> {
    @Override
    public Line shape(Shape in) {
      Fact itself = in.word("fact", fact, FactKinds.ALL).shape(in);
      boolean own = in.has("at", wallMillis != bodyMillis);
      return new Line(itself, own ? in.moment("at", wallMillis) : bodyMillis, bodyMillis);
    }
  }
}
