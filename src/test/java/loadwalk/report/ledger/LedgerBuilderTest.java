package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loadwalk.report.Hostile;
import loadwalk.text.Visible;
import org.junit.jupiter.api.Test;

/** A ledger built journal by journal, from the index and by folding. */
class LedgerBuilderTest {
  private static final LedgerEntry ONE = Entries.entry("w-1", "Verrin V 4", Entries.FULL, 80);
  private static final LedgerEntry TWO = Entries.entry("w-2", "Tessaly T 1", Entries.FULL, 40);
  private static final LedgerEntry BAD = Entries.entry("w-3", "Brightmoor B 2", Entries.FULL, 30);

  private final LedgerBuilder builder =
      new LedgerBuilder(new LedgerIndex(Map.of("w-1.jsonl", new LedgerIndex.Kept(10, 20, ONE))));

  @Test
  void journal_thatHasNotChanged_isTakenFromTheIndex() {
    assertTrue(builder.takeKnown("w-1.jsonl", 10, 20));
    assertEquals(0, builder.folded());
    assertEquals(List.of(ONE), builder.ledger().entries());
  }

  @Test
  void journal_ofAnotherSizeTimeOrName_isFoldedAgain() {
    assertFalse(builder.takeKnown("w-1.jsonl", 11, 20));
    assertFalse(builder.takeKnown("w-1.jsonl", 10, 21));
    assertFalse(builder.takeKnown("w-2.jsonl", 10, 20));
    assertEquals(List.of(), builder.ledger().entries());
    builder.takeFolded("w-2.jsonl", 5, 6, TWO);
    assertEquals(1, builder.folded());
    assertEquals(List.of(TWO), builder.ledger().entries());
    assertEquals(Map.of("w-2.jsonl", new LedgerIndex.Kept(5, 6, TWO)), builder.index().kept());
  }

  @Test
  void damagedJournal_isShownButNotRemembered() {
    builder.takeKnown("w-1.jsonl", 10, 20);
    builder.takeDamaged(BAD);
    assertEquals(List.of(ONE, BAD), builder.ledger().entries());
    assertEquals(Map.of("w-1.jsonl", new LedgerIndex.Kept(10, 20, ONE)), builder.index().kept());
  }

  @Test
  void unreadableJournal_isNamedWithItsReason_andSteersNothing() {
    builder.cannotRead("w-9.jsonl", "a record is cut");
    builder.cannotRead(Hostile.STEERING, Hostile.TURNING);
    assertEquals(
        List.of(
            "w-9.jsonl: a record is cut",
            Visible.name(Hostile.STEERING) + ": " + Visible.sentence(Hostile.TURNING)),
        builder.unreadable());
  }
}
