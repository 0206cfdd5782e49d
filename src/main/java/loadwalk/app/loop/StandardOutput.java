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
 * The standard output, which remembers a write that failed: printing classes pass it over, and a
 * command must not call done what a full disk has swallowed.
 *
 * <p>Who reads a pipe may have had enough of it, so a pipe or a socket that is closed is no fault.
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

  /** Returns what kept the output from being written whole, one sentence; empty where nothing. */
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
