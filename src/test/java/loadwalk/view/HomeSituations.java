package loadwalk.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.chart.Series.Point;
import loadwalk.view.state.LedgerRow;
import loadwalk.view.state.LedgerRows;

/** Where somebody can be without a walk, each by a name and the keys that lead there. */
final class HomeSituations {
  private HomeSituations() {}

  static Map<String, Supplier<Desk>> all() {
    Map<String, Supplier<Desk>> all = new LinkedHashMap<>();
    menus(all);
    forms(all);
    ledgers(all);
    texts(all);
    return all;
  }

  static Desk home(int walks, String... refused) {
    return Desk.atHome().knowing(Shelf.library(walks, refused));
  }

  private static void menus(Map<String, Supplier<Desk>> all) {
    all.put("home-nothing-read", Desk::atHome);
    all.put("home-resume", () -> home(3).press("End", "Up"));
    all.put("home-sheet", () -> home(3).press("End"));
    all.put("home-scrolled", () -> home(40).press("End", "Up", "Up"));
    all.put("home-told", () -> home(2).hears(new ProgramEvent.Told("The walk is open elsewhere.")));
    all.put("home-first-walk", () -> home(3).press(WalkSituations.times("Down", 5)));
    all.put("home-ledger", () -> home(0).press("Down", "Down"));
    all.put("home-on-help", () -> home(0).press("Down", "Down", "Down"));
    all.put("home-leave", () -> home(0).press("End"));
    all.put("home-walk-gone", () -> home(6).press("End").knowing(Shelf.library(5)));
    all.put("home-long-folder", () -> Desk.atHome("/home/bench/walks of the year".repeat(5)));
    all.put(
        "walk-closed", () -> WalkSituations.strongOnStout().hears(new ProgramEvent.WalkClosed()));
    all.put("home-help", () -> home(0).press("F1"));
    all.put("practice-loading", () -> Desk.atHome().press("Enter"));
    all.put("practice-start", () -> home(0).press("Enter"));
    all.put("practice-seed-first", () -> home(0).press("Enter", "Home"));
    all.put("practice-seed", () -> home(0).press("Enter", "Down", "Right", "Right"));
    all.put("practice-sequence", () -> home(0).press("Enter", "Down", "Down", "Left"));
    all.put("practice-time", () -> home(0).press("Enter", "Up", "Left", "Left"));
    all.put("practice-refused", () -> home(0, "ladder.json: empty").press("Enter"));
    all.put("new-walk-loading", () -> Desk.atHome().press("Down", "Enter"));
    all.put("new-walk-sequence", () -> newWalk().press("Down"));
    all.put(
        "new-walk-refused",
        () -> home(0, "torn.json, line 3: a comma is missing").press("Down", "Enter"));
    all.put(
        "new-walk-refused-many",
        () -> home(0, "torn.json: empty", "b.json: empty", "c.json: empty").press("Down", "Enter"));
    all.put("new-walk-amplifier", () -> newWalk().press("Enter", "Down"));
    all.put("new-walk-bench", () -> atBench().press("Down"));
    all.put("new-walk-start", () -> ready());
    all.put("new-walk-long-list", () -> Desk.atHome().knowing(Shelf.crowded()).press(toBenches()));
    all.put("new-walk-bench-typed", () -> atBench().press("Down", "Enter", "F10"));
    all.put("new-walk-ready", () -> ready().press("Down"));
    all.put(
        "new-walk-typed",
        () -> newWalk().press("Enter", "Enter", "text:Maker typed and left", "F10"));
    all.put("forms-wanted", () -> home(0).hears(new ProgramEvent.FormsWanted("ladder")));
  }

  private static Desk newWalk() {
    return home(0).press("Down", "Enter");
  }

  private static String[] toBenches() {
    return new String[] {"Down", "Enter", "Enter", "Down", "Enter", "F9", "Up", "Up"};
  }

  private static Desk atBench() {
    return newWalk().press("Enter", "Down", "Enter", "F9");
  }

  private static Desk ready() {
    return atBench().press("Down", "Down", "Enter", "F9");
  }

  private static void forms(Map<String, Supplier<Desk>> all) {
    all.put("amplifier-form-blank", () -> newWalk().press("Enter", "Enter"));
    all.put("amplifier-form-known", () -> newWalk().press("Enter", "Down", "Enter", "Down"));
    all.put(
        "amplifier-form-wrong",
        () -> newWalk().press("Enter", "Down", "Enter", "Up", "text: maybe", "Up", "F9"));
    all.put(
        "amplifier-form-caret",
        () -> newWalk().press("Enter", "Enter", "text:Halvorsen", "Left", "Left", "Back"));
    all.put(
        "amplifier-form-long",
        () -> newWalk().press("Enter", "Enter", "text:" + "0123456789".repeat(12)));
    all.put("bench-form-blank", () -> atBench().press("Enter"));
    all.put("bench-form-known", () -> atBench().press("Down", "Enter", "Up"));
    all.put(
        "bench-form-wrong",
        () -> atBench().press("Enter", "text:North", "Down", "text:13.8 V 60 W", "F9"));
  }

  private static void ledgers(Map<String, Supplier<Desk>> all) {
    all.put("ledger-empty", () -> ledger(0, ""));
    all.put("ledger-nothing-found", () -> ledger(0, "bridged verrin"));
    all.put(
        "ledger-marked", () -> ledger(6, "").press("text:  ", "Down", "text: ", "Down", "text: "));
    all.put("ledger-four-marked", () -> ledger(6, "").press(fourMarked()));
    all.put(
        "ledger-read-again",
        () -> ledger(6, "").press("text: ", "Down").hears(ready(6, "oldest", "verrin")));
    all.put(
        "ledger-paged-back", () -> ledger(60, "").press("PageDown", "PageDown", "PageUp", "Up"));
    all.put("ledger-last", () -> ledger(20, "").press("PageDown", "PageDown"));
    all.put("ledger-scrolled", () -> ledger(60, "").press("PageDown", "PageDown", "Up"));
    all.put("ledger-filter", () -> ledger(6, "verrin").press("F4", "text: v1", "Left"));
    all.put("ledger-noted", () -> home(0).hears(ready(6, "newest", "", notes())));
    all.put("ledger-told", () -> ledger(6, "").press("F8"));
  }

  static String[] fourMarked() {
    return new String[] {"text: ", "Down", "text: ", "Down", "text: ", "Down", "text: ", "Down"};
  }

  static Desk ledger(int rows, String filter) {
    return home(0).hears(ready(rows, "newest", filter));
  }

  private static String[] notes() {
    return new String[] {
      "way.jsonl is left out: it is a link.", "copy is a copy of walk; they count as one walk."
    };
  }

  private static ProgramEvent ready(int rows, String order, String filter, String... notes) {
    List<LedgerRow> walks =
        IntStream.rangeClosed(1, rows)
            .mapToObj(
                i ->
                    new LedgerRow(
                        "2026-03-14-0930-walk-of-number-" + i,
                        i % 2 == 0 ? "Verrin V" + i : "Halvorsen & Pike HP " + i + " Grand Reserve",
                        i % 2 == 0 ? "A " + i : "none",
                        (100 + i) + " W ± 2.0 W, stereo-4",
                        "1." + i,
                        "2." + i,
                        "5" + i % 10 + " %",
                        "walk-" + i + "; THD not read; not ranked: THD not read"))
            .toList();
    return new ProgramEvent.LedgerReady(new LedgerRows(walks, order, 1, filter, List.of(notes)));
  }

  private static void texts(Map<String, Supplier<Desk>> all) {
    all.put("text-empty", () -> text(0));
    all.put("text-top", () -> text(70));
    all.put("text-middle", () -> text(70).press("PageDown", "Down"));
    all.put("text-end", () -> text(70).press("End"));
    all.put("text-last-line", () -> text(70).press("End", "PageDown", "PageDown", "Down"));
    all.put("chart-second", () -> text(5).press("F6", "Right"));
  }

  private static Desk text(int count) {
    List<String> lines = IntStream.rangeClosed(1, count).mapToObj(i -> "line number " + i).toList();
    List<Chart> charts =
        count == 5 ? List.of(chart("First"), chart("Second"), chart("Third")) : List.of();
    return home(0).hears(new ProgramEvent.TextReady("Sheet of Verrin V1", lines, charts));
  }

  private static Chart chart(String title) {
    List<Series> all =
        List.of(
            new Series(
                "stereo",
                Series.Kind.JOINED,
                0,
                List.of(Point.within(1, 10, 2), Point.within(4, 40, 2))));
    return Chart.of(title, Axis.fromZero("load, Ω"), Axis.fromZero("power, W"), all);
  }
}
