package loadwalk.journal;

import java.util.Arrays;
import java.util.List;

/** Makes a whole journal of the bodies of its records, as the writer of a journal would. */
public final class WholeJournal {
  private WholeJournal() {}

  /** Returns its bytes; the first body names the format. */
  public static byte[] of(List<String> bodies) {
    Memory memory = new Memory();
    Recovered.Writable empty = Recovery.read(memory.bytes).writable().orElseThrow();
    JournalWriter writer = JournalWriter.after(memory, WitnessFile.NOWHERE, empty);
    for (String body : bodies) {
      if (writer.append(body).failure().isPresent()) {
        throw new IllegalStateException("memory takes every record");
      }
    }
    return memory.bytes;
  }

  /** Bytes that are on no disk. */
  private static final class Memory implements Storage {
    private byte[] bytes = {};

    @Override
    public byte[] readAll() {
      return bytes;
    }

    @Override
    public long length() {
      return bytes.length;
    }

    @Override
    public void append(byte[] more) {
      int end = bytes.length;
      bytes = Arrays.copyOf(bytes, end + more.length);
      System.arraycopy(more, 0, bytes, end, more.length);
    }

    @Override
    public void truncate(long length) {
      bytes = Arrays.copyOf(bytes, Math.toIntExact(length));
    }

    @Override
    public void force() {}

    @Override
    public void close() {}
  }
}
