package loadwalk.app.loop;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loadwalk.text.Sentence;

/**
 * Writes to the standard output and remembers a write that failed: printing classes hide it, and no
 * command may report success when a full disk lost its output.
 *
 * <p>Whoever reads a pipe may stop early, so a closed pipe or socket is no fault.
 */
public final class StandardOutput extends OutputStream {
  private static final Path NAMED = Path.of("/dev/fd/1");
  private static final int KIND = 0170000;
  private static final int PIPE = 0010000;
  private static final int SOCKET = 0140000;

  private final OutputStream out;
  private final Path named;
  private volatile IOException fault;

  /** Makes the output of this process. */
  public StandardOutput() {
    this(new FileOutputStream(FileDescriptor.out), NAMED);
  }

  /**
   * Makes an output.
   *
   * @param out where bytes go
   * @param named a path of the same file, to look at its kind after a fault
   */
  public StandardOutput(OutputStream out, Path named) {
    this.out = out;
    this.named = named;
  }

  /** Returns in one sentence why output was lost; empty where none was. */
  public Optional<String> lost() {
    return fault == null || mayBeClosed()
        ? Optional.empty()
        : Optional.of(Sentence.of("Not all of the output was written: {}.", fault.getMessage()));
  }

  private boolean mayBeClosed() {
    try {
      int kind = (int) Files.getAttribute(named, "unix:mode") & KIND;
      return kind == PIPE || kind == SOCKET;
    } catch (IOException | UnsupportedOperationException unknown) {
      return true;
    }
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      out.write(bytes, from, length);
    } catch (IOException failed) {
      fault = failed;
      throw failed;
    }
  }
}
