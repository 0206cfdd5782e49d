package loadwalk.journal;

import java.util.Objects;

/**
 * States all that the decision about a journal rests on.
 *
 * @param head what the first sound record says of the file
 * @param next what stands right after the sound records
 * @param after what else stands from there on
 * @param start how the file begins
 */
record Facts(Head head, Next next, After after, Start start) {
  /** What the first sound record says of the file. */
  enum Head {
    /** There is no sound record. */
    NONE,
    /** It names this format. */
    OURS,
    /** It names a later version of this format. */
    NEWER,
    /** It names another format or none. */
    ALIEN
  }

  /** What stands right after the sound records. */
  enum Next {
    /** The file ends there. */
    END,
    /** A line or part of a line that does not read or check. */
    SPOILED,
    /** A record that checks, with a number that was there before. */
    REPEATED,
    /** A record that checks, with a number too high. */
    AHEAD
  }

  /** What else stands from the first thing on that is not sound. */
  enum After {
    /** Nothing else. */
    NOTHING,
    /** Only lines that do not read or check. */
    SPOILED,
    /** At least one record that checks, but not the one due. */
    RECORDS,
    /** Records that check, the one due among them. */
    THE_ONE_DUE
  }

  /** How the file begins. */
  enum Start {
    /** As a journal does. */
    JOURNAL,
    /** Otherwise. */
    OTHER
  }

  Facts {
    Objects.requireNonNull(head, "head");
    Objects.requireNonNull(next, "next");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(start, "start");
  }
}
