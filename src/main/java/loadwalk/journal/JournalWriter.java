package loadwalk.journal;

import java.io.Closeable;
import java.io.IOException;
import java.util.Objects;
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
 * also prevents a disk that writes out of order from mixing the failed record with the next. For
 * use by one thread.
 */
public final class JournalWriter implements Closeable {
  private static final byte[] FIRST_BYTE_OF_A_LINE = {'{'};

  private final Storage storage;
  private final CRC32C sound = new CRC32C();
  private long soundBytes;
  private long lastSeq;
  private boolean suspect = true;

  private JournalWriter(Storage storage) {
    this.storage = Objects.requireNonNull(storage, "storage");
  }

  /**
   * Returns a writer that continues a journal that was read; a torn tail is cut before the first
   * record is added.
   */
  public static JournalWriter after(Storage storage, Recovered.Writable read) {
    JournalWriter writer = new JournalWriter(storage);
    read.records().forEach(record -> writer.count(Framing.line(record.seq(), record.body())));
    return writer;
  }

  /** Returns the number of the last record that counts; 0 before the first. */
  public long lastSeq() {
    return lastSeq;
  }

  /**
   * Adds one record and forces it to the disk.
   *
   * @param body one JSON object on one line; the first names the format
   * @throws IllegalArgumentException if the body cannot be framed, which is a caller error
   */
  public KeepResult append(String body) {
    byte[] line = Framing.line(lastSeq + 1, body);
    if (lastSeq == 0 && Body.head(body) != Facts.Head.OURS) {
      throw new IllegalArgumentException("the first body must name the format " + Body.FORMAT);
    }
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
    count(line);
    return new Kept(lastSeq);
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
  }

  @Override
  public void close() throws IOException {
    storage.close();
  }

  private void count(byte[] line) {
    sound.update(line);
    soundBytes += line.length;
    lastSeq++;
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
