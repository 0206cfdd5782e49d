package loadwalk.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out of a brief what an earlier brief of the walk told, until its number has grown by a
 * third. A halt is always told. Where something may give, the verdict stands though its caution is
 * not told again: the opening line has its number.
 */
public final class ToldOnce {
  /** Ratio of its number to the one told from which a caution is told again. Chosen by hand. */
  private static final double GROWN = 4.0 / 3;

  private ToldOnce() {}

  /**
   * Returns a forecast without the cautions that were told before.
   *
   * @param earlier the briefs before it, as they were told
   */
  public static Forecast after(List<Forecast> earlier, Forecast now) {
    List<Caution> told = new ArrayList<>();
    Verdict verdict = Verdict.CLEAR;
    for (Caution caution : now.cautions()) {
      boolean again = isNew(earlier, caution);
      if (again) {
        told.add(caution);
      }
      if (again || caution.gives()) {
        verdict = verdict.graver(caution.gravity());
      }
    }
    return now.with(told, verdict);
  }

  private static boolean isNew(List<Forecast> earlier, Caution caution) {
    if (caution.gravity() == Verdict.HALT || caution.number().isEmpty()) {
      return true;
    }
    double number = caution.number().getAsDouble();
    return earlier.stream()
        .flatMap(brief -> brief.cautions().stream())
        .filter(before -> before.code().equals(caution.code()))
        .filter(before -> before.about().equals(caution.about()))
        .filter(before -> before.number().isPresent())
        .noneMatch(before -> number < GROWN * before.number().getAsDouble());
  }
}
