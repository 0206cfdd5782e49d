package loadwalk.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import loadwalk.text.Sentence;
import loadwalk.text.Sha256;
import loadwalk.text.Visible;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.AudioSource;
import loadwalk.wave.file.ScopeCsv;
import loadwalk.wave.file.WavReader;

/** A captured wave in a file, WAV or scope CSV, that can be read more than once. */
public final class CaptureFile implements AutoCloseable {
  private static final int BUFFER = 1 << 16;
  private static final int LONGEST_NAME = 200;

  /** A WAV file states its length in 32 bits; a table has a number of rows at most. */
  private static final long MOST_OF_SOUND = (1L << 32) + BUFFER;

  private static final long MOST_OF_TABLE = 1L << 30;

  private final String name;
  private final Path path;
  private final boolean spooled;
  private final ScopeCsv.Given given;
  private boolean table;
  private Optional<String> hash = Optional.empty();

  /**
   * What one reading of the file gave.
   *
   * @param value what was made of it
   * @param sha256 the hash of all its bytes
   * @param notes what its reader has to say, a sentence each
   */
  public record Outcome<T>(T value, String sha256, List<String> notes) {}

  /** Makes something of a source. */
  @FunctionalInterface
  public interface Use<T> {
    /** Returns what it makes. */
    T of(AudioSource source) throws IOException, CaptureException;
  }

  private CaptureFile(String name, Path path, boolean spooled, ScopeCsv.Given given) {
    this.name = name;
    this.path = path;
    this.spooled = spooled;
    this.given = given;
  }

  /** Opens a file by name; stdin ("-") goes to a temporary file, so that it can be read again. */
  static CaptureFile open(String name, InputStream stdin, ScopeCsv.Given given)
      throws IOException, CaptureException {
    if (name.equals("-")) {
      CaptureFile capture =
          new CaptureFile("stdin", Files.createTempFile("loadwalk", ".capture"), true, given);
      try {
        capture.spool(stdin);
      } catch (IOException | CaptureException e) {
        capture.close();
        throw e;
      }
      return capture;
    }
    return named(name, given);
  }

  /** Keeps what comes in; of what can be no capture, only the start that tells so. */
  private void spool(InputStream stdin) throws IOException, CaptureException {
    try (OutputStream out = Files.newOutputStream(path)) {
      byte[] part = stdin.readNBytes(BUFFER);
      boolean isTable = !looksLikeSound(part);
      boolean canBeOne = isTable || WavReader.begins(part);
      long left = isTable ? MOST_OF_TABLE : MOST_OF_SOUND;
      while (part.length > 0) {
        out.write(part);
        left -= part.length;
        if (left < 0) {
          throw new CaptureException("More comes in than any capture holds. Give less of it.");
        }
        part = canBeOne ? stdin.readNBytes(BUFFER) : new byte[0];
      }
    }
  }

  /**
   * Opens a file by name.
   *
   * @param given what a scope's file does not tell itself
   * @throws CaptureException if it is no plain file, in a sentence
   */
  public static CaptureFile named(String name, ScopeCsv.Given given) throws CaptureException {
    Path path = Path.of(name);
    Path last = path.getFileName();
    String shown = Visible.line(last == null ? name : last.toString(), LONGEST_NAME);
    if (Files.isDirectory(path)) {
      throw new CaptureException(Sentence.of("{} is a folder, not a capture.", shown));
    }
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      // A device or a pipe could keep a reader waiting with no time limit, and cannot be read
      // twice.
      throw new CaptureException(
          Sentence.of("{} is a pipe or a device; a capture must be a plain file.", shown));
    }
    return new CaptureFile(shown, path, false, given);
  }

  /** Returns its name without its folder. */
  public String name() {
    return name;
  }

  /** Tells whether it was read as a table of time and volts. */
  public boolean isTable() {
    return table;
  }

  /**
   * Reads the file once.
   *
   * @throws CaptureException if it is no capture, or no more what it was when read before: one hash
   *     must stand for all that was judged
   */
  public <T> Outcome<T> read(Use<T> use) throws IOException, CaptureException {
    MessageDigest digest = Sha256.digest();
    try (InputStream raw = new DigestInputStream(Files.newInputStream(path), digest);
        InputStream in = new BufferedInputStream(raw, BUFFER)) {
      in.mark(BUFFER);
      byte[] start = in.readNBytes(4);
      in.reset();
      T value;
      Supplier<List<String>> notes;
      if (looksLikeSound(start)) {
        WavReader reader = WavReader.open(in);
        notes = reader::notes;
        value = use.of(reader);
      } else {
        table = true;
        ScopeCsv rows = ScopeCsv.read(in, given);
        notes = rows::notes;
        value = use.of(rows);
      }
      in.transferTo(OutputStream.nullOutputStream());
      return new Outcome<>(value, sameAsBefore(digest), notes.get());
    } catch (NoSuchFileException e) {
      throw new CaptureException(Sentence.of("There is no file {}.", name));
    }
  }

  private String sameAsBefore(MessageDigest digest) throws CaptureException {
    String now = Sha256.of(digest);
    if (!hash.orElse(now).equals(now)) {
      throw new CaptureException(
          "The file changed while it was read. Let the recording end first.");
    }
    hash = Optional.of(now);
    return now;
  }

  /** Tells a WAV file, or what only a WAV reader can say something about, from a text. */
  private static boolean looksLikeSound(byte[] start) {
    for (int i = 0; i < Math.min(4, start.length); i++) {
      if (start[i] >= 0 && start[i] < '\t') {
        return true;
      }
    }
    return start.length < 4 || start[0] == 'R' && start[1] == 'I' && start[2] == 'F';
  }

  @Override
  public void close() throws IOException {
    if (spooled) {
      Files.deleteIfExists(path);
    }
  }
}
