package loadwalk.report.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.journal.ByteSum;
import loadwalk.journal.Soundness;
import loadwalk.report.ledger.LedgerBuilder.Taken;
import org.junit.jupiter.api.Test;

/** Copies of one walk count once, and what is done about each is said. */
class CopiesTest {
  private final Map<String, byte[]> texts = new LinkedHashMap<>();
  private final List<Taken> taken = new ArrayList<>();

  /** Puts a journal of lines there, in which the walk has a name of its own. */
  private void journal(String file, String named, String... lines) {
    byte[] text = (String.join("\n", lines) + "\n").getBytes(UTF_8);
    LedgerEntry entry = Entries.entry(named, "Verrin V 4", Entries.FULL, lines.length);
    texts.put(file, text);
    taken.add(
        new Taken(
            file,
            ByteSum.of(text),
            new LedgerIndex.Kept(ByteSum.of(lines[0].getBytes(UTF_8)), "", entry)));
  }

  /** Puts the journal there whose records are not all that was kept, as far as can be told. */
  private void journal(Soundness.Standing standing, String file, String named, String... lines) {
    journal(file, named, lines);
    Taken sound = taken.remove(taken.size() - 1);
    LedgerEntry entry = sound.kept().entry().with(new Soundness(standing, "It is so."));
    taken.add(
        new Taken(file, sound.sum(), new LedgerIndex.Kept(sound.kept().opening(), "", entry)));
  }

  private Ledger ledger() {
    LedgerBuilder builder = new LedgerBuilder();
    taken.forEach(builder::takeKnown);
    return builder.ledger(List.of(), texts::get);
  }

  private static List<String> names(Ledger ledger) {
    return ledger.entries().stream().map(LedgerEntry::walk).sorted().toList();
  }

  @Test
  void walksOfTheSameName_openedAtOtherTimes_areNoCopies() {
    journal("a", "a", "opened 1", "read");
    journal("b", "a", "opened 2", "read");
    assertEquals(List.of("a", "b"), names(ledger()));
    assertEquals(
        List.of("b is the name of a journal in which the walk is called a; either name finds it."),
        ledger().notes());
  }

  @Test
  void sameBytes_countOnce_underTheNameThatTheWalkHas() {
    journal("a-copy", "walk", "opened", "read");
    journal("walk", "walk", "opened", "read");
    journal("zoo", "walk", "opened", "read");
    Ledger ledger = ledger();
    assertEquals(List.of("walk"), names(ledger));
    assertEquals(
        List.of(
            "a-copy is a copy of walk; they count as one walk.",
            "zoo is a copy of walk; they count as one walk."),
        ledger.notes());
    assertEquals(Optional.of("walk"), ledger.find("zoo").map(LedgerEntry::walk));
  }

  @Test
  void copyThatEndsEarlier_isTakenInByTheOneThatGoesOn() {
    journal("walk", "walk", "opened", "read");
    journal("later", "walk", "opened", "read", "read", "done");
    Ledger ledger = ledger();
    assertEquals(List.of("later"), names(ledger));
    assertEquals(4, ledger.entries().get(0).loads().get(0).channelWatts().get(0).value());
    assertEquals(
        List.of(
            "walk is a copy of later up to record 2; later goes on and is the one that counts.",
            "later is the name of a journal in which the walk is called walk; either name finds"
                + " it."),
        ledger.notes());
  }

  @Test
  void journalsThatPart_areBothShown_withTheRecordFromWhichTheyDiffer() {
    journal("walk", "walk", "opened", "read", "14 V", "done");
    journal("other", "walk", "opened", "read", "15 V");
    journal("early", "walk", "opened", "read", "15 V");
    Ledger ledger = ledger();
    assertEquals(List.of("early", "walk"), names(ledger));
    assertEquals(
        List.of(
            "other is a copy of early; they count as one walk.",
            "walk and early begin as one walk and differ from record 3 on; both are shown.",
            "early is the name of a journal in which the walk is called walk; either name finds"
                + " it."),
        ledger.notes());
  }

  @Test
  void sameBytes_countUnderTheNameOfTheOneWhoseEndIsKnown() {
    journal(Soundness.Standing.END_SPOILED, "walk", "walk", "opened", "read");
    journal("safe", "walk", "opened", "read");
    assertEquals(List.of("safe"), names(ledger()));
  }

  @Test
  void soundWalk_isNeverPartOfADamagedCopy() {
    journal(Soundness.Standing.DAMAGED, "spoiled", "walk", "opened", "read", "no record");
    journal("walk", "walk", "opened", "read");
    Ledger ledger = ledger();
    assertEquals(List.of("spoiled", "walk"), names(ledger));
    assertEquals(
        "walk and spoiled begin as one walk and differ from record 3 on; both are shown.",
        ledger.notes().get(0));
  }

  @Test
  void notes_standOnThePageAndInTheJson() {
    journal("walk", "walk", "opened");
    journal("copy", "walk", "opened");
    String note = "copy is a copy of walk; they count as one walk.";
    assertEquals(List.of(note), LedgerPage.of(ledger()).warnings());
    String json = LedgerJson.text(ledger().filtered("verrin"));
    assertEquals(1, json.split(note, -1).length - 1, json);
  }

  @Test
  void manyNotes_areCountedOnThePage_andAllInTheJson() {
    journal("a", "a", "opened");
    for (int i = 0; i < 10; i++) {
      journal("copy-" + i, "a", "opened");
    }
    List<String> warnings = LedgerPage.of(ledger()).warnings();
    assertEquals(9, warnings.size());
    assertEquals("2 more notes on journals are in the ledger's JSON.", warnings.get(8));
    assertEquals(11, LedgerJson.text(ledger()).split("copy of a", -1).length);
  }
}
