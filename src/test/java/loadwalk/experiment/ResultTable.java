package loadwalk.experiment;

import java.util.Locale;
import java.util.Map;

/** Prints results as lines of text, every percentage with its counts. */
final class ResultTable {
  private final StringBuilder text = new StringBuilder();

  private ResultTable() {}

  /** Returns one forecaster's table. */
  static String of(Results r, long seed, int count) {
    ResultTable table = new ResultTable();
    table.line(
        "%n== %s on %d %s, %s, seed %d",
        r.forecaster, count, r.population, r.withAmps ? "with supply amps" : "volts only", seed);
    table.tally("slips doubted", r.total(r.doubted));
    table.tally("slip named right, first guess, of all slips", r.total(r.named));
    table.tally("honest entries doubted", r.honestDoubted);
    table.tally("readings inside their band", r.allInside());
    table.line("  %-46s %8.2f %%", "median half-width, bridged", r.medianHalfWidthPercent());
    table.tally("steps briefed clear though asking too much", r.clearThoughExceeding);
    table.tally("steps briefed clear", r.clear);
    table.tally("loaded steps that supply and fuses let run", r.run);
    table.line("  by slip: doubted, named, and what it was taken for");
    r.doubted.forEach(
        (slip, tally) -> {
          table.tally("  " + slip.code() + " doubted", tally);
          table.tally("  " + slip.code() + " named", r.named.get(slip));
          if (r.namedAs.containsKey(slip)) {
            table.line("      taken for %s", r.namedAs.get(slip));
          }
        });
    table.line("  slips left out: %s", r.leftOut);
    table.line("  readings without a band: %s", r.unforetold);
    table.each("inside, ", r.inside);
    table.each("inside, ", r.insideBy);
    table.each("honest doubted, ", r.honestBy);
    return table.text.toString();
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
