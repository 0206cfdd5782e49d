package loadwalk.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.text.Sentence;

/**
 * How far the records of a journal can be taken for all that was kept; it stands on whatever is
 * made from them.
 *
 * @param standing how far, in a word
 * @param told what the reader must know, in whole sentences; empty where nothing is wrong
 */
public record Soundness(Standing standing, String told) {
  /** All records are there. */
  public static final Soundness WHOLE = new Soundness(Standing.WHOLE, "");

  private static final String UNKNOWN =
      "Whether records are missing at the end of the journal cannot be known.";
  private static final String SPOILED =
      "The file that says where the journal ends is spoiled; resuming the walk writes it anew.";

  /** How far the records are all that was kept. */
  public enum Standing {
    /** All records are there. */
    WHOLE("whole", ""),
    /** An interrupted write left part of a record at the end. */
    TORN("torn", "cut off in a record"),
    /** Nothing tells whether records are missing at the end. */
    END_UNKNOWN("end-unknown", "end unknown"),
    /** What tells whether records are missing at the end is spoiled. */
    END_SPOILED("end-spoiled", "end spoiled"),
    /** Records are missing, spoiled or not those that were kept. */
    DAMAGED("damaged", "damaged");

    private final String word;
    private final String mark;

    Standing(String word, String mark) {
      this.word = word;
      this.mark = mark;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }

    /** Tells whether the disk, or somebody, changed what the program wrote. */
    public boolean isFaulty() {
      return this == DAMAGED || this == END_SPOILED;
    }
  }

  /**
   * Judges a journal that was read.
   *
   * @param read the journal
   * @param closed whether its records say themselves that none follows
   */
  public static Soundness of(Recovered read, boolean closed) {
    List<String> told = new ArrayList<>();
    read.told().ifPresent(told::add);
    if (read.isDamaged()) {
      return new Soundness(Standing.DAMAGED, String.join(" ", told));
    }
    Optional<String> end = end(read.ending(), closed);
    end.ifPresent(told::add);
    return new Soundness(standing(read, end.isPresent()), String.join(" ", told));
  }

  private static Standing standing(Recovered read, boolean unsure) {
    if (read.ending() == Recovered.Ending.WITNESS_SPOILED) {
      return Standing.END_SPOILED;
    }
    if (read.torn().isPresent()) {
      return Standing.TORN;
    }
    return unsure ? Standing.END_UNKNOWN : Standing.WHOLE;
  }

  private static Optional<String> end(Recovered.Ending ending, boolean closed) {
    return switch (ending) {
      case KNOWN -> Optional.empty();
      case UNKNOWN -> closed ? Optional.empty() : Optional.of(UNKNOWN);
      case WITNESS_SPOILED ->
          Optional.of(closed ? SPOILED : Sentence.of("{} {}", SPOILED, UNKNOWN));
    };
  }

  /** Returns the mark beside the walk in a list, where there is anything to know. */
  public Optional<String> mark() {
    return standing.mark.isEmpty() ? Optional.empty() : Optional.of(standing.mark);
  }

  /** Returns what is told as a list of one or none. */
  public List<String> remarks() {
    return told.isEmpty() ? List.of() : List.of(told);
  }
}
