package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.journal.Journals.bodies;
import static loadwalk.journal.Journals.bodiesOf;
import static loadwalk.journal.Journals.of;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import loadwalk.journal.KeepResult.Kept;
import loadwalk.journal.KeepResult.NotKept;
import loadwalk.journal.Recovered.Whole;
import loadwalk.journal.Recovered.Writable;
import loadwalk.journal.SimulatedDisk.Meets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class JournalWriterTest {
  private static final Map<Meets, FaultKind> TROUBLES =
      Map.of(
          Meets.DISK_FULL, FaultKind.FULL,
          Meets.IO_ERROR, FaultKind.BROKEN,
          Meets.READ_ONLY, FaultKind.READ_ONLY,
          Meets.GONE, FaultKind.GONE);

  private final KeptWitness witness = new KeptWitness();
  private final SimulatedDisk disk = new SimulatedDisk(20260101);
  private final JournalWriter writer = JournalWriter.after(disk, witness, Whole.EMPTY);

  private void keep(List<String> bodies) {
    bodies.forEach(body -> assertInstanceOf(Kept.class, writer.append(body)));
  }

  @Test
  void append_ofEveryBody_isForcedBeforeItIsCalledKept() {
    List<String> bodies = bodies(5);
    for (int i = 0; i < 5; i++) {
      assertEquals(new Kept(i + 1), writer.append(bodies.get(i)));
      assertArrayEquals(of(bodies.subList(0, i + 1)), disk.platter());
    }
    assertEquals(5, writer.lastSeq());
  }

  @Test
  void append_ofABodyThatCannotBeFramed_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> writer.append("no object"));
  }

  @ParameterizedTest
  @EnumSource(names = {"DISK_FULL", "IO_ERROR", "READ_ONLY", "GONE"})
  void append_withTheNthOperationFailing_keepsEveryRecordOnceInTheEnd(Meets met) {
    int failures = 0;
    for (int n = 1; n <= 16; n++) {
      int failing = n;
      SimulatedDisk failingDisk = new SimulatedDisk(n);
      failingDisk.meets(i -> i == failing ? met : Meets.NOTHING);
      JournalWriter failingWriter =
          JournalWriter.after(failingDisk, WitnessFile.NOWHERE, Whole.EMPTY);
      for (String body : bodies(6)) {
        KeepResult result = failingWriter.append(body);
        while (result instanceof NotKept refused) {
          assertTrue(++failures < 1000, "the record is never kept, operation " + n);
          assertEquals(TROUBLES.get(met), refused.kind(), "operation " + n);
          result = failingWriter.append(body);
        }
      }
      assertArrayEquals(of(bodies(6)), failingDisk.platter(), met + " at operation " + n);
    }
    assertTrue(failures >= 14, "failures: " + failures);
  }

  @ParameterizedTest
  @EnumSource(names = {"DISK_FULL", "IO_ERROR", "READ_ONLY", "GONE"})
  void append_whileEverythingFails_keepsNothingAndGoesOnAfterwards(Meets met) throws IOException {
    for (int from = 1; from <= 7; from++) {
      int start = from;
      SimulatedDisk failingDisk = new SimulatedDisk(from);
      JournalWriter failingWriter =
          JournalWriter.after(failingDisk, WitnessFile.NOWHERE, Whole.EMPTY);
      failingWriter.settle();
      failingDisk.meets(i -> i >= start ? met : Meets.NOTHING);
      int kept = 0;
      for (int attempt = 1; attempt <= 4; attempt++) {
        kept += failingWriter.append(bodies(4).get(kept)) instanceof Kept ? 1 : 0;
      }
      assertEquals((start - 1) / 2, kept, "two operations a record, failing from " + start);
      assertEquals(kept, failingWriter.lastSeq());
      failingDisk.meets(i -> Meets.NOTHING);
      bodies(5)
          .subList(kept, 5)
          .forEach(body -> assertInstanceOf(Kept.class, failingWriter.append(body)));
      assertArrayEquals(of(bodies(5)), failingDisk.platter(), met + " from operation " + from);
    }
  }

  @Test
  void append_thatFails_leavesNothingOfItselfInTheFile() {
    keep(bodies(2));
    disk.meets(i -> i == 2 ? Meets.IO_ERROR : Meets.NOTHING);
    NotKept refused = assertInstanceOf(NotKept.class, writer.append("{\"lost\":true}"));
    assertEquals("The journal could not be written: input/output error.", refused.why());
    assertArrayEquals(of(bodies(2)), disk.platter());
  }

  @Test
  void append_toAFileAnotherProgramLengthened_isRefusedAndChangesNothing() {
    keep(bodies(2));
    byte[] longer = of(bodies(3));
    disk.changedByAnother(longer);
    NotKept refused = assertInstanceOf(NotKept.class, writer.append("{}"));
    assertEquals(FaultKind.CHANGED, refused.kind());
    assertArrayEquals(longer, disk.platter());
    assertInstanceOf(NotKept.class, writer.append("{}"));
    assertArrayEquals(longer, disk.platter());
  }

  @Test
  void append_toAFileThatLostRecords_isRefusedAndChangesNothing() {
    keep(bodies(3));
    byte[] shorter = of(bodies(1));
    disk.changedByAnother(shorter);
    assertEquals(FaultKind.CHANGED, ((NotKept) writer.append("{}")).kind());
    assertArrayEquals(shorter, disk.platter());
  }

  @Test
  void settle_onAFileWhoseRecordsChanged_throwsAndChangesNothing() {
    keep(bodies(3));
    byte[] spoiled = of(bodies(4));
    spoiled[30] ^= 1;
    disk.changedByAnother(spoiled);
    assertEquals(FaultKind.CHANGED, assertThrows(StorageFault.class, writer::settle).kind());
    for (byte[] other : new byte[][] {of(bodies(2)), of(List.of(bodies(3).get(0), "{}"))}) {
      disk.changedByAnother(other);
      assertThrows(StorageFault.class, writer::settle);
      assertArrayEquals(other, disk.platter());
    }
    String swapped = new String(of(bodies(3)), UTF_8).replace("3.4 V", "9.4 V");
    disk.changedByAnother(swapped.getBytes(UTF_8));
    assertThrows(StorageFault.class, writer::settle);
  }

  @Test
  void after_aTornTail_cutsItBeforeTheNextRecord() {
    byte[] torn = Arrays.copyOf(of(bodies(3)), of(bodies(3)).length - 5);
    disk.changedByAnother(torn);
    Writable read = assertInstanceOf(Writable.class, Recovery.read(torn));
    JournalWriter next = JournalWriter.after(disk, WitnessFile.NOWHERE, read);
    assertEquals(new Kept(3), next.append("{\"again\":3}"));
    Recovered whole = assertInstanceOf(Whole.class, Recovery.read(disk.platter()));
    assertEquals(List.of(bodies(3).get(0), bodies(3).get(1), "{\"again\":3}"), bodiesOf(whole));
  }

  @Test
  void settle_onAWholeJournal_forcesWhatWasOnlyInTheCache() throws IOException {
    disk.append(of(bodies(2)));
    assertEquals(0, disk.platter().length);
    JournalWriter next =
        JournalWriter.after(disk, WitnessFile.NOWHERE, (Writable) Recovery.read(disk.readAll()));
    next.settle();
    assertArrayEquals(of(bodies(2)), disk.platter());
  }

  @Test
  void witness_namesTheLastRecordThatCounts_andNeverOneThatDoesNot() {
    List<String> bodies = bodies(6);
    disk.meets(i -> i == 7 ? Meets.IO_ERROR : Meets.NOTHING);
    int failures = 0;
    int kept = 0;
    while (kept < 6) {
      boolean counts = writer.append(bodies.get(kept)) instanceof Kept;
      kept += counts ? 1 : 0;
      failures += counts ? 0 : 1;
      assertEquals(Journals.witness(bodies.subList(0, kept)), witness.read());
    }
    assertEquals(1, failures);
  }

  @Test
  void witness_ofAJournalTakenUp_isWrittenOnceItsRecordsAreForced() throws IOException {
    disk.append(of(bodies(3)));
    JournalWriter next =
        JournalWriter.after(disk, witness, (Writable) Recovery.read(disk.readAll()));
    assertEquals(Witness.NONE, witness.read());
    next.settle();
    assertEquals(Journals.witness(bodies(3)), witness.read());
  }

  @Test
  void witness_isForcedWhenTheJournalIsClosed() throws IOException {
    keep(bodies(2));
    assertEquals(Witness.NONE, witness.onThePlatter());
    writer.close();
    assertEquals(Journals.witness(bodies(2)), witness.onThePlatter());
  }

  @Test
  void witness_thatCannotBeForced_keepsTheJournalFromNothing() throws IOException {
    keep(bodies(2));
    witness.breaks(true);
    writer.close();
    assertTrue(disk.isClosed());
  }

  @Test
  void witness_thatCannotBeWritten_keepsNoRecordFromCountingAndSaysLessAtMost() throws IOException {
    keep(bodies(2));
    witness.breaks(true);
    bodies(4).subList(2, 4).forEach(body -> assertInstanceOf(Kept.class, writer.append(body)));
    assertEquals(Journals.witness(bodies(2)), witness.read());
    writer.close();
    assertTrue(disk.isClosed());
    assertInstanceOf(Whole.class, Recovery.read(disk.platter(), witness.read()));
  }

  @Test
  void append_toAnOldJournal_goesOnInItsFormat() {
    disk.changedByAnother(of(Journals.oldBodies(2)));
    JournalWriter old =
        JournalWriter.after(disk, witness, (Writable) Recovery.read(of(Journals.oldBodies(2))));
    assertEquals(new Kept(3), old.append(bodies(3).get(2)));
    assertArrayEquals(of(Journals.oldBodies(3)), disk.platter());
  }

  @Test
  void close_closesTheStorage() throws IOException {
    writer.close();
    assertTrue(disk.isClosed());
  }

  @Test
  void append_ofAFirstBodyWithoutTheFormat_isAMistakeOfTheCaller() {
    assertThrows(IllegalArgumentException.class, () -> writer.append("{}"));
    assertThrows(
        IllegalArgumentException.class, () -> writer.append("{\"format\":\"loadwalk-journal/3\"}"));
    assertEquals(0, disk.operations());
  }

  @Test
  void append_ofWhatIsNoBody_throwsAndLeavesTheWriterUsable() {
    keep(bodies(1));
    assertThrows(IllegalArgumentException.class, () -> writer.append("no json"));
    assertEquals(new Kept(2), writer.append("{}"));
  }
}
