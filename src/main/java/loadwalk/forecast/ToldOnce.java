package loadwalk.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out of a brief what an earlier brief of the walk told, until its number has grown by a
 * third. A halt is always told. Where something may give, the verdict stands though its caution is
 * not told again: the opening line has its number. Where that line is about another part, the worst
 * caution is told again, so that no heed is without its reason.
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
    List<Caution> held = new ArrayList<>();
    for (Caution caution : now.cautions()) {
      if (isNew(earlier, caution)) {
        told.add(caution);
      } else if (caution.gives()) {
        held.add(caution);
      }
    }
    Verdict verdict = gravest(told).graver(gravest(held));
    if (gravest(told) != verdict && held.stream().noneMatch(caution -> opens(now, caution))) {
      told.add(0, held.get(0));
    }
    return now.with(told, verdict);
  }

  private static Verdict gravest(List<Caution> cautions) {
    return cautions.stream().map(Caution::gravity).reduce(Verdict.CLEAR, Verdict::graver);
  }

  /** Tells whether the opening line is about the part of a caution. */
  private static boolean opens(Forecast now, Caution caution) {
    return now.givesFirst().filter(first -> first.code().equals(caution.code())).isPresent();
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
