package loadwalk.journal;

import java.util.List;
import java.util.Optional;

/** The outcome of reading a journal. */
public sealed interface Recovered {
  /** Returns the sound records from the start, in order, numbered 1, 2, 3, …. */
  List<JournalRecord> records();

  /** Returns the length in bytes of the sound records; anything unusable starts there. */
  long soundBytes();

  /** Returns the message to the operator in whole sentences; empty if nothing is wrong. */
  Optional<String> told();

  /** Returns the bodies of the sound records, in order. */
  default List<String> bodies() {
    return records().stream().map(JournalRecord::body).toList();
  }

  /** Returns the journal, if it can be continued. */
  default Optional<Writable> writable() {
    return Optional.empty();
  }

  /** Tells whether every byte of it can be read. */
  default boolean isWhole() {
    return false;
  }

  /** Tells whether it has faults that an interrupted write cannot explain. */
  default boolean isDamaged() {
    return false;
  }

  /** Returns the torn tail, if the last line was cut off or spoiled. */
  default Optional<TornTail> torn() {
    return Optional.empty();
  }

  /** Returns why this version does not read it; empty if it does. */
  default Optional<String> refusal() {
    return Optional.empty();
  }

  /** Returns what is known of the end of the journal. */
  default Ending ending() {
    return Ending.UNKNOWN;
  }

  /** What is known of the end of a journal from the witness beside it. */
  enum Ending {
    /** The witness names the last record: none is missing behind it. */
    KNOWN,
    /** Nothing tells whether records are missing there. */
    UNKNOWN,
    /** There is a witness, and it cannot be read. */
    WITNESS_SPOILED
  }

  /** A journal that can be continued after everything after its sound records has been cut. */
  sealed interface Writable extends Recovered {
    @Override
    default Optional<Writable> writable() {
      return Optional.of(this);
    }
  }

  /**
   * A journal that can be read to the last byte; an empty file counts as whole.
   *
   * @param records its records
   * @param soundBytes its length
   * @param ending what is known of its end
   */
  record Whole(List<JournalRecord> records, long soundBytes, Ending ending) implements Writable {
    /** A journal of which no record was written yet. */
    public static final Whole EMPTY = new Whole(List.of(), 0, Ending.UNKNOWN);

    /** Copies the records. */
    public Whole {
      records = List.copyOf(records);
    }

    @Override
    public Optional<String> told() {
      return Optional.empty();
    }

    @Override
    public boolean isWhole() {
      return true;
    }
  }

  /**
   * A journal whose last line an interrupted write left in part; it is saved separately, then cut.
   *
   * @param records the records before it
   * @param soundBytes the byte at which the file is cut
   * @param endByte the length of the file
   * @param ending what is known of its end
   * @param why the reason, in one sentence
   */
  record TornTail(
      List<JournalRecord> records, long soundBytes, long endByte, Ending ending, String why)
      implements Writable {
    /** Copies the records. */
    public TornTail {
      records = List.copyOf(records);
    }

    @Override
    public Optional<String> told() {
      return Optional.of(why);
    }

    @Override
    public Optional<TornTail> torn() {
      return Optional.of(this);
    }
  }

  /**
   * A journal with nothing wrong but its line ends, which another program made those of Windows; it
   * is read, never written on.
   *
   * @param read the journal as it was before
   * @param why the reason, in one sentence
   */
  record WindowsLines(Writable read, String why) implements Recovered {
    @Override
    public List<JournalRecord> records() {
      return read.records();
    }

    @Override
    public long soundBytes() {
      return read.soundBytes();
    }

    @Override
    public Optional<String> told() {
      return Optional.of(why);
    }

    @Override
    public Optional<TornTail> torn() {
      return read.torn();
    }

    @Override
    public Ending ending() {
      return read.ending();
    }
  }

  /**
   * A journal in which more is wrong than an interrupted write can explain; it is read, never
   * written on.
   *
   * @param records the sound records before the damage
   * @param soundBytes the byte at which the damage starts
   * @param endByte the length of the file
   * @param beyond valid records after the damage; they are not part of the walk
   * @param kind what is wrong
   * @param why the reason, in one sentence with its place
   */
  record Damaged(
      List<JournalRecord> records,
      long soundBytes,
      long endByte,
      List<JournalRecord> beyond,
      Kind kind,
      String why)
      implements Recovered {
    /** What is wrong with a damaged journal. */
    public enum Kind {
      /** What stands at the end cannot be read, and no interrupted write explains it. */
      RUIN,
      /** Lines in the middle cannot be read. */
      HOLE,
      /** A record is there twice. */
      REPEATED,
      /** The records are not in order. */
      REORDERED,
      /** At least one record is missing. */
      GAP,
      /** A record does not follow the one before it: it is of another journal. */
      FOREIGN,
      /** Records that were kept are missing at the end. */
      MISSING,
      /** Records that were kept cannot be read at the end. */
      LOST,
      /** A record is not the one that was kept. */
      EXCHANGED
    }

    /** Copies the records. */
    public Damaged {
      records = List.copyOf(records);
      beyond = List.copyOf(beyond);
    }

    @Override
    public Optional<String> told() {
      return Optional.of(why);
    }

    @Override
    public boolean isDamaged() {
      return true;
    }
  }

  /**
   * A journal this version does not read; nothing of it is used or changed.
   *
   * @param newer whether it is a journal of a later version rather than no journal at all
   * @param why the reason, in one sentence
   */
  record Refused(boolean newer, String why) implements Recovered {
    @Override
    public List<JournalRecord> records() {
      return List.of();
    }

    @Override
    public long soundBytes() {
      return 0;
    }

    @Override
    public Optional<String> told() {
      return Optional.of(why);
    }

    @Override
    public Optional<String> refusal() {
      return Optional.of(why);
    }
  }
}
