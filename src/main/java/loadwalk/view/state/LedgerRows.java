package loadwalk.view.state;

import java.util.List;

/**
 * The ledger as its screen lists it.
 *
 * @param rows its walks in their order
 * @param order the order in words
 * @param sort the index of the order
 * @param filter the words each walk holds
 * @param told what is to be known first, such as journals that cannot be read
 */
public record LedgerRows(
    List<LedgerRow> rows, String order, int sort, String filter, List<String> told) {
  /** Copies the lists. */
  public LedgerRows {
    rows = List.copyOf(rows);
    told = List.copyOf(told);
  }
}
