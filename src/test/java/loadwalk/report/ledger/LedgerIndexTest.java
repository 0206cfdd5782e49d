package loadwalk.report.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.result.Criterion;
import loadwalk.result.RatingComparison.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The index of a ledger: every value comes back, and what it does not know counts as nothing. */
class LedgerIndexTest {
  /** Entries in which each value takes each of its kinds: known, unknown, first and last word. */
  private static LedgerIndex index() {
    Map<String, LedgerIndex.Kept> kept = new LinkedHashMap<>();
    for (Optional<Boolean> rails :
        List.of(Optional.<Boolean>empty(), Optional.of(true), Optional.of(false))) {
      String name = "w-" + rails;
      LedgerEntry entry =
          new LedgerEntry(
              name,
              "Verrin \"V\" 4 \u202e",
              rails.isEmpty(),
              rails.isPresent(),
              kept.size(),
              1_773_480_600_123L + kept.size(),
              kept.size() == 1 ? Entries.RATED : Entries.FULL,
              rails.isPresent() ? OptionalDouble.of(62.5) : OptionalDouble.empty(),
              rails,
              loads());
      kept.put(name, new LedgerIndex.Kept(5_000_000_000L + kept.size(), 7 + kept.size(), entry));
    }
    return new LedgerIndex(kept);
  }

  private static List<LedgerEntry.Load> loads() {
    List<LedgerEntry.Load> loads = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      for (Criterion criterion : Criterion.values()) {
        for (Verdict verdict : Verdict.values()) {
          loads.add(load(mode, criterion, Optional.of(verdict), OptionalDouble.of(loads.size())));
        }
        loads.add(load(mode, criterion, Optional.empty(), OptionalDouble.empty()));
      }
    }
    return loads;
  }

  private static LedgerEntry.Load load(
      Mode mode, Criterion criterion, Optional<Verdict> verdict, OptionalDouble known) {
    OptionalDouble more =
        known.isPresent() ? OptionalDouble.of(known.getAsDouble() + 0.25) : OptionalDouble.empty();
    return new LedgerEntry.Load(
        mode, 0.5, criterion, 1.1, 2.2, 3.3, 4.4, known, verdict, more, known, more);
  }

  @Test
  void everyValue_comesBack() {
    assertEquals(index(), LedgerIndex.read(index().bytes()));
    assertEquals(LedgerIndex.empty(), LedgerIndex.read(LedgerIndex.empty().bytes()));
  }

  @ParameterizedTest
  @CsvSource({
    "loadwalk-ledger-index/2, loadwalk-ledger-index/1",
    "'[1,0.5,', '[-1,0.5,'",
    "'[1,0.5,', '[2,0.5,'",
    "'[1,0.5,', '[true,0.5,'",
    "'0.5,0,1.1', '0.5,3,1.1'",
    "'0.5,0,1.1', '0.5,-1,1.1'",
    "'0.5,0,1.1', '\"0.5\",0,1.1'",
    "'4.4,0.0,0,', '4.4,0.0,3,'",
    "'4.4,0.0,0,0.25,0.0,0.25]', '4.4,0.0,0,0.25,0.0,0.25,1]'",
    "'13.8,', '13.8,7,'",
    "'\"w-Optional[true]\",5000000001', '5000000001,5000000001'",
    "'8,\"w-Optional[true]\"', '8,null'"
  })
  void spoiltIndex_countsAsEmpty(String sound, String spoilt) {
    String text = new String(index().bytes(), UTF_8);
    String changed = text.replace(sound, spoilt);
    assertFalse(changed.equals(text), "nothing was spoilt");
    assertEquals(LedgerIndex.empty(), LedgerIndex.read(changed.getBytes(UTF_8)));
  }

  @Test
  void text_thatIsNoIndex_countsAsEmpty() {
    for (String text : List.of("", "{}", "[]", "[1]", "null", "[\"loadwalk-ledger-index/2\"]")) {
      assertEquals(LedgerIndex.empty(), LedgerIndex.read(text.getBytes(UTF_8)), text);
    }
  }
}
