package loadwalk.report.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.report.page.CsvText;
import loadwalk.result.Conditions;
import loadwalk.result.Mark;
import loadwalk.result.ReadBy;

/** Writes a ledger as CSV, one line for each load of each walk. */
public final class LedgerCsv {
  private static final List<String> COLUMNS =
      List.of(
          "walk",
          "amplifier",
          "at",
          "practice",
          "finished",
          "journal",
          "openDoubts",
          "rank",
          "sequence",
          "sha256",
          "toneHertzAsked",
          "limitThdPercent",
          "supplyVoltsAsked",
          "fuseAmps",
          "mode",
          "ohms",
          "ranked",
          "marks",
          "criterion",
          "criterionSaid",
          "thdPercent",
          "hertz",
          "supplyVolts",
          "ohmsRead",
          "warm",
          "readBy",
          "watts",
          "wattsU",
          "otherWatts",
          "totalWatts",
          "totalWattsU",
          "totalWattsK",
          "ratio",
          "verdict",
          "efficiency");

  private static final int WALK_COLUMNS = COLUMNS.indexOf("mode");

  private LedgerCsv() {}

  /** Returns the whole text (RFC 4180), with its header; u is the standard uncertainty (k = 1). */
  public static String text(Ledger ledger) {
    CsvText csv = new CsvText();
    csv.row(COLUMNS.toArray(String[]::new));
    Map<String, String> places = ledger.places();
    for (LedgerEntry entry : ledger.entries()) {
      if (entry.loads().isEmpty()) {
        CsvText.Cells cells = walk(csv, places, entry);
        for (int i = WALK_COLUMNS; i < COLUMNS.size(); i++) {
          cells.text("");
        }
        cells.end();
      }
      entry.loads().forEach(load -> load(walk(csv, places, entry), entry, load));
    }
    return csv.text();
  }

  private static CsvText.Cells walk(CsvText csv, Map<String, String> places, LedgerEntry e) {
    return csv.cells()
        .text(e.walk())
        .text(e.amplifier())
        .text(Instant.ofEpochMilli(e.wallMillis()).toString())
        .text(yesNo(e.practice()))
        .text(yesNo(e.finished()))
        .text(e.soundness().standing().word())
        .number(e.openDoubts())
        .text(places.getOrDefault(e.walk(), ""))
        .text(e.done().sequence())
        .text(e.done().contentHash())
        .number(e.done().toneHertz())
        .number(e.done().limitThdPercent())
        .number(e.done().supplyVolts())
        .number(orNothing(e.fuseAmps()));
  }

  private static void load(CsvText.Cells cells, LedgerEntry walk, LedgerEntry.Load load) {
    Conditions read = load.conditions();
    cells
        .text(load.mode().word())
        .number(load.ohms())
        .text(yesNo(walk.ranks(load)))
        .text(String.join(" ", load.marks().stream().map(Mark::word).toList()))
        .text(load.criterion().word())
        .text(yesNo(read.said()))
        .number(orNothing(read.thdPercent()))
        .number(orNothing(read.hertz()))
        .number(orNothing(read.supplyVolts()))
        .number(orNothing(read.ohmsRead()))
        .text(read.around().warm().map(LedgerCsv::yesNo).orElse(""))
        .text(read.around().readBy().map(ReadBy::word).orElse(""))
        .number(load.channelWatts().get(0).value())
        .number(load.channelWatts().get(0).u())
        .number(load.channelWatts().size() > 1 ? load.channelWatts().get(1).value() : Double.NaN)
        .number(load.totalWatts().value())
        .number(load.totalWatts().u())
        .number(load.total("").coverageFactor())
        .number(orNothing(load.ratio()))
        .text(load.verdict().map(v -> v.word()).orElse(""))
        .number(orNothing(load.efficiency()))
        .end();
  }

  private static String yesNo(boolean yes) {
    return yes ? "yes" : "no";
  }

  /** Writes a missing number as an empty cell. */
  private static double orNothing(OptionalDouble value) {
    return value.orElse(Double.NaN);
  }
}
