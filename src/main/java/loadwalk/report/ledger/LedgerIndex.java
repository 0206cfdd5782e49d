package loadwalk.report.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import loadwalk.journal.ByteSum;

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
  /** Named in the sum of every line, so that a line of another shape counts as not there. */
  private static final byte[] FORMAT = "loadwalk-ledger-index/5".getBytes(UTF_8);

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
      byte[] line = IndexLine.bytes(e.getKey(), e.getValue());
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
    try {
      IndexLine.read(line, kept);
    } catch (IOException | IllegalArgumentException unknown) {
      // It checks, and yet is none of ours: its journal is folded again.
      return;
    }
  }

  private static byte[] sum(String maker, byte[] line) {
    return ByteSum.of(FORMAT, maker.getBytes(UTF_8), line).getBytes(UTF_8);
  }
}
