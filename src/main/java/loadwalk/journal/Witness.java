package loadwalk.journal;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;

/**
 * What a small file beside a journal says about its end, so that records missing there are seen.
 *
 * <p>It is written after the record that it names was forced, so it never says more than the
 * journal holds; it may say less. The package page documents its form.
 *
 * @param standing whether there is one that can be read
 * @param first the sum of the journal's first record, which tells journals of one name apart
 * @param last the sum of the last record that counts
 * @param seq the number of that record
 */
public record Witness(Standing standing, String first, String last, long seq) {
  /** There is none. */
  public static final Witness NONE = new Witness(Standing.NONE, "", "", 0);

  /** There is one, and it cannot be read. */
  public static final Witness SPOILED = new Witness(Standing.SPOILED, "", "", 0);

  /** The most bytes that are worth reading. */
  public static final int BYTES_MAX = 256;

  private static final Pattern FORM =
      Pattern.compile(
          "(\\{\"first\":\"([0-9a-f]{8})\",\"last\":\"([0-9a-f]{8})\",\"seq\":\"([0-9]{15})\")"
              + ",\"crc\":\"([0-9a-f]{8})\"}\n");

  /** Whether there is a witness. */
  public enum Standing {
    NONE,
    SPOILED,
    THERE
  }

  /** What a witness says of the records that were found. */
  enum Claim {
    /** Nothing against them. */
    NOTHING,
    /** There were more. */
    MORE,
    /** One was another. */
    OTHERS
  }

  /** Returns the witness that records were kept, and none behind them; there must be one. */
  public static Witness of(List<JournalRecord> kept) {
    JournalRecord end = kept.get(kept.size() - 1);
    return of(kept.get(0).sum(), end.sum(), end.seq());
  }

  /** Returns the witness that a record was kept. */
  static Witness of(String first, String last, long seq) {
    return new Witness(Standing.THERE, first, last, seq);
  }

  /**
   * Reads a witness. An empty file, or one of zeros, is none: it was made and never written, as a
   * power cut can leave it.
   */
  public static Witness read(byte[] bytes) {
    boolean blank = true;
    for (byte each : bytes) {
      blank &= each == 0;
    }
    if (blank) {
      return NONE;
    }
    Matcher form = FORM.matcher(new String(bytes, UTF_8));
    return form.matches() && sum(form.group(1)).equals(form.group(5))
        ? of(form.group(2), form.group(3), Long.parseLong(form.group(4)))
        : SPOILED;
  }

  /** Returns it as the bytes of its file, which are always as many. */
  byte[] bytes() {
    String said =
        String.format(
            Locale.ROOT, "{\"first\":\"%s\",\"last\":\"%s\",\"seq\":\"%015d\"", first, last, seq);
    return (said + ",\"crc\":\"" + sum(said) + "\"}\n").getBytes(US_ASCII);
  }

  private static String sum(String said) {
    CRC32C crc = new CRC32C();
    crc.update(said.getBytes(US_ASCII));
    return new String(Framing.hex(crc), US_ASCII);
  }

  /** Returns what it says of the records found; nothing if it is of another journal. */
  Claim claim(List<JournalRecord> found) {
    if (standing != Standing.THERE) {
      return Claim.NOTHING;
    }
    if (found.isEmpty()) {
      return Claim.MORE;
    }
    if (!first.equals(found.get(0).sum())) {
      return Claim.NOTHING;
    }
    if (seq > found.size()) {
      return Claim.MORE;
    }
    return last.equals(found.get((int) seq - 1).sum()) ? Claim.NOTHING : Claim.OTHERS;
  }

  /** Tells whether it names the last of the records found, so that none is missing behind it. */
  boolean isOfTheEnd(List<JournalRecord> found) {
    return standing == Standing.THERE
        && seq == found.size()
        && first.equals(found.get(0).sum())
        && last.equals(found.get(found.size() - 1).sum());
  }
}
