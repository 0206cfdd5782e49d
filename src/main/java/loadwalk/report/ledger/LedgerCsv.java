package loadwalk.report.ledger;

import java.time.Instant;
import java.util.OptionalDouble;
import loadwalk.journal.Soundness;
import loadwalk.report.page.CsvText;

/** Writes a ledger as CSV, one line for each load of each walk. */
public final class LedgerCsv {
  private LedgerCsv() {}

  /** Returns the whole text (RFC 4180), with its header; u is the standard uncertainty (k = 1). */
  public static String text(Ledger ledger) {
    CsvText csv = new CsvText();
    csv.row(
        "walk",
        "amplifier",
        "at",
        "practice",
        "finished",
        "openDoubts",
        "way",
        "sequence",
        "sha256",
        "toneHertz",
        "limitThdPercent",
        "supplyVoltsAsked",
        "fuseAmps",
        "mode",
        "ohms",
        "criterion",
        "watts",
        "wattsU",
        "totalWatts",
        "totalWattsU",
        "ratio",
        "verdict",
        "efficiency",
        "supplyVolts",
        "journal");
    for (LedgerEntry entry : ledger.entries()) {
      if (entry.loads().isEmpty()) {
        CsvText.Cells cells = walk(csv, ledger, entry);
        for (int i = 0; i < 11; i++) {
          cells.text("");
        }
        cells.text(entry.soundness().standing().word()).end();
      }
      entry.loads().forEach(load -> load(walk(csv, ledger, entry), load, entry.soundness()));
    }
    return csv.text();
  }

  private static CsvText.Cells walk(CsvText csv, Ledger ledger, LedgerEntry e) {
    return csv.cells()
        .text(e.walk())
        .text(e.amplifier())
        .text(Instant.ofEpochMilli(e.wallMillis()).toString())
        .text(e.practice() ? "yes" : "no")
        .text(e.finished() ? "yes" : "no")
        .number(e.openDoubts())
        .text(ledger.way(e))
        .text(e.done().sequence())
        .text(e.done().contentHash())
        .number(e.done().toneHertz())
        .number(e.done().limitThdPercent())
        .number(e.done().supplyVolts())
        .number(orNothing(e.fuseAmps()));
  }

  private static void load(CsvText.Cells cells, LedgerEntry.Load load, Soundness soundness) {
    cells
        .text(load.mode().word())
        .number(load.ohms())
        .text(load.criterion().word())
        .number(load.watts())
        .number(load.wattsU())
        .number(load.totalWatts())
        .number(load.totalU())
        .number(orNothing(load.ratio()))
        .text(load.verdict().map(v -> v.word()).orElse(""))
        .number(orNothing(load.efficiency()))
        .number(orNothing(load.supplyVolts()))
        .text(soundness.standing().word())
        .end();
  }

  /** Writes a missing number as an empty cell. */
  private static double orNothing(OptionalDouble value) {
    return value.orElse(Double.NaN);
  }
}
