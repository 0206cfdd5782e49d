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
import loadwalk.journal.Recovered.Ending;
import loadwalk.journal.Recovered.Refused;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Whole;
import loadwalk.journal.Recovered.WindowsLines;
import loadwalk.journal.Recovered.Writable;
import loadwalk.text.Sentence;

/**
 * Reads the bytes of a journal and decides what can be used.
 *
 * <p>The sound records are those from the start that can be read, pass their checksum, are numbered
 * 1, 2, 3, … and, from format 2 on, name the sum of the one before. The outcome comes from this
 * table, in which exactly one row matches; {@code any} matches every value.
 *
 * <pre>
 * row            head       comes next   from there on     file begins  witness  outcome
 *                                                          like a       says
 * NEWER          newer      any          any               any          any      Refused, newer
 * ALIEN          alien      any          any               any          any      Refused
 * WHOLE          ours/none  end          any               any          nothing  Whole
 * MISSING        ours/none  end          any               any          more     Damaged, missing
 * TORN           ours/none  torn         any               any          nothing  TornTail
 * LOST           ours/none  torn         any               any          more     Damaged, lost
 * EXCHANGED      ours/none  end/torn     any               any          others   Damaged, exchanged
 * STRANGE        none       spoiled      nothing/spoiled   other        any      Refused
 * RUIN           ours       spoiled      nothing/spoiled   any          any      Damaged, ruin
 * RUIN_AT_BIRTH  none       spoiled      nothing/spoiled   journal      any      Damaged, ruin
 * HOLE           ours/none  spoiled      records           any          any      Damaged, hole
 * FOREIGN        ours/none  foreign      any               any          any      Damaged, foreign
 * REPEATED       ours/none  repeated     any               any          any      Damaged, repeated
 * REORDERED      ours/none  ahead        the one due       any          any      Damaged, reordered
 * GAP            ours/none  ahead        not the one due   any          any      Damaged, gap
 * </pre>
 *
 * <p>Only one record is written at a time, so an interrupted write can leave the beginning of the
 * next line and nothing else ({@link Tail}). Any other fault is damage, and a damaged journal is
 * never continued.
 */
public final class Recovery {
  private Recovery() {}

  /** Reads a journal of which no witness is known; every sequence of bytes has an outcome. */
  public static Recovered read(byte[] bytes) {
    return read(bytes, Witness.NONE);
  }

  /** Reads a journal; every sequence of bytes has an outcome. */
  public static Recovered read(byte[] bytes, Witness witness) {
    Optional<byte[]> usual = WindowsEnds.made(bytes);
    Optional<Writable> read = usual.flatMap(u -> asItStands(u, witness).writable());
    return read.isPresent()
        ? new WindowsLines(
            read.get(),
            "The lines of the journal end as Windows writes them: a program that copied it changed"
                + " them. It is read as it was and not written on.")
        : asItStands(bytes, witness);
  }

  private static Recovered asItStands(byte[] bytes, Witness witness) {
    Reading reading = Reading.of(bytes);
    Ending ending = ending(reading, witness);
    return switch (Row.of(reading.facts(bytes, witness))) {
      case WHOLE -> new Whole(reading.sound, reading.soundBytes, ending);
      case TORN ->
          new TornTail(
              reading.sound, reading.soundBytes, bytes.length, ending, torn(reading, bytes));
      case NEWER -> new Refused(true, newer(reading));
      case ALIEN, STRANGE -> new Refused(false, "This file is not a Loadwalk journal.");
      case MISSING -> reading.damaged(Kind.MISSING, missing(reading, witness), bytes);
      case LOST -> reading.damaged(Kind.LOST, lost(reading, witness), bytes);
      case EXCHANGED ->
          reading.damaged(
              Kind.EXCHANGED,
              Sentence.of(
                  "The journal is damaged: its record {} is not the one that was kept.",
                  witness.seq()),
              bytes);
      case RUIN, RUIN_AT_BIRTH -> reading.damaged(Kind.RUIN, ruined(reading, witness), bytes);
      case HOLE ->
          reading.damaged(Kind.HOLE, "The journal is damaged: some lines cannot be read.", bytes);
      case FOREIGN ->
          reading.damaged(
              Kind.FOREIGN,
              "The journal is damaged: a record does not follow the one before it.",
              bytes);
      case REPEATED ->
          reading.damaged(Kind.REPEATED, "The journal is damaged: it holds a record twice.", bytes);
      case REORDERED ->
          reading.damaged(
              Kind.REORDERED, "The journal is damaged: its records are out of order.", bytes);
      case GAP -> reading.damaged(Kind.GAP, "The journal is damaged: it lacks a record.", bytes);
    };
  }

  private static Ending ending(Reading reading, Witness witness) {
    return switch (witness.standing()) {
      case SPOILED -> Ending.WITNESS_SPOILED;
      case NONE -> Ending.UNKNOWN;
      case THERE -> witness.isOfTheEnd(reading.sound) ? Ending.KNOWN : Ending.UNKNOWN;
    };
  }

  private static String missing(Reading reading, Witness witness) {
    return Sentence.plural(
        witness.seq() - reading.sound.size(),
        "The journal is damaged: 1 record is missing at its end.",
        "The journal is damaged: {} records are missing at its end.");
  }

  private static String ruined(Reading reading, Witness witness) {
    return witness.claim(reading.sound) == Witness.Claim.MORE
        ? lost(reading, witness)
        : "The journal is damaged: it cannot be read to the end.";
  }

  private static String lost(Reading reading, Witness witness) {
    return Sentence.plural(
        witness.seq() - reading.sound.size(),
        "The journal is damaged: 1 record at its end cannot be read.",
        "The journal is damaged: {} records at its end cannot be read.");
  }

  private static String newer(Reading reading) {
    return Sentence.of(
        "A newer Loadwalk wrote this journal, in format {}. This one reads up to {}.",
        Body.format(reading.sound.get(0).body()),
        Body.FORMAT);
  }

  private static String torn(Reading reading, byte[] bytes) {
    long length = bytes.length - reading.soundBytes;
    return Sentence.of(
        "The last line of the journal was cut off. {} bytes after record {}, from byte {}, are not"
            + " used.",
        length,
        reading.sound.size(),
        reading.soundBytes);
  }

  /** The findings of one pass over the lines. */
  private static final class Reading {
    final List<JournalRecord> sound = new ArrayList<>();
    final List<JournalRecord> beyond = new ArrayList<>();
    int soundBytes;
    private int longest;
    private boolean chained;
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
        takeDue(record.get(), end);
      } else {
        next = record.get().seq() < due() ? Next.REPEATED : Next.AHEAD;
        beyond.add(record.get());
      }
    }

    private void takeDue(JournalRecord record, int end) {
      if (record.after().equals(after())) {
        chained = sound.isEmpty() ? Body.isChained(record.body()) : chained;
        sound.add(record);
        longest = Math.max(longest, end - soundBytes);
        soundBytes = end;
      } else {
        next = Next.FOREIGN;
        beyond.add(record);
      }
    }

    private long due() {
      return sound.size() + 1L;
    }

    /** Returns the sum that the record due names; empty if it names none. */
    private String after() {
      return chained ? sound.get(sound.size() - 1).sum() : "";
    }

    private boolean isTorn(byte[] bytes) {
      return next == Next.SPOILED
          && !more
          && new Tail(
                  Arrays.copyOfRange(bytes, soundBytes, bytes.length),
                  Framing.beginning(due(), after()))
              .isTorn(longest);
    }

    Facts facts(byte[] bytes, Witness witness) {
      Head head = sound.isEmpty() ? Head.NONE : Body.head(sound.get(0).body());
      boolean like = Framing.beginsLikeAJournal(bytes);
      return new Facts(
          head,
          isTorn(bytes) ? Next.TORN : next,
          fromThereOn(),
          like ? Start.JOURNAL : Start.OTHER,
          witness.claim(sound));
    }

    private After fromThereOn() {
      if (beyond.stream().anyMatch(record -> record.seq() == due())) {
        return After.THE_ONE_DUE;
      }
      if (!beyond.isEmpty()) {
        return After.RECORDS;
      }
      return more ? After.SPOILED : After.NOTHING;
    }

    Damaged damaged(Kind kind, String what, byte[] bytes) {
      String good =
          Sentence.of("{} Its {} records before byte {} are good.", what, sound.size(), soundBytes);
      String why =
          beyond.isEmpty()
              ? good
              : Sentence.of("{} {} after it check but are not used.", good, beyond.size());
      return new Damaged(sound, soundBytes, bytes.length, beyond, kind, why);
    }
  }
}
