package loadwalk.journal;

import java.util.Objects;

/**
 * The facts that decide the state of a journal.
 *
 * @param head the format named by the first sound record
 * @param next what comes right after the sound records
 * @param after what else comes after that
 * @param start how the file begins
 * @param claim what the witness says of the records
 */
record Facts(Head head, Next next, After after, Start start, Witness.Claim claim) {
  /** The format named by the first sound record. */
  enum Head {
    /** There is no sound record. */
    NONE,
    /** It names a format that is read here. */
    OURS,
    /** It names a later version of this format. */
    NEWER,
    /** It names another format or no format. */
    ALIEN
  }

  /** What comes right after the sound records. */
  enum Next {
    /** The file ends there. */
    END,
    /** What one interrupted write of the record due can leave, and nothing else. */
    TORN,
    /** Anything else that cannot be read or fails its checksum. */
    SPOILED,
    /** A valid record with the number due that does not follow the record before it. */
    FOREIGN,
    /** A valid record with a number that was used before. */
    REPEATED,
    /** A valid record with a number that is too high. */
    AHEAD
  }

  /** What else comes from the first unsound item on. */
  enum After {
    /** Nothing else. */
    NOTHING,
    /** Only lines that cannot be read or fail their checksum. */
    SPOILED,
    /** At least one valid record, but not the one expected next. */
    RECORDS,
    /** Valid records, including the one expected next. */
    THE_ONE_DUE
  }

  /** How the file begins. */
  enum Start {
    /** Like a journal. */
    JOURNAL,
    /** Like anything else. */
    OTHER
  }

  Facts {
    Objects.requireNonNull(head, "head");
    Objects.requireNonNull(next, "next");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(claim, "claim");
  }
}
