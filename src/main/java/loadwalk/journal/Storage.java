package loadwalk.journal;

import java.io.Closeable;
import java.io.IOException;

/** The bytes of one journal; a file, or in tests a disk that fails and forgets. */
public interface Storage extends Closeable {
  /** Returns every byte, forced or not. */
  byte[] readAll() throws IOException;

  /** Returns the number of bytes, forced or not. */
  long length() throws IOException;

  /** Adds bytes at the end; on failure any part of them may be there. */
  void append(byte[] bytes) throws IOException;

  /** Cuts everything from a byte on. */
  void truncate(long length) throws IOException;

  /** Returns only when all that was done before is on the disk and will outlast a power cut. */
  void force() throws IOException;
}
