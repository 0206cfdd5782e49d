package loadwalk.journal;

import java.io.IOException;

/** A witness in memory. */
final class KeptWitness implements WitnessFile {
  private byte[] bytes = new byte[0];
  private byte[] forced = new byte[0];
  private boolean broken;

  @Override
  public void write(byte[] written) throws IOException {
    if (broken) {
      throw new IOException("input/output error");
    }
    bytes = written;
  }

  @Override
  public void force() throws IOException {
    if (broken) {
      throw new IOException("input/output error");
    }
    forced = bytes;
  }

  void breaks(boolean now) {
    broken = now;
  }

  Witness read() {
    return Witness.read(bytes);
  }

  Witness onThePlatter() {
    return Witness.read(forced);
  }
}
