import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/** A program in a pseudo-terminal of 80 by 24, watched by the clock. */
final class Session implements AutoCloseable {
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(30);
  private static final String WHERE = "\u001b[6n";

  private final Process process;
  private final OutputStream keys;
  private final StringBuilder shown = new StringBuilder();
  private long lastChunk;
  private long chunks;
  private long started;
  private long pid;

  private Session(Process process) {
    this.process = process;
    this.keys = process.getOutputStream();
  }

  /** Starts a command in a folder; its time runs from the moment the shell hands over to it. */
  static Session start(Path folder, List<String> command) throws IOException {
    String words =
        command.stream().map(word -> "'" + word + "'").collect(Collectors.joining(" "));
    String line = "stty rows 24 cols 80; printf 'GO%s;' $$; exec " + words;
    ProcessBuilder builder = new ProcessBuilder("script", "-qfec", line, "/dev/null");
    builder.directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().put("TERM", "xterm");
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().put("XDG_DATA_HOME", folder.toString());
    builder.environment().put("SHELL", "/bin/sh");
    Session session = new Session(builder.start());
    Thread reader = new Thread(session::read, "pty");
    reader.setDaemon(true);
    reader.start();
    session.started = session.await(";");
    String head = session.text();
    session.pid = Long.parseLong(head.substring(head.indexOf("GO") + 2, head.indexOf(';')));
    return session;
  }

  private void read() {
    byte[] bytes = new byte[1 << 16];
    try (InputStream in = process.getInputStream()) {
      for (int count = in.read(bytes); count > 0; count = in.read(bytes)) {
        take(new String(bytes, 0, count, StandardCharsets.UTF_8), System.nanoTime());
      }
    } catch (IOException gone) {
      take("", System.nanoTime());
    }
  }

  private synchronized void take(String text, long at) throws UncheckedGone {
    shown.append(text);
    lastChunk = at;
    chunks++;
    notifyAll();
    if (text.contains(WHERE)) {
      press("\u001b[24;80R");
    }
  }

  private synchronized String text() {
    return shown.toString();
  }

  /** Forgets what was shown; what is awaited next must be shown anew. */
  synchronized void forget() {
    shown.setLength(0);
  }

  /** Waits for a text to be shown and returns when it was, ns. */
  synchronized long await(String text) {
    long end = System.nanoTime() + PATIENCE;
    while (shown.indexOf(text) < 0) {
      pause(end, "'" + text + "' was not shown; shown was: " + shown);
    }
    return lastChunk;
  }

  /** Returns when the answer to what was just pressed had come whole: then so many ms of quiet. */
  synchronized long settled(long chunksBefore, long quietMillis) {
    long end = System.nanoTime() + PATIENCE;
    while (chunks == chunksBefore) {
      pause(end, "nothing was shown");
    }
    long quiet = TimeUnit.MILLISECONDS.toNanos(quietMillis);
    for (long left = quiet; left > 0; left = lastChunk + quiet - System.nanoTime()) {
      nap(Math.max(1, left / 1_000_000));
    }
    return lastChunk;
  }

  private void pause(long end, String otherwise) {
    long left = end - System.nanoTime();
    if (left <= 0) {
      throw new IllegalStateException(otherwise);
    }
    nap(Math.max(1, left / 1_000_000));
  }

  private void nap(long millis) {
    try {
      wait(millis);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  synchronized long chunks() {
    return chunks;
  }

  /** Presses keys and returns when, ns. */
  long press(String text) {
    try {
      long at = System.nanoTime();
      keys.write(text.getBytes(StandardCharsets.UTF_8));
      keys.flush();
      return at;
    } catch (IOException e) {
      throw new UncheckedGone(e);
    }
  }

  /** Presses keys and returns how long the whole answer took, ns. */
  long answered(String text, long quietMillis) {
    long before = chunks();
    long at = press(text);
    return settled(before, quietMillis) - at;
  }

  /** Returns the time from the shell's handing over to a text on the screen, ns. */
  long until(String text) {
    return await(text) - started;
  }

  /** Returns the processor time of all living threads, ns. */
  long processorNanos() throws IOException {
    long sum = 0;
    Path tasks = Path.of("/proc", String.valueOf(pid), "task");
    try (DirectoryStream<Path> threads = Files.newDirectoryStream(tasks)) {
      for (Path thread : threads) {
        sum += Long.parseLong(Files.readString(thread.resolve("schedstat")).split(" ")[0]);
      }
    }
    return sum;
  }

  /** Returns the resident memory, KiB. */
  long residentKib() throws IOException {
    for (String line : Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status"))) {
      if (line.startsWith("VmRSS:")) {
        return Long.parseLong(line.replaceAll("\\D", ""));
      }
    }
    throw new IOException("no resident memory is told of process " + pid);
  }

  @Override
  public void close() {
    ProcessHandle.of(pid).ifPresent(ProcessHandle::destroy);
    try {
      process.waitFor(5, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    process.destroy();
  }

  /** The program is gone. */
  static final class UncheckedGone extends IllegalStateException {
    private static final long serialVersionUID = 1;

    UncheckedGone(IOException cause) {
      super(cause);
    }
  }
}
