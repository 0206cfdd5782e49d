package loadwalk.report.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.result.Criterion;
import loadwalk.result.RatingComparison;

/**
 * Keeps the ledger entries of unchanged walks, so that a ledger of many walks need not fold them
 * all again.
 *
 * <p>It can be deleted at any time. An entry is valid only while its journal has the same size and
 * time of change. A damaged index, or one in another format, counts as empty.
 *
 * @param kept the entries by the name of their journal
 */
public record LedgerIndex(Map<String, Kept> kept) {
  private static final String FORMAT = "loadwalk-ledger-index/2";
  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER).build();

  /**
   * An entry, with the size and time that show whether it is still valid.
   *
   * @param bytes the size of the journal
   * @param changedMillis when the journal was last written, ms since 1970
   * @param entry the entry
   */
  public record Kept(long bytes, long changedMillis, LedgerEntry entry) {}

  /** Copies the map, keeping its order. */
  public LedgerIndex {
    kept = Collections.unmodifiableMap(new LinkedHashMap<>(kept));
  }

  /** Returns an empty index. */
  static LedgerIndex empty() {
    return new LedgerIndex(Map.of());
  }

  /** Returns the entry of a journal, if the journal has not changed since. */
  Optional<LedgerEntry> entry(String journal, long bytes, long changedMillis) {
    return Optional.ofNullable(kept.get(journal))
        .filter(k -> k.bytes() == bytes && k.changedMillis() == changedMillis)
        .map(Kept::entry);
  }

  /** Returns the index as the bytes of its file. */
  public byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = JSON.createGenerator(bytes)) {
      out.writeStartArray();
      out.writeString(FORMAT);
      Map<LedgerEntry.Done, Integer> ways = new LinkedHashMap<>();
      kept.values().forEach(k -> ways.putIfAbsent(k.entry().done(), ways.size()));
      writeWays(out, ways.keySet());
      for (Map.Entry<String, Kept> e : kept.entrySet()) {
        out.writeStartArray();
        out.writeString(e.getKey());
        out.writeNumber(e.getValue().bytes());
        out.writeNumber(e.getValue().changedMillis());
        write(out, e.getValue().entry(), ways);
        out.writeEndArray();
      }
      out.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return bytes.toByteArray();
  }

  /** Reads an index from bytes; returns an empty one if they cannot be read. */
  public static LedgerIndex read(byte[] bytes) {
    try (JsonParser in = JSON.createParser(bytes)) {
      return new Reading(in).index();
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException damaged) {
      return empty();
    }
  }

  private static void writeWays(JsonGenerator out, Set<LedgerEntry.Done> ways) throws IOException {
    out.writeStartArray();
    for (LedgerEntry.Done done : ways) {
      out.writeString(done.sequence());
      out.writeString(done.contentHash());
      out.writeNumber(done.toneHertz());
      out.writeNumber(done.limitThdPercent());
      out.writeNumber(done.supplyVolts());
    }
    out.writeEndArray();
  }

  private static void write(JsonGenerator out, LedgerEntry e, Map<LedgerEntry.Done, Integer> ways)
      throws IOException {
    out.writeString(e.walk());
    out.writeString(e.amplifier());
    out.writeBoolean(e.practice());
    out.writeBoolean(e.finished());
    out.writeNumber(e.openDoubts());
    out.writeNumber(e.wallMillis());
    out.writeNumber(ways.get(e.done()));
    optional(out, e.fuseAmps());
    out.writeNumber(e.regulated().map(r -> r ? 1 : 0).orElse(-1));
    for (LedgerEntry.Load l : e.loads()) {
      out.writeStartArray();
      out.writeNumber(l.mode().ordinal());
      out.writeNumber(l.ohms());
      out.writeNumber(l.criterion().ordinal());
      out.writeNumber(l.watts());
      out.writeNumber(l.wattsU());
      out.writeNumber(l.totalWatts());
      out.writeNumber(l.totalU());
      optional(out, l.ratio());
      out.writeNumber(l.verdict().map(Enum::ordinal).orElse(-1));
      optional(out, l.efficiency());
      optional(out, l.efficiencyU());
      optional(out, l.supplyVolts());
      out.writeEndArray();
    }
  }

  private static void optional(JsonGenerator out, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      out.writeNumber(value.getAsDouble());
    } else {
      out.writeNull();
    }
  }

  /** One pass over the file. */
  private static final class Reading {
    private final JsonParser in;
    private final List<LedgerEntry.Done> ways = new ArrayList<>();

    Reading(JsonParser in) {
      this.in = in;
    }

    LedgerIndex index() throws IOException {
      need(JsonToken.START_ARRAY, in.nextToken());
      if (!FORMAT.equals(in.nextTextValue())) {
        return empty();
      }
      ways();
      Map<String, Kept> kept = new LinkedHashMap<>();
      while (in.nextToken() == JsonToken.START_ARRAY) {
        String name = text();
        long bytes = (long) number();
        long changed = (long) number();
        kept.put(name, new Kept(bytes, changed, entry()));
      }
      need(JsonToken.END_ARRAY, in.currentToken());
      return new LedgerIndex(kept);
    }

    private void ways() throws IOException {
      need(JsonToken.START_ARRAY, in.nextToken());
      while (in.nextToken() == JsonToken.VALUE_STRING) {
        String sequence = in.getText();
        ways.add(new LedgerEntry.Done(sequence, text(), number(), number(), number()));
      }
      need(JsonToken.END_ARRAY, in.currentToken());
    }

    private LedgerEntry entry() throws IOException {
      String walk = text();
      String amplifier = text();
      boolean practice = in.nextToken() == JsonToken.VALUE_TRUE;
      boolean finished = in.nextToken() == JsonToken.VALUE_TRUE;
      int doubts = (int) number();
      long wall = (long) number();
      LedgerEntry.Done done = ways.get((int) number());
      OptionalDouble fuse = optional();
      int regulated = (int) number();
      List<LedgerEntry.Load> loads = new ArrayList<>();
      while (in.nextToken() == JsonToken.START_ARRAY) {
        loads.add(load());
      }
      need(JsonToken.END_ARRAY, in.currentToken());
      Optional<Boolean> rails = regulated < 0 ? Optional.empty() : Optional.of(regulated == 1);
      return new LedgerEntry(
          walk, amplifier, practice, finished, doubts, wall, done, fuse, rails, loads);
    }

    private LedgerEntry.Load load() throws IOException {
      LedgerEntry.Load load =
          new LedgerEntry.Load(
              one(Mode.values(), number()),
              number(),
              one(Criterion.values(), number()),
              number(),
              number(),
              number(),
              number(),
              optional(),
              verdict(number()),
              optional(),
              optional(),
              optional());
      need(JsonToken.END_ARRAY, in.nextToken());
      return load;
    }

    private static Optional<RatingComparison.Verdict> verdict(double ordinal) {
      return ordinal < 0
          ? Optional.empty()
          : Optional.of(one(RatingComparison.Verdict.values(), ordinal));
    }

    private static <T> T one(T[] values, double ordinal) {
      int at = (int) ordinal;
      if (at < 0 || at >= values.length) {
        throw new IllegalArgumentException("no such word");
      }
      return values[at];
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
}
