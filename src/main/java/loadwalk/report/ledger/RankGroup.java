package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import loadwalk.report.ledger.LedgerEntry.Load;

/**
 * Walks ranked in one list: each of them with a result that is alike to those of all others in it.
 *
 * @param letter what the group is called
 * @param walks its walks, the best first
 * @param loads the results that they are ranked by, in the same order
 */
public record RankGroup(String letter, List<LedgerEntry> walks, List<Load> loads) {
  private static final int LETTERS = 26;

  /** Copies the lists. */
  public RankGroup {
    walks = List.copyOf(walks);
    loads = List.copyOf(loads);
  }

  /** A walk that is to be placed. */
  private record Placed(LedgerEntry walk, LedgerSort.Ranked by) {
    boolean isPractice() {
      return by.load().isPractice();
    }
  }

  /**
   * Places walks, the best first, each in the first group to all of which it is alike; so no two in
   * a group are unlike. Real amplifiers come before simulated ones, then the largest group first.
   */
  static List<RankGroup> of(List<LedgerEntry> walks, LedgerSort sort) {
    List<Placed> best = new ArrayList<>();
    walks.forEach(w -> sort.ranked(w).ifPresent(by -> best.add(new Placed(w, by))));
    best.sort(
        Comparator.<Placed>comparingDouble(p -> -p.by().value())
            .thenComparing(p -> p.walk().walk()));
    List<Building> building = new ArrayList<>();
    for (Placed placed : best) {
      Building fits =
          building.stream()
              .filter(group -> group.takes(placed, sort.isAmongAlike()))
              .findFirst()
              .orElseGet(() -> added(building));
      fits.placed.add(placed);
      fits.widen(placed.by().load());
    }
    building.sort(
        Comparator.<Building, Boolean>comparing(group -> group.placed.get(0).isPractice())
            .thenComparing(group -> -group.placed.size()));
    List<RankGroup> groups = new ArrayList<>();
    building.forEach(group -> groups.add(group.named(letter(groups.size()))));
    return groups;
  }

  private static Building added(List<Building> building) {
    building.add(new Building());
    return building.get(building.size() - 1);
  }

  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  /** A group while it grows; what is alike to its extremes is alike to all of it. */
  private static final class Building {
    private final List<Placed> placed = new ArrayList<>();
    private final List<Load> extremes = new ArrayList<>();

    boolean takes(Placed other, boolean amongAlike) {
      return amongAlike
          ? extremes.stream().allMatch(load -> Likeness.alike(load, other.by().load()))
          : placed.get(0).isPractice() == other.isPractice();
    }

    void widen(Load load) {
      extremes.add(load);
      List<Load> kept = new ArrayList<>();
      for (ToDoubleFunction<Load> what : MAY_DIFFER) {
        kept.add(extremes.stream().min(Comparator.comparingDouble(what)).orElseThrow());
        kept.add(extremes.stream().max(Comparator.comparingDouble(what)).orElseThrow());
      }
      extremes.clear();
      kept.stream().distinct().forEach(extremes::add);
    }

    RankGroup named(String letter) {
      return new RankGroup(
          letter,
          placed.stream().map(Placed::walk).toList(),
          placed.stream().map(p -> p.by().load()).toList());
    }
  }

  private static final List<ToDoubleFunction<Load>> MAY_DIFFER =
      List.of(
          Load::ohms,
          load -> load.conditions().hertz().orElse(0),
          load -> load.supplyVolts().orElse(0));
}
