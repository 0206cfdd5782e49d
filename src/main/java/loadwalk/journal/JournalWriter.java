package loadwalk.journal;

import java.io.Closeable;
import java.io.IOException;
import java.util.Objects;
import java.util.zip.CRC32C;
import loadwalk.journal.KeepResult.Kept;
import loadwalk.journal.KeepResult.NotKept;
import loadwalk.text.Sentence;

/**
 * Appends records to a journal, each forced to the disk before it counts.
 *
 * <p>After a failed write or force nobody knows what the file holds behind the last record that
 * counts. So before anything else is written the file is read back, what stands behind that record
 * is cut, and the cut is forced; only then does the next record go to the same place. A forced cut
 * also keeps a disk that writes out of order from mixing the failed record with the next. For use
 * by one thread.
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

  /** Continues a journal that was read; a torn tail is cut before the first record is added. */
  public static JournalWriter after(Storage storage, Recovered.Writable read) {
    JournalWriter writer = new JournalWriter(storage);
    read.records().forEach(record -> writer.count(Framing.line(record.seq(), record.body())));
    return writer;
  }

  /** Returns the number of the last record that counts, 0 before the first. */
  public long lastSeq() {
    return lastSeq;
  }

  /**
   * Adds one record and forces it to the disk.
   *
   * @param body one JSON object on one line; the first names the format
   * @throws IllegalArgumentException if the body cannot be framed; the caller made a mistake
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
   * Cuts what does not count and forces the rest. A record that was read need not be on the disk
   * yet, if the program that wrote it was killed before it forced; so this comes before the records
   * are shown as kept.
   */
  public void settle() throws IOException {
    byte[] bytes = storage.readAll();
    if (bytes.length < soundBytes || !isSound(bytes)) {
      throw changed();
    }
    if (bytes.length == soundBytes) {
      // A cut whose force failed, here or in a program before, may be forgotten; only a new change
      // makes the disk write it again.
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
