package loadwalk.app;

import java.io.IOException;
import java.util.Optional;
import loadwalk.journal.FaultKind;
import loadwalk.journal.Storage;
import loadwalk.journal.StorageFault;

/** Stands between a journal and its file, counts, and refuses to write while a test says so. */
public final class FailingDisk {
  private Optional<StorageFault> fault = Optional.empty();
  private int forces;

  /** Returns how often a journal was forced to disk. */
  public int forces() {
    return forces;
  }

  /** Refuses every write from now on, as a full disk does. */
  public void fill() {
    fault =
        Optional.of(
            new StorageFault(FaultKind.FULL, "The disk is full: make room, then try again.", null));
  }

  /** Takes writes again. */
  public void makeRoom() {
    fault = Optional.empty();
  }

  public Storage before(Storage file) {
    return new Storage() {
      @Override
      public byte[] readAll() throws IOException {
        return file.readAll();
      }

      @Override
      public long length() throws IOException {
        return file.length();
      }

      @Override
      public void append(byte[] bytes) throws IOException {
        refuse();
        file.append(bytes);
      }

      @Override
      public void truncate(long length) throws IOException {
        file.truncate(length);
      }

      @Override
      public void force() throws IOException {
        refuse();
        forces++;
        file.force();
      }

      @Override
      public void close() throws IOException {
        file.close();
      }
    };
  }

  private void refuse() throws StorageFault {
    if (fault.isPresent()) {
      throw fault.get();
    }
  }
}
