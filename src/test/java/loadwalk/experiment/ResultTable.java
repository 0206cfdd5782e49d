package loadwalk.experiment;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import loadwalk.forecast.Slip;

/** Prints results as lines of text, every percentage with its counts. */
final class ResultTable {
  private final StringBuilder text = new StringBuilder();

  private ResultTable() {}

  /** Returns one forecaster's table. */
  static String of(Results r, long seed, int count) {
    ResultTable table = new ResultTable();
    table.line(
        "%n== %s on %d %s, %s, seed %d",
        r.forecaster, count, r.population, r.arrangement.words, seed);
    table.tally("slips doubted", r.total(r.doubted));
    table.tally("slip named right, first guess, of all slips", r.total(r.named));
    table.tally("caught at entry or by the next reading", r.caughtBy(Later.Catch.NEXT_READING));
    table.tally("caught before the half-ohm step starts", r.caughtBy(Later.Catch.IN_TIME));
    table.tally("later doubts that point to an earlier step", r.later.pointsBack);
    table.tally("  of these to the right step", r.later.rightStep);
    table.tally("    of these with the right slip", r.later.rightSlip);
    table.tally("honest entries doubted", r.honestDoubted);
    table.tally("readings inside their band", r.allInside());
    table.line("  %-46s %8.2f %%", "median half-width, bridged", r.medianHalfWidthPercent());
    table.tally("steps briefed clear though asking too much", r.clearThoughExceeding);
    table.tally("steps briefed clear", r.clear);
    table.tally("loaded steps that supply and fuses let run", r.run);
    table.line("  by slip: doubted, named");
    r.doubted.forEach(
        (slip, tally) -> {
          table.tally("  " + slip.code() + " doubted", tally);
          table.tally("  " + slip.code() + " named", r.named.get(slip));
        });
    table.breakdown(r);
    table.line("  by slip and step: how many, and what they were taken for");
    r.confusion.forEach(table::confusion);
    table.line("  slips left out: %s", r.leftOut);
    table.line("  readings without a band: %s", r.unforetold);
    table.each("inside, ", r.inside);
    table.each("inside, ", r.insideBy);
    table.each("honest doubted, ", r.honestBy);
    return table.text.toString();
  }

  private void breakdown(Results r) {
    line(
        "  by slip and reading: %% doubted / %% named (how many), with what was known of the"
            + " load;%n  loads, swapped digits and copies count where a reading changes by over a"
            + " fifth");
    StringBuilder head = new StringBuilder(String.format("    %-38s", ""));
    for (Results.Standing standing : Results.Standing.values()) {
      head.append(String.format("  %-21s", standing.words));
    }
    line("%s", head.toString().stripTrailing());
    r.breakdown.forEach(
        (what, row) -> {
          StringBuilder cells = new StringBuilder(String.format("    %-38s", what));
          for (Results.Standing standing : Results.Standing.values()) {
            cells.append(String.format("  %-21s", cell(row, standing)));
          }
          line("%s", cells.toString().stripTrailing());
        });
  }

  private static String cell(Results.Row row, Results.Standing standing) {
    Tally doubted = row.doubted.get(standing);
    return doubted == null
        ? ""
        : String.format(
            Locale.ROOT,
            "%5.1f / %5.1f (%d)",
            doubted.percent(),
            row.named.get(standing).percent(),
            doubted.tries());
  }

  private void confusion(Slip slip, Map<String, Map<String, Integer>> bySteps) {
    bySteps.forEach(
        (step, taken) -> {
          int made = taken.values().stream().mapToInt(Integer::intValue).sum();
          Map<String, Integer> wrong = new TreeMap<>(taken);
          wrong.remove(slip.code());
          line("    %-26s %-12s %5d  %s", slip.code(), step, made, wrong.isEmpty() ? "" : wrong);
        });
  }

  private void each(String before, Map<?, Tally> tallies) {
    tallies.forEach((key, tally) -> tally(before + key, tally));
  }

  private void tally(String what, Tally tally) {
    line("  %-46s %8.3f %%  (%d of %d)", what, tally.percent(), tally.hits(), tally.tries());
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format + "%n", values));
  }
}
