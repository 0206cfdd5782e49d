package loadwalk.result;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a reader must know about a result before its number, worst first. */
public enum Mark {
  /** More comes out than goes in. */
  IMPOSSIBLE("impossible", "impossible"),
  /** The operator stood by a doubted reading. */
  STOOD_BY("stood-by", "stood by"),
  /** A doubt has no answer. */
  IN_DOUBT("in-doubt", "in doubt"),
  /** The warm-up was cut short, or the amplifier had cooled. */
  NOT_WARM("not-warm", "not warm"),
  /** The output was read above the limit. */
  ABOVE_LIMIT("above-limit", "above the limit"),
  /** The output was read below the limit. */
  BELOW_LIMIT("below-limit", "below the limit"),
  /** Nobody read the distortion or said what it was. */
  LIMIT_NOT_KNOWN("limit-not-known", "THD not read"),
  /** The supply volts read differ from those asked for. */
  SUPPLY_OFF("supply-off", "supply off"),
  /** The amplifier is simulated. */
  PRACTICE("practice", "practice");

  /** How far the supply may lie from the volts asked for, a fraction; as for a rating. */
  static final double SAME_VOLTS = 0.015;

  private final String word;
  private final String text;

  Mark(String word, String text) {
    this.word = word;
    this.text = text;
  }

  /** Returns the name used in JSON output. */
  public String word() {
    return word;
  }

  /** Returns the phrase that stands at the number. */
  public String text() {
    return text;
  }

  /** Tells whether a result with this mark can be ranked among results like it. */
  public boolean isRanked() {
    return this == NOT_WARM || this == SUPPLY_OFF || this == PRACTICE;
  }

  /**
   * Returns the marks of a result, worst first.
   *
   * @param impossible whether more comes out than goes in, beyond the uncertainty
   * @param askedVolts the supply volts asked for
   */
  static List<Mark> of(Conditions conditions, boolean impossible, double askedVolts) {
    List<Mark> marks = new ArrayList<>();
    add(marks, IMPOSSIBLE, impossible);
    add(marks, STOOD_BY, conditions.around().stoodBy());
    add(marks, IN_DOUBT, conditions.around().inDoubt());
    add(marks, NOT_WARM, !conditions.around().warm().orElse(true));
    add(marks, ABOVE_LIMIT, conditions.criterion() == Criterion.ABOVE_LIMIT);
    add(marks, BELOW_LIMIT, conditions.criterion() == Criterion.BELOW_LIMIT);
    boolean output = conditions.channelsRead() > 0;
    add(marks, LIMIT_NOT_KNOWN, output && conditions.criterion() == Criterion.NOT_KNOWN);
    add(marks, SUPPLY_OFF, isOff(conditions.supplyVolts(), askedVolts));
    add(marks, PRACTICE, conditions.around().practice());
    return List.copyOf(marks);
  }

  private static boolean isOff(OptionalDouble volts, double asked) {
    return volts.isPresent() && !Conditions.isNear(volts.getAsDouble(), asked, SAME_VOLTS);
  }

  private static void add(List<Mark> marks, Mark mark, boolean holds) {
    if (holds) {
      marks.add(mark);
    }
  }
}
