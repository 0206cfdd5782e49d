package loadwalk.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import loadwalk.shipped.Shipped;

/** A shell in a real pseudo-terminal of 80 columns by 24 rows, run by a tmux of its own. */
final class Pane {
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(60);
  private static final long LOOK_EVERY_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

  private final Path folder;
  private final Path socket;

  private Pane(Path folder) {
    this.folder = folder;
    this.socket = folder.resolve("tmux");
  }

  static Pane open(Path folder) throws IOException {
    Pane pane = new Pane(folder);
    Files.createDirectories(folder.resolve("home"));
    pane.tmux(
        "-f", "/dev/null", "new-session", "-d", "-x", "80", "-y", "24", "bash --norc --noprofile");
    return pane;
  }

  /** Starts the program in the shell and returns it once its home screen is there. */
  ProcessHandle startProgram() throws IOException {
    return start("", Shipped.command(folder.resolve("home")), "New walk");
  }

  /**
   * Starts a command in the shell.
   *
   * @param settings what the shell is to set for it, such as {@code LC_ALL=C}
   * @param text what its first screen shows
   */
  ProcessHandle start(String settings, List<String> command, String text) throws IOException {
    run(settings, command).sees(text);
    long shell = Long.parseLong(tmux("display-message", "-p", "#{pane_pid}").strip());
    return ProcessHandle.of(shell).orElseThrow().children().findFirst().orElseThrow();
  }

  /** Runs a command in the shell. */
  Pane run(String settings, List<String> command) throws IOException {
    String words =
        command.stream()
            .map(w -> "'" + w.replace("'", "'\\''") + "'")
            .collect(Collectors.joining(" "));
    Files.writeString(folder.resolve("run"), settings + " exec " + words + "\n");
    return line("clear; sh " + folder.resolve("run"));
  }

  /** Types a line and Enter. */
  Pane line(String text) throws IOException {
    tmux("send-keys", "-l", text);
    tmux("send-keys", "Enter");
    return this;
  }

  /** Presses keys by tmux's names; other words are typed. */
  Pane keys(String... names) throws IOException {
    for (String name : names) {
      tmux("send-keys", name);
    }
    return this;
  }

  /** Sends bytes at once, as a terminal sends what was typed while nobody read it. */
  Pane bytes(String text) throws IOException {
    List<String> words = new ArrayList<>(List.of("send-keys", "-H"));
    for (byte b : text.getBytes(UTF_8)) {
      words.add(String.format(Locale.ROOT, "%02x", b));
    }
    tmux(words.toArray(String[]::new));
    return this;
  }

  /** Pastes as a terminal does that marks pastes. */
  Pane paste(String text) throws IOException {
    tmux("set-buffer", text);
    tmux("paste-buffer", "-p", "-r");
    return this;
  }

  /** Begins a paste whose end is lost on the way. */
  Pane begunPaste(String text) throws IOException {
    tmux("send-keys", "-H", "1b", "5b", "32", "30", "30", "7e");
    tmux("send-keys", "-l", text);
    return this;
  }

  /** Pastes the text of a file, marked as a paste or as if it were typed. */
  Pane pasteFile(Path file, boolean marked) throws IOException {
    tmux("load-buffer", file.toString());
    tmux("paste-buffer", "-r", marked ? "-p" : "-d");
    return this;
  }

  /** Makes the window another size. */
  Pane resize(int columns, int rows) throws IOException {
    tmux("resize-window", "-x", String.valueOf(columns), "-y", String.valueOf(rows));
    return this;
  }

  /** Returns the title that programs have given the terminal. */
  String title() throws IOException {
    return tmux("display-message", "-p", "#{pane_title}").strip();
  }

  /** Returns the screen with the escape sequences of its colours. */
  String colouredPicture() throws IOException {
    return tmux("capture-pane", "-p", "-e");
  }

  String picture() throws IOException {
    return tmux("capture-pane", "-p");
  }

  /** Waits until every text is on the screen. */
  Pane sees(String... texts) throws IOException {
    long end = System.nanoTime() + PATIENCE_NANOS;
    for (String text : texts) {
      while (!picture().contains(text)) {
        if (System.nanoTime() > end) {
          throw new AssertionError("«" + text + "» is not on\n" + picture());
        }
        LockSupport.parkNanos(LOOK_EVERY_NANOS);
      }
    }
    return this;
  }

  String read(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  void close() throws IOException {
    tmux("kill-server");
  }

  private String tmux(String... arguments) throws IOException {
    List<String> words = new ArrayList<>(List.of("tmux", "-S", socket.toString()));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
    Map<String, String> environment = builder.environment();
    Shipped.prepare(environment);
    environment.put("LC_ALL", "C.UTF-8");
    environment.remove("TMUX");
    Process process = Shipped.limited(builder);
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    try {
      process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return said;
  }
}
