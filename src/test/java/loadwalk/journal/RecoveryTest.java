package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.journal.Journals.HEAD;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loadwalk.journal.Recovered.Damaged;
import loadwalk.journal.Recovered.Damaged.Kind;
import loadwalk.journal.Recovered.Ending;
import loadwalk.journal.Recovered.Refused;
import loadwalk.journal.Recovered.TornTail;
import loadwalk.journal.Recovered.Whole;
import org.junit.jupiter.api.Test;

class RecoveryTest {
  private static final byte[] RUBBISH = text("rubbish\n");

  private static byte[] line(int seq) {
    return Journals.lines(bodies(seq)).get(seq - 1);
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
            for (Witness.Claim claim : Witness.Claim.values()) {
              used.merge(onlyRow(new Facts(head, next, after, start, claim)), 1, Integer::sum);
            }
          }
        }
      }
    }
    assertEquals(List.of(Row.values()), List.copyOf(used.keySet()), "a row that never matches");
    assertEquals(4 * 6 * 4 * 2 * 3, used.values().stream().mapToInt(Integer::intValue).sum());
  }

  private static Row onlyRow(Facts facts) {
    List<Row> rows = Arrays.stream(Row.values()).filter(row -> row.matches(facts)).toList();
    assertEquals(1, rows.size(), facts + " has rows " + rows);
    return rows.get(0);
  }

  @Test
  void read_ofNothing_isAWholeJournalWithoutRecords() {
    assertEquals(Whole.EMPTY, Recovery.read(new byte[0]));
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
  void read_ofAFirstLineCutOff_isTornWithoutRecords() {
    TornTail tail = assertInstanceOf(TornTail.class, Recovery.read(Arrays.copyOf(line(1), 30)));
    assertEquals(0, tail.soundBytes());
    byte[] withHole = line(1);
    Arrays.fill(withHole, 0, 16, (byte) 0);
    assertEquals(0, assertInstanceOf(TornTail.class, Recovery.read(withHole)).soundBytes());
  }

  @Test
  void read_ofSeveralSpoiledLinesAtTheEnd_isRuin() {
    assertEquals(Kind.RUIN, damage(join(of(bodies(2)), RUBBISH), 2, 0));
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
  void read_ofARecordOfAnotherJournal_isForeign() {
    List<String> others = new ArrayList<>(bodies(6));
    others.set(1, "{\"other\":true}");
    byte[] third = Journals.lines(others).get(2);
    assertEquals(Kind.FOREIGN, damage(join(of(bodies(2)), third, line(4)), 2, 2));
    assertEquals(Kind.FOREIGN, damage(join(of(bodies(2)), third), 2, 1));
    byte[] unchained = Framing.line(3, bodies(3).get(2));
    assertEquals(Kind.FOREIGN, damage(join(of(bodies(2)), unchained), 2, 1));
    byte[] chained = Journals.lines(bodies(3)).get(2);
    Damaged old = (Damaged) Recovery.read(join(of(Journals.oldBodies(2)), chained));
    assertEquals(Kind.FOREIGN, old.kind());
  }

  @Test
  void read_cutAtEveryRecord_isMissingAsManyAsTheWitnessKnows() {
    for (List<String> kept : List.of(bodies(9), Journals.oldBodies(9))) {
      Witness witness = Journals.witness(kept);
      for (int left = 0; left < 9; left++) {
        byte[] shorter = of(kept.subList(0, left));
        Damaged cut = assertInstanceOf(Damaged.class, Recovery.read(shorter, witness));
        assertEquals(Kind.MISSING, cut.kind());
        int missing = 9 - left;
        String said =
            missing == 1 ? "1 record is missing at its end" : missing + " records are missing at";
        assertTrue(cut.why().contains(said), cut.why());
        assertEquals(Ending.UNKNOWN, Recovery.read(shorter).ending());
      }
      assertEquals(
          Ending.KNOWN, assertInstanceOf(Whole.class, Recovery.read(of(kept), witness)).ending());
    }
  }

  @Test
  void read_cutInsideARecordThatTheWitnessKnows_isLostAndNotTorn() {
    byte[] bytes = of(bodies(4));
    for (int cut = of(bodies(3)).length + 1; cut < bytes.length; cut++) {
      byte[] shorter = Arrays.copyOf(bytes, cut);
      assertEquals(
          Kind.LOST, ((Damaged) Recovery.read(shorter, Journals.witness(bodies(4)))).kind());
      Recovered torn = Recovery.read(shorter, Journals.witness(bodies(3)));
      assertEquals(Ending.KNOWN, assertInstanceOf(TornTail.class, torn).ending());
    }
  }

  @Test
  void read_ofAnotherRecordThanTheWitnessKnows_isExchanged() {
    List<String> others = new ArrayList<>(bodies(4));
    others.set(3, "{\"other\":true}");
    Damaged damaged = (Damaged) Recovery.read(of(others), Journals.witness(bodies(4)));
    assertEquals(Kind.EXCHANGED, damaged.kind());
    assertTrue(damaged.why().contains("its record 4 is not the one that was kept"), damaged.why());
  }

  @Test
  void read_withAWitnessThatSaysNothingOfThisJournal_isAsWithoutOne() {
    List<String> another = List.of(HEAD.replace("full", "another"), "{}", "{}", "{}");
    for (Witness witness : List.of(Journals.witness(another), Journals.witness(bodies(1)))) {
      Whole whole = assertInstanceOf(Whole.class, Recovery.read(of(bodies(3)), witness));
      assertEquals(Ending.UNKNOWN, whole.ending());
    }
    assertEquals(Ending.WITNESS_SPOILED, Recovery.read(of(bodies(3)), Witness.SPOILED).ending());
  }

  @Test
  void read_ofALastLineThatIsThereAndDoesNotCheck_isDamagedAndNotTorn() {
    for (List<String> kept : List.of(bodies(3), Journals.oldBodies(3))) {
      byte[] bytes = of(kept);
      int from = of(kept.subList(0, 2)).length;
      for (int bit = from * 8; bit < bytes.length * 8; bit++) {
        bytes[bit / 8] ^= (byte) (1 << bit % 8);
        if (bytes[bit / 8] != 0) {
          assertInstanceOf(Damaged.class, Recovery.read(bytes), kept.get(0) + " bit " + bit);
        }
        bytes[bit / 8] ^= (byte) (1 << bit % 8);
      }
    }
  }

  @Test
  void read_ofMoreZerosThanARecordCouldLeave_isDamagedAndNotTorn() {
    byte[] sound = of(bodies(2));
    assertInstanceOf(TornTail.class, Recovery.read(join(sound, new byte[4096])));
    assertEquals(Kind.RUIN, damage(join(sound, new byte[4097]), 2, 0));
    byte[] longest = of(List.of(HEAD, "{\"note\":\"" + "x".repeat(5000) + "\"}"));
    assertInstanceOf(TornTail.class, Recovery.read(join(longest, new byte[10_000])));
    assertInstanceOf(Damaged.class, Recovery.read(join(longest, new byte[10_500])));
  }

  @Test
  void read_ofATailThatNoRecordBeginsWith_isDamagedAndNotTorn() {
    byte[] sound = of(bodies(2));
    String due = new String(Arrays.copyOf(line(3), 60), UTF_8);
    assertInstanceOf(TornTail.class, Recovery.read(join(sound, text(due))));
    for (String tail :
        List.of(
            "half a line",
            due.replace("\"seq\":3", "\"seq\":4"),
            due.replace("after", "aftre"),
            due.replaceFirst("\"after\":\"[0-9a-f]{8}\",", ""),
            due.replaceFirst("\"after\":\"[0-9a-f]{8}", "\"after\":\"00000000"),
            due.replaceFirst("\"crc\":\"[0-9a-f]{8}", "\"crc\":\"0000000G"),
            due.replaceFirst("\"crc\":\"[0-9a-f]{8}", "\"crc\":\"0000000A"),
            due.replace("\"body\":{", "\"body\":["),
            due.replace("\"body\"", "\"bodi\""),
            due.replace("typed", "ty\tped"),
            due + "\n" + due)) {
      assertEquals(Kind.RUIN, damage(join(sound, text(tail)), 2, 0), tail);
    }
  }

  @Test
  void read_ofEveryBeginningOfEveryRecordOfAWalk_isTorn() throws IOException {
    for (String name : List.of("v1", "walk-v1", "v2", "walk-v2")) {
      try (InputStream file = getClass().getResourceAsStream("/journals/" + name + ".jsonl")) {
        byte[] bytes = file.readAllBytes();
        for (int cut = 1; cut < bytes.length; cut++) {
          if (bytes[cut - 1] != '\n') {
            Recovered torn = Recovery.read(Arrays.copyOf(bytes, cut));
            assertInstanceOf(TornTail.class, torn, name + " cut at " + cut);
          }
        }
      }
    }
  }

  @Test
  void read_ofALineFeedThatIsMissingOrAnother_isTornOrDamaged() {
    byte[] bytes = of(bodies(3));
    assertInstanceOf(TornTail.class, Recovery.read(Arrays.copyOf(bytes, bytes.length - 1)));
    for (String end : List.of("*", "J", " ", "}", "\r", "\u000b")) {
      byte[] other = join(Arrays.copyOf(bytes, bytes.length - 1), text(end));
      assertEquals(Kind.RUIN, damage(other, 2, 0), end);
    }
  }

  @Test
  void read_ofLinesThatEndAsWindowsWritesThem_givesEveryRecordAndSaysSo() {
    for (List<String> kept : List.of(bodies(4), Journals.oldBodies(4))) {
      byte[] windows = text(new String(of(kept), UTF_8).replace("\n", "\r\n"));
      Recovered read = Recovery.read(windows, Journals.witness(kept));
      assertEquals(kept, bodiesOf(read));
      assertEquals(Ending.KNOWN, read.ending());
      assertTrue(read.told().orElseThrow().startsWith("The lines of the journal end as Windows"));
      assertTrue(read.writable().isEmpty() && !read.isDamaged());
    }
  }

  @Test
  void read_ofLinesOfWhichSomeEndAsWindowsWritesThem_isDamaged() {
    String all = new String(of(bodies(4)), UTF_8);
    for (String some : List.of(all.replaceFirst("\n", "\r\n"), all.replaceFirst("\n$", "\r\n"))) {
      assertTrue(Recovery.read(text(some)).isDamaged(), some);
    }
  }

  @Test
  void read_ofANewerFormat_isRefusedInAPlainSentence() {
    byte[] bytes =
        join(Framing.line(1, "{\"format\":\"loadwalk-journal/3\"}"), text("anything else\nat all"));
    assertEquals(
        new Refused(
            true,
            "A newer Loadwalk wrote this journal, in format loadwalk-journal/3. This one reads up"
                + " to loadwalk-journal/2."),
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
  void read_ofTheFrozenJournals_givesTheSameRecordsForEver() throws IOException {
    for (int version = 1; version <= 2; version++) {
      try (InputStream file = getClass().getResourceAsStream("/journals/v" + version + ".jsonl")) {
        byte[] bytes = file.readAllBytes();
        Whole whole = assertInstanceOf(Whole.class, Recovery.read(bytes));
        assertArrayEquals(bytes, of(bodiesOf(whole)), "the writer must still write the same");
        assertEquals(
            List.of(
                "{\"format\":\"loadwalk-journal/" + version + "\",\"walk\":\"frozen\"}",
                "{\"event\":\"typed\",\"reading\":\"outputVolts\",\"text\":\"13.4 V\"}",
                "{}",
                "{\"note\":\"Ω µ é 𝄞 \\\"quoted\\\" \\\\"
                    + " \\u2028\",\"nested\":{\"a\":[1,2.5e-3,null,true]}}",
                "{ \"spaces\" : \"kept\" }"),
            bodiesOf(whole));
      }
    }
  }
}
