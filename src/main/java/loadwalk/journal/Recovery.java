package loadwalk.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.journal.Facts.After;
import loadwalk.journal.Facts.Head;
import loadwalk.journal.Facts.Next;
import loadwalk.journal.Facts.Start;
import loadwalk.journal.Recovered.Damaged;
import loadwalk.journal.Recovered.Damaged.Kind;
import loadwalk.journal.Recovered.Refused;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Whole;
import loadwalk.text.Sentence;

/**
 * Reads the bytes of a journal and decides what can be used.
 *
 * <p>The sound records are those from the start that can be read, pass their checksum and are
 * numbered 1, 2, 3, …. The outcome comes from this table, in which exactly one row matches; {@code
 * any} matches every value.
 *
 * <pre>
 * row            head       comes next   from there on     file begins  outcome
 *                                                          like a
 * NEWER          newer      any          any               any          Refused, newer
 * ALIEN          alien      any          any               any          Refused
 * WHOLE          ours/none  end          any               any          Whole
 * TORN           ours       spoiled      nothing           any          TornTail
 * TORN_AT_BIRTH  none       spoiled      nothing           journal      TornTail, no records
 * STRANGE        none       spoiled      nothing/spoiled   other        Refused
 * RUIN           ours       spoiled      spoiled           any          Damaged, ruin
 * RUIN_AT_BIRTH  none       spoiled      spoiled           journal      Damaged, ruin
 * HOLE           ours/none  spoiled      records           any          Damaged, hole
 * REPEATED       ours/none  repeated     any               any          Damaged, repeated
 * REORDERED      ours/none  ahead        the one due       any          Damaged, reordered
 * GAP            ours/none  ahead        not the one due   any          Damaged, gap
 * </pre>
 *
 * <p>Only one record is written at a time, so an interrupted write can spoil the last line and
 * nothing else. Any other fault is damage, and a damaged journal is never continued.
 */
public final class Recovery {
  private Recovery() {}

  /** Reads a journal; every sequence of bytes has an outcome. */
  public static Recovered read(byte[] bytes) {
    Reading reading = Reading.of(bytes);
    return switch (Row.of(reading.facts(bytes))) {
      case WHOLE -> new Whole(reading.sound, reading.soundBytes);
      case TORN, TORN_AT_BIRTH ->
          new TornTail(reading.sound, reading.soundBytes, bytes.length, torn(reading, bytes));
      case NEWER -> new Refused(true, newer(reading));
      case ALIEN, STRANGE -> new Refused(false, "This file is not a Loadwalk journal.");
      case RUIN, RUIN_AT_BIRTH ->
          reading.damaged(
              Kind.RUIN, "The journal is damaged: it cannot be read to the end.", bytes);
      case HOLE ->
          reading.damaged(Kind.HOLE, "The journal is damaged: some lines cannot be read.", bytes);
      case REPEATED ->
          reading.damaged(Kind.REPEATED, "The journal is damaged: it holds a record twice.", bytes);
      case REORDERED ->
          reading.damaged(
              Kind.REORDERED, "The journal is damaged: its records are out of order.", bytes);
      case GAP -> reading.damaged(Kind.GAP, "The journal is damaged: it lacks a record.", bytes);
    };
  }

  private static String newer(Reading reading) {
    return Sentence.of(
        "A newer Loadwalk wrote this journal, in format {}. This one reads up to {}.",
        Body.format(reading.sound.get(0).body()),
        Body.FORMAT);
  }

  private static String torn(Reading reading, byte[] bytes) {
    long length = bytes.length - reading.soundBytes;
    boolean ended = bytes[bytes.length - 1] == Framing.LINE_FEED;
    return Sentence.of(
        ended
            ? "The last line of the journal does not check; the disk or an interrupted write"
                + " spoiled it. {} bytes after record {}, from byte {}, are not used."
            : "The last line of the journal was cut off. {} bytes after record {}, from byte {},"
                + " are not used.",
        length,
        reading.sound.size(),
        reading.soundBytes);
  }

  /** The findings of one pass over the lines. */
  private static final class Reading {
    final List<JournalRecord> sound = new ArrayList<>();
    final List<JournalRecord> beyond = new ArrayList<>();
    int soundBytes;
    private Next next = Next.END;
    private boolean more;

    static Reading of(byte[] bytes) {
      Reading reading = new Reading();
      int from = 0;
      while (from < bytes.length) {
        int end = from;
        while (end < bytes.length && bytes[end] != Framing.LINE_FEED) {
          end++;
        }
        boolean ended = end < bytes.length;
        Optional<JournalRecord> record =
            ended ? Framing.read(Arrays.copyOfRange(bytes, from, end)) : Optional.empty();
        from = ended ? end + 1 : end;
        reading.take(record, from);
      }
      return reading;
    }

    private void take(Optional<JournalRecord> record, int end) {
      if (next != Next.END) {
        more = true;
        record.ifPresent(beyond::add);
      } else if (record.isEmpty()) {
        next = Next.SPOILED;
      } else if (record.get().seq() == due()) {
        sound.add(record.get());
        soundBytes = end;
      } else {
        next = record.get().seq() < due() ? Next.REPEATED : Next.AHEAD;
        beyond.add(record.get());
      }
    }

    private long due() {
      return sound.size() + 1L;
    }

    Facts facts(byte[] bytes) {
      Head head = sound.isEmpty() ? Head.NONE : Body.head(sound.get(0).body());
      boolean like = Framing.beginsLikeAJournal(bytes);
      return new Facts(head, next, after(), like ? Start.JOURNAL : Start.OTHER);
    }

    private After after() {
      if (beyond.stream().anyMatch(record -> record.seq() == due())) {
        return After.THE_ONE_DUE;
      }
      if (!beyond.isEmpty()) {
        return After.RECORDS;
      }
      return more ? After.SPOILED : After.NOTHING;
    }

    Damaged damaged(Kind kind, String what, byte[] bytes) {
      String why =
          Sentence.of(
              "{} Its {} records before byte {} are good; {} after it check but are not used.",
              what,
              sound.size(),
              soundBytes,
              beyond.size());
      return new Damaged(sound, soundBytes, bytes.length, beyond, kind, why);
    }
  }
}
