package loadwalk.report.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.journal.ByteSum;
import loadwalk.journal.Soundness;
import loadwalk.result.Criterion;
import loadwalk.result.RatingComparison;

/**
 * Keeps the ledger entries of journals by the sum of their bytes, so that a ledger of many walks
 * need not fold them all again.
 *
 * <p>It can be deleted at any time. An entry is taken only for a journal whose bytes, all read
 * again, have the sum that the entry was made from. Each line of the file carries a sum of itself
 * and of what made it: the program, the operator's own tables and the folder that the index lies
 * in. A line that does not check, for whatever reason, counts as not there.
 *
 * @param kept the entries by the sum of their journal
 */
public record LedgerIndex(Map<String, Kept> kept) {
  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER).build();
  private static final byte LINE_FEED = '\n';
  private static final byte SPACE = ' ';

  /**
   * An entry with what tells copies of one walk.
   *
   * @param opening the sum of the record that opens the walk
   * @param end the sum of what is told of the journal's end, by which it was judged
   * @param entry the entry
   */
  public record Kept(String opening, String end, LedgerEntry entry) {}

  /** Copies the map, keeping its order. */
  public LedgerIndex {
    kept = Collections.unmodifiableMap(new LinkedHashMap<>(kept));
  }

  /** Returns an empty index. */
  static LedgerIndex empty() {
    return new LedgerIndex(Map.of());
  }

  /** Returns what is kept of a journal with this sum, of whose end as much was told. */
  public Optional<Kept> of(String sum, String end) {
    return Optional.ofNullable(kept.get(sum)).filter(k -> k.end().equals(end));
  }

  /**
   * Returns the index as the bytes of its file.
   *
   * @param maker names all that makes an entry of the bytes of a journal
   */
  public byte[] bytes(String maker) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (Map.Entry<String, Kept> e : kept.entrySet()) {
      byte[] line = line(e.getKey(), e.getValue());
      bytes.writeBytes(sum(maker, line));
      bytes.write(SPACE);
      bytes.writeBytes(line);
      bytes.write(LINE_FEED);
    }
    return bytes.toByteArray();
  }

  /** Reads an index from bytes, as far as its lines check. */
  public static LedgerIndex read(byte[] bytes, String maker) {
    Map<String, Kept> kept = new LinkedHashMap<>();
    int from = 0;
    for (int at = 0; at < bytes.length; at++) {
      if (bytes[at] == LINE_FEED) {
        take(Arrays.copyOfRange(bytes, from, at), maker, kept);
        from = at + 1;
      }
    }
    return new LedgerIndex(kept);
  }

  private static void take(byte[] whole, String maker, Map<String, Kept> kept) {
    int space = 0;
    while (space < whole.length && whole[space] != SPACE) {
      space++;
    }
    byte[] line = Arrays.copyOfRange(whole, Math.min(space + 1, whole.length), whole.length);
    if (!Arrays.equals(Arrays.copyOf(whole, space), sum(maker, line))) {
      return;
    }
    try (JsonParser in = JSON.createParser(line)) {
      new Reading(in).into(kept);
    } catch (IOException | IllegalArgumentException unknown) {
      // It checks, and yet is none of ours: its journal is folded again.
      return;
    }
  }

  private static byte[] sum(String maker, byte[] line) {
    return ByteSum.of(maker.getBytes(UTF_8), line).getBytes(UTF_8);
  }

  private static byte[] line(String journal, Kept kept) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = JSON.createGenerator(bytes)) {
      out.writeStartArray();
      out.writeString(journal);
      out.writeString(kept.opening());
      out.writeString(kept.end());
      write(out, kept.entry());
      out.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(JsonGenerator out, LedgerEntry e) throws IOException {
    out.writeString(e.walk());
    out.writeString(e.amplifier());
    out.writeBoolean(e.practice());
    out.writeBoolean(e.finished());
    out.writeNumber(e.openDoubts());
    out.writeNumber(e.wallMillis());
    write(out, e.done());
    optional(out, e.fuseAmps());
    out.writeNumber(e.regulated().map(r -> r ? 1 : 0).orElse(-1));
    out.writeNumber(e.soundness().standing().ordinal());
    out.writeString(e.soundness().told());
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

  private static void write(JsonGenerator out, LedgerEntry.Done done) throws IOException {
    out.writeString(done.sequence());
    out.writeString(done.contentHash());
    out.writeNumber(done.toneHertz());
    out.writeNumber(done.limitThdPercent());
    out.writeNumber(done.supplyVolts());
  }

  private static void optional(JsonGenerator out, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      out.writeNumber(value.getAsDouble());
    } else {
      out.writeNull();
    }
  }

  /** One pass over a line. */
  private static final class Reading {
    private final JsonParser in;

    Reading(JsonParser in) {
      this.in = in;
    }

    void into(Map<String, Kept> kept) throws IOException {
      need(JsonToken.START_ARRAY, in.nextToken());
      String journal = text();
      kept.put(journal, new Kept(text(), text(), entry()));
    }

    private LedgerEntry entry() throws IOException {
      String walk = text();
      String amplifier = text();
      boolean practice = in.nextToken() == JsonToken.VALUE_TRUE;
      boolean finished = in.nextToken() == JsonToken.VALUE_TRUE;
      int doubts = (int) number();
      long wall = (long) number();
      LedgerEntry.Done done = new LedgerEntry.Done(text(), text(), number(), number(), number());
      OptionalDouble fuse = optional();
      int regulated = (int) number();
      Soundness soundness = new Soundness(one(Soundness.Standing.values(), number()), text());
      List<LedgerEntry.Load> loads = new ArrayList<>();
      while (in.nextToken() == JsonToken.START_ARRAY) {
        loads.add(load());
      }
      need(JsonToken.END_ARRAY, in.currentToken());
      Optional<Boolean> rails = regulated < 0 ? Optional.empty() : Optional.of(regulated == 1);
      return new LedgerEntry(
          walk, amplifier, practice, finished, doubts, wall, done, fuse, rails, loads, soundness);
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
