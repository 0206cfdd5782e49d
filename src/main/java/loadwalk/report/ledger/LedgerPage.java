package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
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
      best(ledger)
          .ifPresent(
              table -> sections.add(new Section("best", "Best at each load", List.of(table))));
      sections.add(new Section("ways", "Methods", ways(ledger)));
    }
    return new Page(
        "Ledger",
        Sentence.plural(ledger.entries().size(), "1 walk", "{} walks"),
        warnings(ledger),
        sections);
  }

  private static List<String> warnings(Ledger ledger) {
    List<String> warnings = new ArrayList<>();
    long ways = ledger.entries().stream().map(LedgerEntry::done).distinct().count();
    if (ways > 1) {
      warnings.add(
          Sentence.of(
              "These walks were measured by {} methods."
                  + " Compare only walks with the same letter under Method.",
              ways));
    }
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
    List<List<String>> rows = new ArrayList<>();
    for (LedgerEntry e : ledger.entries()) {
      Optional<LedgerEntry.Load> most = e.strongest();
      Optional<LedgerEntry.Load> worst = e.worstOfRated();
      rows.add(
          List.of(
              Visible.name(e.amplifier()) + marks(e),
              ledger.way(e),
              most.map(l -> PRINTER.quantity(l.total(e.walk()))).orElse("none"),
              most.map(l -> ResultWords.load(l.mode(), l.ohms()) + point(l)).orElse(""),
              worst.map(l -> ofRated(l.ratio())).orElse("no rating"),
              number(e.wattsPerFuseAmp(), 1),
              percent(e.bestEfficiency()),
              Visible.name(e.walk())));
    }
    return new Table(
        "Each walk at its strongest load; of rated at its worst load",
        List.of(
            Column.words("Amplifier"),
            Column.words("Method"),
            Column.numbers("Most power"),
            Column.words("Load"),
            Column.numbers("Of rated"),
            Column.numbers("W per fuse A"),
            Column.numbers("Efficiency"),
            Column.words("Walk")),
        rows);
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

  /** Says at what point a load was read if that is not the stated limit. */
  static String point(LedgerEntry.Load load) {
    return switch (load.criterion()) {
      case THD_LIMIT -> "";
      case CLIPPING_ONSET -> ", at clipping onset";
      case BELOW_LIMIT, ABOVE_LIMIT, NOT_KNOWN -> ", " + load.criterion().text();
    };
  }

  private static Optional<Table> best(Ledger ledger) {
    List<List<String>> rows = new ArrayList<>();
    for (BestAtLoad b : BestAtLoad.of(ledger)) {
      rows.add(
          List.of(
              ResultWords.load(b.mode(), b.ohms()) + point(b.load()),
              ledger.ways().get(b.done()),
              Visible.name(b.walk().amplifier()),
              PRINTER.quantity(b.load().total(b.walk().walk())),
              String.valueOf(b.compared()),
              b.note().orElse("")));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Table(
                "Most total power, among walks of one method without open doubts",
                List.of(
                    Column.words("Load"),
                    Column.words("Method"),
                    Column.words("Amplifier"),
                    Column.numbers("Power"),
                    Column.numbers("Compared"),
                    Column.words("Note")),
                rows));
  }

  private static List<Block> ways(Ledger ledger) {
    List<List<String>> rows = new ArrayList<>();
    Set<LedgerEntry.Done> shown = new HashSet<>();
    ledger.entries().forEach(e -> shown.add(e.done()));
    for (Map.Entry<LedgerEntry.Done, String> way : ledger.ways().entrySet()) {
      if (shown.contains(way.getKey())) {
        rows.add(wayRow(way.getValue(), way.getKey()));
      }
    }
    return List.of(new Table("How the walks were measured", wayColumns("Method"), rows));
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

  static List<String> wayRow(String letter, LedgerEntry.Done done) {
    String hash = done.contentHash();
    return List.of(
        letter,
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

  static String ofRated(OptionalDouble ratio) {
    return ratio.isPresent()
        ? PRINTER.value(100 * ratio.getAsDouble(), Unit.PERCENT, 3)
        : "unknown";
  }

  static String percent(OptionalDouble fraction) {
    return fraction.isPresent()
        ? String.format(Locale.ROOT, "%.1f %%", 100 * fraction.getAsDouble())
        : "unknown";
  }
}
