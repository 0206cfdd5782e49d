package loadwalk.journal;

import java.io.IOException;

/** Where the witness of a journal is kept: a file beside it, or in tests a disk of their own. */
public interface WitnessFile {
  /** Keeps none. */
  WitnessFile NOWHERE =
      new WitnessFile() {
        @Override
        public void write(byte[] bytes) {}

        @Override
        public void force() {}
      };

  /** Replaces what stands there, without forcing it; the bytes are always as many. */
  void write(byte[] bytes) throws IOException;

  /** Forces what was written to the disk. */
  void force() throws IOException;
}
