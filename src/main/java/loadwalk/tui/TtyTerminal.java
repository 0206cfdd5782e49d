package loadwalk.tui;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.ByteArrayOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import loadwalk.text.Sentence;

/**
 * A terminal set up by one {@code stty} call: no echo, no line editing, no signals from keys, so
 * that Ctrl-C, Ctrl-Z and Ctrl-\ arrive as keys and Ctrl-S cannot freeze the screen.
 */
public final class TtyTerminal extends UnixTerminal {
  /** The keys that mark the two ends of pasted text; no keyboard sends them. */
  static final KeyStroke PASTE_BEGIN = new KeyStroke(KeyType.F18);

  static final KeyStroke PASTE_END = new KeyStroke(KeyType.F19);

  private static final String RAW =
      "stty -g && stty size && stty -icanon -echo -isig -ixon -iexten min 1 time 0";
  private static final String PASTE_ON = "\u001b[?2004h";
  private static final String PASTE_OFF = "\u001b[?2004l";
  private static final int STTY_SECONDS = 5;

  /** What a shell says of a command that is nowhere on the way it looks. */
  private static final int NOT_FOUND = 127;

  private static final TerminalSize FALLBACK = new TerminalSize(80, 24);

  /** More than any window shows; a terminal may claim sizes that no memory holds. */
  private static final TerminalSize MOST = new TerminalSize(600, 300);

  // Set by the super constructor, so neither may have an initialiser.
  private String saved;
  private volatile TerminalSize known;
  private Runnable onResize;
  private volatile Runnable farewell;
  private boolean isShown;

  /**
   * Opens the terminal on standard input and output.
   *
   * @throws IOException if it cannot be set up
   */
  public TtyTerminal() throws IOException {
    super(
        new PatientInput(new FileInputStream(FileDescriptor.in)),
        new SteadyOutput(new FileOutputStream(FileDescriptor.out)),
        StandardCharsets.UTF_8,
        CtrlCBehaviour.TRAP);
    getInputDecoder()
        .addProfile(
            () ->
                List.of(
                    new BasicCharacterPattern(PASTE_BEGIN, "\u001b[200~".toCharArray()),
                    new BasicCharacterPattern(PASTE_END, "\u001b[201~".toCharArray())));
  }

  /**
   * Sets what is said once the terminal is given back for good, whatever ends the program.
   *
   * @param words what prints it
   */
  public void atTheEnd(Runnable words) {
    farewell = words;
  }

  /** Tells whether standard input and output are both terminals. */
  public static boolean isThere() {
    if (System.console() == null) {
      return false;
    }
    try {
      Object terminal = Console.class.getMethod("isTerminal").invoke(System.console());
      return Boolean.TRUE.equals(terminal);
    } catch (ReflectiveOperationException beforeJava22) {
      // Before Java 22 there is a console only if both ends are terminals.
      return true;
    }
  }

  @Override
  public void enterPrivateMode() throws IOException {
    super.enterPrivateMode();
    writeToTerminal(PASTE_ON.getBytes(StandardCharsets.US_ASCII));
    flush();
    isShown = true;
  }

  @Override
  public void exitPrivateMode() throws IOException {
    isShown = false;
    writeToTerminal(PASTE_OFF.getBytes(StandardCharsets.US_ASCII));
    super.exitPrivateMode();
  }

  @Override
  protected void saveTerminalSettings() throws IOException {
    String[] lines = stty(RAW).strip().split("\n");
    saved = lines[0];
    known = lines.length > 1 ? parsed(lines[1]) : FALLBACK;
  }

  @Override
  protected void restoreTerminalSettings() throws IOException {
    restore();
    Runnable words = farewell;
    farewell = null;
    if (words != null) {
      words.run();
    }
  }

  private void restore() throws IOException {
    if (saved != null) {
      stty(String.join(" ", "stty", saved));
    }
  }

  @Override
  protected void canonicalMode(boolean enabled) {
    // Done by the one stty call.
  }

  @Override
  protected void keyEchoEnabled(boolean enabled) {
    // Done by the one stty call.
  }

  @Override
  protected void keyStrokeSignalsEnabled(boolean enabled) {
    // Done by the one stty call.
  }

  /**
   * Only keeps the listener: making the signal handler takes reflection, which would delay the
   * first frame.
   */
  @Override
  protected void registerTerminalResizeListener(Runnable resized) {
    onResize = resized;
  }

  /**
   * Listens for changes of the window's size from now on; call it once the first frame is shown.
   *
   * @throws IOException if the terminal does not give its size
   */
  public void listenForResizes() throws IOException {
    super.registerTerminalResizeListener(
        () -> {
          known = null;
          onResize.run();
        });
    // The window may have changed before this listened.
    TerminalSize before = known;
    known = null;
    if (!findTerminalSize().equals(before)) {
      onResize.run();
    }
  }

  @Override
  protected TerminalSize findTerminalSize() throws IOException {
    TerminalSize size = known;
    if (size == null) {
      size = parsed(stty("stty size"));
      known = size;
    }
    return size;
  }

  /** Restores the terminal while the program is suspended. */
  public void lend() throws IOException {
    exitPrivateMode();
    flush();
    restore();
  }

  /** Asks for the cursor position, twice: the answer ends a read that waits for a key. */
  public void wakeReader() throws IOException {
    byte[] where = "\u001b[6n".getBytes(StandardCharsets.US_ASCII);
    writeToTerminal(where);
    writeToTerminal(where);
    flush();
  }

  /** Discards unread input and returns how many bytes that was. */
  public int forgetInput() throws IOException {
    return forget(new FileInputStream(FileDescriptor.in));
  }

  /** Reads what is there: a terminal cannot be skipped over, it answers "Illegal seek". */
  static int forget(FileInputStream unread) throws IOException {
    int forgotten = 0;
    while (unread.available() > 0) {
      forgotten += Math.max(0, unread.read(new byte[unread.available()]));
    }
    return forgotten;
  }

  /** Sets the terminal up again after {@link #lend}, or after somebody else has set it up. */
  public void takeBack() throws IOException {
    String before = saved;
    saveTerminalSettings();
    saved = before;
    if (isShown) {
      exitPrivateMode();
    }
    enterPrivateMode();
  }

  /** Runs something, on a thread of its own, whenever the process goes on after a stop. */
  public static void whenContinued(Runnable what) {
    Signals.on("CONT", what);
  }

  private static TerminalSize parsed(String rowsAndColumns) {
    String[] words = rowsAndColumns.strip().split("\\s+");
    try {
      int rows = Integer.parseInt(words[0]);
      int columns = Integer.parseInt(words[1]);
      return rows > 0 && columns > 0 ? new TerminalSize(columns, rows).min(MOST) : FALLBACK;
    } catch (NumberFormatException | ArrayIndexOutOfBoundsException noNumbers) {
      return FALLBACK;
    }
  }

  private static Process started(String command) throws NoStty {
    try {
      return new ProcessBuilder("sh", "-c", command)
          .redirectInput(ProcessBuilder.Redirect.INHERIT)
          .redirectErrorStream(true)
          .start();
    } catch (IOException noShell) {
      throw new NoStty();
    }
  }

  private static String stty(String command) throws IOException {
    Process process = started(command);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    try (InputStream out = process.getInputStream()) {
      out.transferTo(said);
      boolean ended = process.waitFor(STTY_SECONDS, TimeUnit.SECONDS);
      if (ended && process.exitValue() == NOT_FOUND) {
        throw new NoStty();
      }
      if (!ended || process.exitValue() != 0) {
        throw new IOException(
            Sentence.of("stty says {}", said.toString(StandardCharsets.UTF_8).strip()));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("its setup was interrupted", e);
    }
    return said.toString(StandardCharsets.US_ASCII);
  }
}
