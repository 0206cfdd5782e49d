package loadwalk.report.sheet;

import java.util.Objects;
import java.util.function.Function;

/**
 * One thing that a published standard asks to be stated.
 *
 * @param standard the standard
 * @param item what is asked about
 * @param asks what the standard asks for
 * @param known how that figure is known
 * @param found sets what a walk recorded beside it
 */
record StandardItem(
    Standard standard, String item, String asks, Known known, Function<Sheet, Finding> found) {

  /** The standards that a sheet is set beside. */
  enum Standard {
    CTA_2006("ANSI/CTA-2006-D", "mobile amplifiers on the vehicle's supply"),
    CFR_432("16 CFR 432", "home equipment: car amplifiers are outside its name; text of 2024"),
    IEC_60268("IEC 60268-3:2018", "amplifiers, professional and household");

    private final String label;
    private final String scope;

    Standard(String label, String scope) {
      this.label = label;
      this.scope = scope;
    }

    /** Returns its number. */
    String label() {
      return label;
    }

    /** Returns what it is about. */
    String scope() {
      return scope;
    }
  }

  /** How a figure is known here; the standard's own text decides. */
  enum Known {
    /** Read in the text or in an excerpt of it. */
    READ("read"),
    /** Read on a page about it or in the trade press. */
    SECOND_HAND("read at second hand"),
    SURE("from memory, sure"),
    FAIRLY_SURE("from memory, fairly sure"),
    NOT_SURE("from memory, not sure");

    private final String word;

    Known(String word) {
      this.word = word;
    }

    /** Returns the words used in every format. */
    String word() {
      return word;
    }
  }

  /** What a walk has beside an item. */
  enum Outcome {
    RECORDED("recorded"),
    NOT_RECORDED("not recorded"),
    DIFFERS("differs");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** Returns the words used in every format. */
    String word() {
      return word;
    }
  }

  /**
   * What a walk recorded beside an item.
   *
   * @param outcome whether it did, and whether it is what is asked for
   * @param value what it recorded; empty if there is nothing to say
   */
  record Finding(Outcome outcome, String value) {
    /** Nothing was recorded. */
    static final Finding NONE = new Finding(Outcome.NOT_RECORDED, "");

    /** Rejects missing parts. */
    Finding {
      Objects.requireNonNull(outcome, "outcome");
      Objects.requireNonNull(value, "value");
    }

    static Finding missing(String why) {
      return new Finding(Outcome.NOT_RECORDED, why);
    }

    /** Returns what was recorded, as asked for or not. */
    static Finding of(boolean asAsked, String value) {
      return new Finding(asAsked ? Outcome.RECORDED : Outcome.DIFFERS, value);
    }
  }
}
