package loadwalk.view.state;

import java.util.List;

/**
 * The ledger as its screen lists it.
 *
 * @param rows its walks in their order
 * @param order the order in words
 * @param sort the index of the order
 * @param filter the words each walk holds
 */
public record LedgerRows(List<LedgerRow> rows, String order, int sort, String filter) {
  /** Copies the rows. */
  public LedgerRows {
    rows = List.copyOf(rows);
  }
}
