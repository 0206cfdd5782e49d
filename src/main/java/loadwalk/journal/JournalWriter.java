package loadwalk.journal;

import java.io.Closeable;
import java.io.IOException;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.CRC32C;
import loadwalk.journal.KeepResult.Kept;
import loadwalk.journal.KeepResult.NotKept;
import loadwalk.text.Sentence;

/**
 * Appends records to a journal and forces each one to the disk before it counts.
 *
 * <p>After a failed write or force, the content of the file after the last record that counts is
 * unknown. Before the next write, the file is therefore read back, everything after that record is
 * cut, and the cut is forced; only then does the next record go to the same place. The forced cut
 * also prevents a disk that writes out of order from mixing the failed record with the next.
 *
 * <p>The witness is written once a record counts. It is a net below the net: where it cannot be
 * written, an older one stands, which says less and nothing wrong. For use by one thread.
 */
public final class JournalWriter implements Closeable {
  private static final byte[] FIRST_BYTE_OF_A_LINE = {'{'};

  private final Storage storage;
  private final WitnessFile witness;
  private final CRC32C sound = new CRC32C();
  private Optional<JournalRecord> first = Optional.empty();
  private Optional<JournalRecord> last = Optional.empty();
  private long soundBytes;
  private boolean suspect = true;
  private boolean witnessed;

  private JournalWriter(Storage storage, WitnessFile witness) {
    this.storage = Objects.requireNonNull(storage, "storage");
    this.witness = Objects.requireNonNull(witness, "witness");
  }

  /**
   * Returns a writer that continues a journal that was read, in its format; a torn tail is cut
   * before the first record is added.
   */
  public static JournalWriter after(Storage storage, WitnessFile witness, Recovered.Writable read) {
    JournalWriter writer = new JournalWriter(storage, witness);
    read.records().forEach(record -> writer.count(record, record.line()));
    return writer;
  }

  /** Returns the number of the last record that counts; 0 before the first. */
  public long lastSeq() {
    return last.map(JournalRecord::seq).orElse(0L);
  }

  /**
   * Adds one record and forces it to the disk.
   *
   * @param body one JSON object on one line; the first names a format that is read here
   * @throws IllegalArgumentException if the body cannot be framed, which is a caller error
   */
  public KeepResult append(String body) {
    boolean begins = last.isEmpty();
    if (begins && Body.head(body) != Facts.Head.OURS) {
      throw new IllegalArgumentException("the first body must name the format " + Body.FORMAT);
    }
    byte[] line = Framing.line(lastSeq() + 1, sumToName(), body);
    JournalRecord record = Framing.read(Arrays.copyOf(line, line.length - 1)).orElseThrow();
    try {
      if (suspect) {
        settle();
      } else if (storage.length() != soundBytes) {
        throw changed();
      }
      suspect = true;
      storage.append(line);
      storage.force();
    } catch (IOException e) {
      NotKept refused = refused(e);
      tryToSettle();
      return refused;
    }
    suspect = false;
    count(record, line);
    testify();
    return new Kept(record.seq());
  }

  /** Returns the sum that the next record names; empty where the format has none. */
  private String sumToName() {
    boolean chained = first.filter(record -> Body.isChained(record.body())).isPresent();
    return chained ? last.map(JournalRecord::sum).orElseThrow() : "";
  }

  private void testify() {
    if (last.isEmpty()) {
      return;
    }
    try {
      witness.write(Witness.of(first.orElseThrow().sum(), last.get().sum(), lastSeq()).bytes());
    } catch (IOException unwitnessed) {
      witnessed = false;
      return;
    }
    witnessed = true;
  }

  /**
   * Cuts what does not count and forces the rest. Call it before the records are shown as saved: a
   * record that was read may not be on the disk yet if the program that wrote it was killed before
   * it forced the write.
   */
  public void settle() throws IOException {
    byte[] bytes = storage.readAll();
    if (bytes.length < soundBytes || !isSound(bytes)) {
      throw changed();
    }
    if (bytes.length == soundBytes) {
      // A cut whose force failed, now or in an earlier run, may be lost; only a new change makes
      // the disk write it again.
      storage.append(FIRST_BYTE_OF_A_LINE);
    }
    storage.truncate(soundBytes);
    storage.force();
    suspect = false;
    testify();
  }

  /** Closes the journal, in which everything kept is on the disk, and forces the witness. */
  @Override
  public void close() throws IOException {
    storage.close();
    if (witnessed) {
      try {
        witness.force();
      } catch (IOException unwitnessed) {
        witnessed = false;
      }
    }
  }

  private void count(JournalRecord record, byte[] line) {
    first = first.or(() -> Optional.of(record));
    last = Optional.of(record);
    sound.update(line);
    soundBytes += line.length;
  }

  private boolean isSound(byte[] bytes) {
    CRC32C there = new CRC32C();
    there.update(bytes, 0, Math.toIntExact(soundBytes));
    return there.getValue() == sound.getValue();
  }

  private void tryToSettle() {
    if (!suspect) {
      return;
    }
    try {
      settle();
    } catch (IOException stillSuspect) {
      suspect = true;
    }
  }

  private static NotKept refused(IOException e) {
    if (e instanceof StorageFault fault) {
      return new NotKept(fault.kind(), fault.getMessage());
    }
    return new NotKept(
        FaultKind.BROKEN, Sentence.of("The journal could not be written: {}.", e.getMessage()));
  }

  private static StorageFault changed() {
    return new StorageFault(
        FaultKind.CHANGED, "Another program changed the journal; nothing was written.", null);
  }
}
