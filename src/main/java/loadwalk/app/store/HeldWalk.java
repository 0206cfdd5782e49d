package loadwalk.app.store;

import java.io.Closeable;
import java.io.IOException;
import loadwalk.journal.JournalWriter;
import loadwalk.journal.KeepResult;

/** A walk that this process holds and writes on; for use by one thread. */
public final class HeldWalk implements Closeable {
  private final JournalWriter writer;
  private final WalkLock lock;

  HeldWalk(JournalWriter writer, WalkLock lock) {
    this.writer = writer;
    this.lock = lock;
  }

  /** Returns the number of the record that is due. */
  public long due() {
    return writer.lastSeq() + 1;
  }

  /** Adds a record; it counts only when the answer says that it is kept. */
  public KeepResult append(String body) {
    return writer.append(body);
  }

  /** Lets the walk go; everything kept is on the disk already. */
  @Override
  public void close() throws IOException {
    try {
      writer.close();
    } finally {
      lock.close();
    }
  }
}
