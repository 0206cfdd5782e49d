package loadwalk.journal;

import java.io.Closeable;
import java.io.IOException;

/** The bytes of one journal: a file, or in tests a disk that fails and loses data. */
public interface Storage extends Closeable {
  /** Returns every byte, forced or not. */
  byte[] readAll() throws IOException;

  /** Returns the number of bytes, forced or not. */
  long length() throws IOException;

  /** Adds bytes at the end; after a failure any part of them may be there. */
  void append(byte[] bytes) throws IOException;

  /** Cuts the file to a length in bytes. */
  void truncate(long length) throws IOException;

  /** Forces all earlier changes to the disk; returns only when they will survive a power cut. */
  void force() throws IOException;
}
