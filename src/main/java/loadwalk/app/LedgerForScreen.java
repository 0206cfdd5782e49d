package loadwalk.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.app.loop.Background;
import loadwalk.app.store.DiskFaults;
import loadwalk.cli.KeptWalks;
import loadwalk.cli.LedgerReading;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.ledger.ComparisonPage;
import loadwalk.report.ledger.Ledger;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.ledger.LedgerSort;
import loadwalk.report.ledger.LoadWords;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.text.Sentence;
import loadwalk.view.ProgramEvent;
import loadwalk.view.state.LedgerRow;
import loadwalk.view.state.LedgerRows;
import loadwalk.walk.Effect;

/**
 * Reads the ledger for its screen.
 *
 * @param kept where the walks are
 * @param ascii whether only plain ASCII may be used
 */
record LedgerForScreen(KeptWalks kept, boolean ascii) {
  private static final int COLUMNS = 78;
  private static final String UNKNOWN = "?";

  /** Returns the rows in an order and under a filter. */
  ProgramEvent show(Effect.ShowLedger asked, Background.Task task) {
    LedgerSort[] orders = LedgerSort.values();
    int index = Math.floorMod(asked.sort(), orders.length);
    try {
      LedgerReading.Read read = read(task);
      if (task.isStopped()) {
        return stopped(read);
      }
      Ledger all = read.ledger().sorted(orders[index]);
      Ledger shown = asked.filter().isBlank() ? all : all.filtered(asked.filter());
      Map<String, String> places = shown.places();
      List<LedgerRow> rows = shown.entries().stream().map(e -> row(shown, places, e)).toList();
      List<String> told = new ArrayList<>(read.unreadable());
      told.addAll(LoadWords.unranked(shown.entries()));
      told.addAll(all.notes());
      return new ProgramEvent.LedgerReady(
          new LedgerRows(rows, orders[index].word(), index, asked.filter(), told));
    } catch (IOException fault) {
      return new ProgramEvent.Told(DiskFaults.sentence(fault));
    }
  }

  /** Returns the comparison of marked walks with its charts. */
  ProgramEvent compare(Effect.Compare asked, Background.Task task) {
    try {
      LedgerReading.Read read = read(task);
      if (task.isStopped()) {
        return stopped(read);
      }
      Ledger all = read.ledger();
      List<LedgerEntry> walks = new ArrayList<>();
      asked.walks().forEach(name -> all.find(name).ifPresent(walks::add));
      if (walks.size() < 2 || walks.size() > ComparisonPage.MOST) {
        return new ProgramEvent.Told(
            Sentence.of("Mark 2 to {} walks to compare.", ComparisonPage.MOST));
      }
      Page page = ComparisonPage.of(walks);
      return new ProgramEvent.ComparisonReady(
          new ProgramEvent.TextReady(
              "Comparison", TextPage.lines(page, COLUMNS, ascii), page.charts()));
    } catch (IOException fault) {
      return new ProgramEvent.Told(DiskFaults.sentence(fault));
    }
  }

  private LedgerReading.Read read(Background.Task task) throws IOException {
    return LedgerReading.of(
        kept, said -> task.tell(Sentence.of("{} Esc stops.", said)), task::isStopped);
  }

  private static ProgramEvent stopped(LedgerReading.Read read) {
    return new ProgramEvent.Told(
        Sentence.plural(
            read.folded(),
            "Stopped. The walk just read need not be read again.",
            "Stopped. The {} walks just read need not be read again."));
  }

  private LedgerRow row(Ledger ledger, Map<String, String> places, LedgerEntry e) {
    Optional<LedgerEntry.Load> most = e.strongest();
    return new LedgerRow(
        e.walk(),
        e.soundness().mark().map(mark -> mark + ": ").orElse("")
            + (e.practice() ? "practice: " : "")
            + e.amplifier(),
        places.getOrDefault(e.walk(), "none"),
        most.map(load -> LoadWords.before(load) + power(load)).orElse("nothing yet"),
        percent(e.worstOfRated().map(LedgerEntry.Load::ratio).orElse(OptionalDouble.empty())),
        oneDecimal(e.wattsPerFuseAmp()),
        percent(e.bestEfficiency()),
        LoadWords.standing(ledger, e));
  }

  private String power(LedgerEntry.Load load) {
    Printer printer = new Printer(ascii);
    return Sentence.of(
        "{} {} {}",
        printer.value(load.watts(), Unit.WATT, 4),
        load.mode().word(),
        printer.exact(load.ohms(), Unit.OHM));
  }

  private static String percent(OptionalDouble fraction) {
    return fraction.isPresent()
        ? String.format(Locale.ROOT, "%.0f %%", 100 * fraction.getAsDouble())
        : UNKNOWN;
  }

  private static String oneDecimal(OptionalDouble value) {
    return value.isPresent() ? String.format(Locale.ROOT, "%.1f", value.getAsDouble()) : UNKNOWN;
  }
}
