package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import loadwalk.report.Hostile;
import loadwalk.report.ledger.LedgerBuilder.Taken;
import loadwalk.text.Visible;
import org.junit.jupiter.api.Test;

/** A ledger built journal by journal, from the index and by folding. */
class LedgerBuilderTest {
  private static final LedgerEntry ONE = Entries.entry("w-1", "Verrin V 4", Entries.FULL, 80);
  private static final LedgerEntry TWO = Entries.entry("w-2", "Tessaly T 1", Entries.FULL, 40);
  private static final LedgerEntry BAD = Entries.entry("w-3", "Brightmoor B 2", Entries.FULL, 30);

  private final LedgerBuilder builder = new LedgerBuilder();

  private static Taken taken(LedgerEntry entry) {
    String name = entry.walk();
    return new Taken(
        name,
        "sum of " + name,
        new LedgerIndex.Kept("opening of " + name, "end of " + name, entry));
  }

  private List<LedgerEntry> entries() {
    return builder.ledger(List.of(), journal -> new byte[0]).entries();
  }

  @Test
  void journals_knownAndFolded_areShownAndRemembered_andTheFoldedCounted() {
    builder.takeKnown(taken(ONE));
    assertEquals(0, builder.folded());
    builder.takeFolded(taken(TWO));
    assertEquals(1, builder.folded());
    assertEquals(List.of(ONE, TWO), entries());
    assertEquals(
        Map.of("sum of w-1", taken(ONE).kept(), "sum of w-2", taken(TWO).kept()),
        builder.index().kept());
  }

  @Test
  void damagedJournal_isShownButNotRemembered() {
    builder.takeKnown(taken(ONE));
    builder.takeDamaged(taken(BAD));
    assertEquals(List.of(ONE, BAD), entries());
    assertEquals(Map.of("sum of w-1", taken(ONE).kept()), builder.index().kept());
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

  @Test
  void journalsLeftOut_areNotedBeforeAllElse() {
    builder.takeKnown(new Taken("other", "s", taken(ONE).kept()));
    assertEquals(
        List.of(
            "x.jsonl is left out: it is a link.",
            "other is the name of a journal in which the walk is called w-1; either name finds"
                + " it."),
        builder.ledger(List.of("x.jsonl is left out: it is a link."), j -> new byte[0]).notes());
  }
}
