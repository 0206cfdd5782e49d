package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page;
import loadwalk.report.page.Page.Section;
import loadwalk.report.sheet.ResultWords;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Words a ledger for all formats. */
public final class LedgerPage {
  private static final Printer PRINTER = Printer.UTF8;
  private static final int NOTES_MOST = 8;

  private LedgerPage() {}

  /** Returns the page of a ledger. */
  public static Page of(Ledger ledger) {
    List<Section> sections = new ArrayList<>();
    if (ledger.entries().isEmpty()) {
      Paragraph none = new Paragraph("No walks yet, or none that match.");
      sections.add(new Section("walks", "Walks", List.of(none)));
    } else {
      sections.add(new Section("walks", "Walks", List.of(walks(ledger))));
      ranks(ledger).ifPresent(t -> sections.add(new Section("ranks", "Ranks", List.of(t))));
      best(ledger)
          .ifPresent(t -> sections.add(new Section("best", "Best at each load", List.of(t))));
      sections.add(new Section("ways", "Sequences", List.of(ways(ledger.entries()))));
    }
    return new Page(
        "Ledger",
        Sentence.plural(ledger.entries().size(), "1 walk", "{} walks"),
        warnings(ledger),
        sections);
  }

  private static List<String> warnings(Ledger ledger) {
    List<String> warnings = new ArrayList<>(LoadWords.unranked(ledger.entries()));
    List<String> damaged =
        ledger.entries().stream()
            .filter(e -> e.soundness().standing().isFaulty())
            .map(LedgerPage::notRanked)
            .toList();
    warnings.addAll(first(damaged));
    warnings.addAll(first(ledger.notes()));
    return warnings;
  }

  private static String notRanked(LedgerEntry e) {
    return Sentence.of(
        "{} is not ranked: {}", Visible.name(e.walk()), Visible.sentence(e.soundness().told()));
  }

  /** Returns the first of what is to be said; a folder of copies would hide the walks below it. */
  public static List<String> first(List<String> notes) {
    List<String> first = new ArrayList<>(notes.subList(0, Math.min(NOTES_MOST, notes.size())));
    int more = notes.size() - first.size();
    if (more > 0) {
      first.add(
          Sentence.plural(
              more,
              "1 more note on journals is in the ledger's JSON.",
              "{} more notes on journals are in the ledger's JSON."));
    }
    return first;
  }

  private static Table walks(Ledger ledger) {
    boolean ranks = ledger.sort().ranks();
    Map<String, String> places = ledger.places();
    List<List<String>> rows = new ArrayList<>();
    for (LedgerEntry e : ledger.entries()) {
      Optional<LedgerEntry.Load> most = e.strongest();
      List<String> row = new ArrayList<>(List.of(Visible.name(e.amplifier()) + marks(e)));
      if (ranks) {
        String place = places.get(e.walk());
        row.add(place != null ? place : Sentence.of("none: {}", ledger.sort().unranked(e)));
      }
      Optional<LedgerEntry.Ended> ended = e.ended().stream().findFirst();
      row.add(
          most.map(l -> PRINTER.quantity(l.total(e.walk())))
              .orElseGet(() -> ended.map(first -> first.outcome().text()).orElse("none")));
      row.add(
          most.map(l -> ResultWords.load(l.mode(), l.ohms()) + LoadWords.behind(l))
              .orElseGet(
                  () ->
                      ended.map(first -> ResultWords.load(first.mode(), first.ohms())).orElse("")));
      row.add(ofRated(e));
      row.add(number(e.wattsPerFuseAmp(), 1));
      row.add(percent(e.bestEfficiency()));
      row.add(Visible.name(e.walk()));
      rows.add(row);
    }
    List<Column> columns = new ArrayList<>(List.of(Column.words("Amplifier")));
    if (ranks) {
      columns.add(Column.words("Rank"));
    }
    columns.addAll(
        List.of(
            Column.numbers("Most power"),
            Column.words("Load"),
            Column.numbers("Of rated"),
            Column.numbers("W per fuse A"),
            Column.numbers("Efficiency"),
            Column.words("Walk")));
    return new Table(
        Sentence.of(
            "Each walk at its strongest load, one that ranks if any does; of rated at its worst"
                + " load; ± at {}",
            ResultWords.coverage(strongest(ledger))),
        columns,
        rows);
  }

  private static List<Quantity> strongest(Ledger ledger) {
    return ledger.entries().stream()
        .flatMap(e -> e.strongest().map(load -> load.total(e.walk())).stream())
        .toList();
  }

  private static Optional<Table> ranks(Ledger ledger) {
    Set<String> shown =
        ledger.entries().stream().map(LedgerEntry::walk).collect(Collectors.toSet());
    List<List<String>> rows = new ArrayList<>();
    for (RankGroup group : ledger.groups()) {
      if (group.walks().stream().anyMatch(w -> shown.contains(w.walk()))) {
        rows.add(
            List.of(
                group.letter(),
                LoadWords.of(ledger.sort(), group),
                String.valueOf(group.walks().size())));
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Table(
                "What the walks of one letter have alike",
                List.of(Column.words("Rank"), Column.words("Conditions"), Column.numbers("Walks")),
                rows));
  }

  private static String marks(LedgerEntry e) {
    List<String> marks = new ArrayList<>();
    if (e.practice()) {
      marks.add("practice");
    }
    if (!e.finished() && !e.soundness().standing().isFaulty()) {
      marks.add("unfinished");
    }
    e.soundness().mark().ifPresent(marks::add);
    if (e.openDoubts() > 0) {
      marks.add("in doubt");
    }
    return marks.isEmpty() ? "" : " (" + String.join(", ", marks) + ")";
  }

  private static Optional<Table> best(Ledger ledger) {
    List<List<String>> rows = new ArrayList<>();
    for (BestAtLoad b : BestAtLoad.of(ledger.entries())) {
      RankedResult best = b.best();
      rows.add(
          List.of(
              ResultWords.load(best.load().mode(), best.load().ohms()),
              LoadWords.conditions(b.compared()),
              Visible.name(best.walk().amplifier()),
              PRINTER.quantity(best.total()) + LoadWords.behind(best.load()),
              String.valueOf(b.compared().size()),
              b.note().orElse("")));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Table(
                "Most total power, among results reached under like conditions",
                List.of(
                    Column.words("Load"),
                    Column.words("Conditions"),
                    Column.words("Amplifier"),
                    Column.numbers("Power"),
                    Column.numbers("Compared"),
                    Column.words("Note")),
                rows));
  }

  /** Tells how walks were to be measured, the most common way first. */
  private static Table ways(List<LedgerEntry> walks) {
    Map<LedgerEntry.Done, Integer> counts = new LinkedHashMap<>();
    walks.forEach(walk -> counts.merge(walk.done(), 1, Integer::sum));
    List<LedgerEntry.Done> common = new ArrayList<>(counts.keySet());
    common.sort(
        Comparator.<LedgerEntry.Done>comparingInt(done -> -counts.get(done))
            .thenComparing(LedgerEntry.Done::sequence)
            .thenComparing(LedgerEntry.Done::contentHash));
    List<List<String>> rows = new ArrayList<>();
    common.forEach(done -> rows.add(wayRow(String.valueOf(counts.get(done)), done)));
    return new Table(
        "What the walks were asked for; this ranks nothing", wayColumns("Walks"), rows);
  }

  static List<Column> wayColumns(String first) {
    return List.of(
        Column.words(first),
        Column.words("Sequence"),
        Column.words("SHA-256"),
        Column.numbers("Tone"),
        Column.numbers("Limit"),
        Column.numbers("Supply"));
  }

  static List<String> wayRow(String first, LedgerEntry.Done done) {
    String hash = done.contentHash();
    return List.of(
        first,
        Visible.name(done.sequence()),
        hash.substring(0, Math.min(12, hash.length())),
        PRINTER.exact(done.toneHertz(), Unit.HERTZ),
        Sentence.of("{} THD", PRINTER.exact(done.limitThdPercent(), Unit.PERCENT)),
        PRINTER.exact(done.supplyVolts(), Unit.VOLT));
  }

  static String number(OptionalDouble value, int places) {
    return value.isPresent()
        ? String.format(Locale.ROOT, "%." + places + "f", value.getAsDouble())
        : "unknown";
  }

  /** Returns the worst ratio to a rating, or why there is none. */
  static String ofRated(LedgerEntry walk) {
    if (walk.loads().stream().allMatch(l -> l.ratio().isEmpty())) {
      return "no rating";
    }
    return walk.worstOfRated()
        .map(l -> PRINTER.value(100 * l.ratio().getAsDouble(), Unit.PERCENT, 3))
        .orElse("other conditions");
  }

  static String percent(OptionalDouble fraction) {
    return fraction.isPresent()
        ? String.format(Locale.ROOT, "%.1f %%", 100 * fraction.getAsDouble())
        : "unknown";
  }
}
