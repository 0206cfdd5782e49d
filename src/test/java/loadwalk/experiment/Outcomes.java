package loadwalk.experiment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * What came of every walk of some runs, as a text that can be kept and held against later runs.
 *
 * <p>Only what went otherwise than wished is written, so in a difference of two texts a member that
 * appears is worse and one that goes is better. Beside it stand the shares, for the reader, and the
 * median half-width of every band.
 *
 * @param misses what came of it, by run, member and what was at stake
 * @param halfWidths median half-widths, percent of the middle of the band, by run and reading
 */
record Outcomes(Map<String, String> misses, Map<String, Double> halfWidths) {
  static final String RUN = "== ";
  private static final String HALF_WIDTH = "half-width, ";
  private static final String MISS = "- ";

  /** Change of a median half-width that is seen, a fraction. */
  private static final double SEEN = 0.005;

  /** Returns the text of some runs. */
  static String text(List<Results> runs) {
    StringBuilder text = new StringBuilder();
    for (Results run : runs) {
      text.append(RUN).append(title(run)).append('\n');
      Share.of(run).values().forEach(share -> text.append(share).append('\n'));
      run.halfWidths.forEach(
          (band, widths) ->
              text.append(HALF_WIDTH)
                  .append(band)
                  .append(
                      String.format(Locale.ROOT, ": %.2f %%%n", Results.medianPercent(widths))));
      Map<String, List<Integer>> members = new TreeMap<>();
      run.misses.forEach(
          miss ->
              members
                  .computeIfAbsent(miss.what() + ": " + miss.came(), k -> new ArrayList<>())
                  .add(miss.member()));
      members.forEach(
          (what, who) ->
              text.append(MISS)
                  .append(what)
                  .append(": ")
                  .append(String.join(" ", who.stream().map(String::valueOf).toList()))
                  .append('\n'));
    }
    return text.toString();
  }

  /** Returns what a run is called. */
  static String title(Results run) {
    return run.population + ", " + run.arrangement.words;
  }

  /** Reads a text back. */
  static Outcomes of(String text) {
    Map<String, String> misses = new LinkedHashMap<>();
    Map<String, Double> halfWidths = new LinkedHashMap<>();
    String run = "";
    for (String line : text.lines().toList()) {
      String[] parts = line.split(": ");
      if (line.startsWith(RUN)) {
        run = line.substring(RUN.length());
      } else if (line.startsWith(HALF_WIDTH)) {
        halfWidths.put(run + ", " + parts[0], Double.parseDouble(parts[1].split(" ")[0]));
      } else if (line.startsWith(MISS)) {
        for (String member : parts[2].split(" ")) {
          misses.put(run + ", " + member + ", " + parts[0].substring(MISS.length()), parts[1]);
        }
      }
    }
    return new Outcomes(misses, halfWidths);
  }

  /**
   * What is otherwise in these outcomes than in earlier ones.
   *
   * @param worse decisions that were right and are not
   * @param better decisions that are right and were not
   * @param other decisions that are wrong in another way
   * @param widths half-widths that changed by more than half a percent of themselves
   */
  record Changes(List<String> worse, List<String> better, List<String> other, List<String> widths) {
    int decisions() {
      return worse.size() + better.size() + other.size();
    }

    @Override
    public String toString() {
      return String.format(
              Locale.ROOT,
              "%d decisions changed: %d worse, %d better, %d otherwise; %d half-widths changed%n",
              decisions(),
              worse.size(),
              better.size(),
              other.size(),
              widths.size())
          + lines("worse", worse)
          + lines("better", better)
          + lines("otherwise", other)
          + lines("half-width", widths);
    }

    private static String lines(String how, List<String> changes) {
      StringBuilder lines = new StringBuilder();
      changes.forEach(
          change -> lines.append("  ").append(how).append(": ").append(change).append('\n'));
      return lines.toString();
    }
  }

  /** Returns what is otherwise here than it was before. */
  Changes since(Outcomes before) {
    Changes changes =
        new Changes(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    Map<String, String> gone = new LinkedHashMap<>(before.misses);
    misses.forEach(
        (what, came) -> {
          String was = gone.remove(what);
          if (was == null) {
            changes.worse().add(what + ": " + came);
          } else if (!was.equals(came)) {
            changes.other().add(what + ": " + came + ", was " + was);
          }
        });
    gone.forEach((what, came) -> changes.better().add(what + ": was " + came));
    Map<String, Double> bands = new HashMap<>(before.halfWidths);
    halfWidths.forEach(
        (band, width) -> {
          Double was = bands.remove(band);
          if (was == null || Math.abs(width - was) > SEEN * was) {
            changes.widths().add(band + ": " + width + " %, was " + was);
          }
        });
    bands.forEach((band, was) -> changes.widths().add(band + ": gone, was " + was));
    return changes;
  }
}
