package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.journal.Journals.bodies;
import static loadwalk.journal.Journals.bodiesOf;
import static loadwalk.journal.Journals.join;
import static loadwalk.journal.Journals.of;
import static loadwalk.journal.Journals.text;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loadwalk.journal.Recovered.Damaged;
import loadwalk.journal.Recovered.Damaged.Kind;
import loadwalk.journal.Recovered.Refused;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Whole;
import org.junit.jupiter.api.Test;

class RecoveryTest {
  private static final byte[] RUBBISH = text("rubbish\n");

  private static byte[] line(int seq) {
    return Framing.line(seq, bodies(Math.max(seq, 1)).get(seq - 1));
  }

  private static Kind damage(byte[] bytes, int recordsBefore, int recordsBeyond) {
    Damaged damaged = assertInstanceOf(Damaged.class, Recovery.read(bytes));
    assertEquals(bodies(recordsBefore), bodiesOf(damaged));
    assertEquals(recordsBeyond, damaged.beyond().size());
    assertEquals(bytes.length, damaged.endByte());
    assertTrue(damaged.why().contains("byte " + damaged.soundBytes()), damaged.why());
    return damaged.kind();
  }

  @Test
  void table_forEveryCombinationOfFacts_hasExactlyOneRow() {
    Map<Row, Integer> used = new EnumMap<>(Row.class);
    for (Facts.Head head : Facts.Head.values()) {
      for (Facts.Next next : Facts.Next.values()) {
        for (Facts.After after : Facts.After.values()) {
          for (Facts.Start start : Facts.Start.values()) {
            Facts facts = new Facts(head, next, after, start);
            List<Row> rows = Arrays.stream(Row.values()).filter(row -> row.matches(facts)).toList();
            assertEquals(1, rows.size(), facts + " has rows " + rows);
            used.merge(rows.get(0), 1, Integer::sum);
          }
        }
      }
    }
    assertEquals(List.of(Row.values()), List.copyOf(used.keySet()), "a row that never matches");
    assertEquals(128, used.values().stream().mapToInt(Integer::intValue).sum());
  }

  @Test
  void read_ofNothing_isAWholeJournalWithoutRecords() {
    assertEquals(new Whole(List.of(), 0), Recovery.read(new byte[0]));
  }

  @Test
  void read_ofAGoodJournal_givesEveryBodyAsWritten() {
    byte[] bytes = of(bodies(9));
    Whole whole = assertInstanceOf(Whole.class, Recovery.read(bytes));
    assertEquals(bodies(9), bodiesOf(whole));
    assertEquals(bytes.length, whole.soundBytes());
    assertTrue(whole.told().isEmpty());
  }

  @Test
  void read_cutAtEveryByte_keepsEveryLineThatEndsBeforeTheCut() {
    byte[] bytes = of(bodies(6));
    for (int cut = 0; cut <= bytes.length; cut++) {
      byte[] shorter = Arrays.copyOf(bytes, cut);
      int lines = (int) new String(shorter, UTF_8).chars().filter(c -> c == '\n').count();
      boolean clean = cut == 0 || shorter[cut - 1] == '\n';
      Recovered recovered = Recovery.read(shorter);
      assertEquals(bodies(6).subList(0, lines), bodiesOf(recovered), "cut at " + cut);
      assertEquals(clean ? Whole.class : TornTail.class, recovered.getClass(), "cut at " + cut);
      assertEquals(of(bodies(6).subList(0, lines)).length, recovered.soundBytes());
    }
  }

  @Test
  void read_withEveryByteChangedToEveryValue_neverGivesAChangedRecord() {
    byte[] bytes = of(bodies(3));
    int detected = 0;
    for (int at = 0; at < bytes.length; at++) {
      byte original = bytes[at];
      int hit =
          (int) new String(Arrays.copyOf(bytes, at), UTF_8).chars().filter(c -> c == 10).count();
      for (int value = 0; value < 256; value++) {
        if ((byte) value == original) {
          continue;
        }
        bytes[at] = (byte) value;
        Recovered recovered = Recovery.read(bytes);
        String where = "byte " + at + " set to " + value;
        assertFalse(recovered instanceof Whole, where);
        assertTrue(recovered.told().isPresent(), where);
        if (!(recovered instanceof Refused)) {
          assertEquals(bodies(3).subList(0, hit), bodiesOf(recovered), where);
        }
        detected++;
      }
      bytes[at] = original;
    }
    assertEquals(bytes.length * 255, detected);
  }

  @Test
  void read_ofATornTail_saysWhereAndHowMuch() {
    byte[] sound = of(bodies(2));
    byte[] torn = join(sound, Arrays.copyOf(line(3), 20));
    TornTail tail = assertInstanceOf(TornTail.class, Recovery.read(torn));
    assertEquals(sound.length, tail.soundBytes());
    assertEquals(sound.length + 20, tail.endByte());
    assertEquals(
        "The last line of the journal was cut off. 20 bytes after record 2, from byte "
            + sound.length
            + ", are not used.",
        tail.why());
  }

  @Test
  void read_ofATailOfZeros_isTorn() {
    assertInstanceOf(TornTail.class, Recovery.read(join(of(bodies(2)), new byte[4096])));
  }

  @Test
  void read_ofASpoiledLastLine_isTornAndSaidDifferently() {
    TornTail tail = assertInstanceOf(TornTail.class, Recovery.read(join(of(bodies(2)), RUBBISH)));
    assertTrue(tail.why().contains("does not check"), tail.why());
  }

  @Test
  void read_ofAFirstLineCutOff_isTornWithoutRecords() {
    TornTail tail = assertInstanceOf(TornTail.class, Recovery.read(Arrays.copyOf(line(1), 30)));
    assertEquals(0, tail.soundBytes());
    byte[] withHole = line(1);
    Arrays.fill(withHole, 0, 16, (byte) 0);
    assertEquals(0, assertInstanceOf(TornTail.class, Recovery.read(withHole)).soundBytes());
  }

  @Test
  void read_ofSeveralSpoiledLinesAtTheEnd_isRuin() {
    assertEquals(Kind.RUIN, damage(join(of(bodies(2)), RUBBISH, RUBBISH), 2, 0));
    byte[] birth = join(Arrays.copyOf(line(1), 30), RUBBISH, RUBBISH);
    assertEquals(Kind.RUIN, damage(birth, 0, 0));
  }

  @Test
  void read_ofASpoiledLineInTheMiddle_isAHole() {
    assertEquals(Kind.HOLE, damage(join(of(bodies(2)), RUBBISH, line(3), line(4)), 2, 2));
    assertEquals(Kind.HOLE, damage(join(of(bodies(2)), RUBBISH, line(4), RUBBISH), 2, 1));
    assertEquals(Kind.HOLE, damage(join(RUBBISH, line(2), line(3)), 0, 2));
  }

  @Test
  void read_ofARecordThatStandsTwice_isRepeated() {
    assertEquals(Kind.REPEATED, damage(join(of(bodies(3)), line(3)), 3, 1));
    assertEquals(Kind.REPEATED, damage(join(of(bodies(3)), line(2), line(4)), 3, 2));
    assertEquals(Kind.REPEATED, damage(join(of(bodies(3)), line(1)), 3, 1));
  }

  @Test
  void read_ofAMissingRecord_isAGap() {
    assertEquals(Kind.GAP, damage(join(of(bodies(2)), line(4), line(5)), 2, 2));
    assertEquals(Kind.GAP, damage(join(of(bodies(2)), line(4)), 2, 1));
    assertEquals(Kind.GAP, damage(line(2), 0, 1));
    assertEquals(Kind.GAP, damage(join(of(bodies(2)), line(4), RUBBISH), 2, 1));
  }

  @Test
  void read_ofSwappedRecords_isReordered() {
    assertEquals(Kind.REORDERED, damage(join(of(bodies(2)), line(4), line(3)), 2, 2));
    assertEquals(Kind.REORDERED, damage(join(line(2), line(1)), 0, 2));
  }

  @Test
  void read_ofANewerFormat_isRefusedInAPlainSentence() {
    byte[] bytes =
        join(Framing.line(1, "{\"format\":\"loadwalk-journal/2\"}"), text("anything else\nat all"));
    assertEquals(
        new Refused(
            true,
            "A newer Loadwalk wrote this journal, in format loadwalk-journal/2. This one reads up"
                + " to loadwalk-journal/1."),
        Recovery.read(bytes));
    assertTrue(Recovery.read(bytes).told().orElseThrow().contains("newer Loadwalk"));
  }

  @Test
  void read_ofWhatIsNoJournal_isRefused() {
    Refused strange = new Refused(false, "This file is not a Loadwalk journal.");
    assertEquals(strange, Recovery.read(text("hello")));
    assertEquals(strange, Recovery.read(text("hello\nworld\n")));
    assertEquals(strange, Recovery.read(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}));
    assertEquals(strange, Recovery.read(Framing.line(1, "{}")));
    assertEquals(strange, Recovery.read(Framing.line(1, "{\"format\":1}")));
    assertEquals(strange, Recovery.read(Framing.line(1, "{\"format\":\"loadwalk-journal/0\"}")));
    assertEquals(strange, Recovery.read(Framing.line(1, "{\"format\":\"loadwalk-bench/1\"}")));
    assertEquals(
        strange, Recovery.read(Framing.line(1, "{\"a\":{\"format\":\"loadwalk-journal/1\"}}")));
  }

  @Test
  void read_ofTheFrozenVersionOneJournal_givesTheSameRecordsForEver() throws IOException {
    try (InputStream file = getClass().getResourceAsStream("/journals/v1.jsonl")) {
      byte[] bytes = file.readAllBytes();
      Whole whole = assertInstanceOf(Whole.class, Recovery.read(bytes));
      assertArrayEquals(bytes, of(bodiesOf(whole)), "the writer must still write the same");
      assertEquals(
          List.of(
              "{\"format\":\"loadwalk-journal/1\",\"walk\":\"frozen\"}",
              "{\"event\":\"typed\",\"reading\":\"outputVolts\",\"text\":\"13.4 V\"}",
              "{}",
              "{\"note\":\"Ω µ é 𝄞 \\\"quoted\\\" \\\\"
                  + " \\u2028\",\"nested\":{\"a\":[1,2.5e-3,null,true]}}",
              "{ \"spaces\" : \"kept\" }"),
          bodiesOf(whole));
    }
  }
}
