package loadwalk.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loadwalk.bench.Connection;
import loadwalk.text.Sha256;

/**
 * The addresses of meters that the operator of a data home has let Loadwalk open.
 *
 * <p>They are in a hidden file of the home, never in a journal: that may come from a stranger. The
 * file's sum covers which folder on which disk the home is, so one that came with a whole home from
 * elsewhere, or was copied, lets nothing be opened; the operator is asked once more.
 */
public final class UsedMeters {
  static final String FILE = ".meters-used";

  private static final String FORMAT = "loadwalk-meters-used/1 ";
  private static final int BYTES_MOST = 1 << 16;

  private final DataHome home;

  /** Makes the addresses of a data home; nothing is read yet. */
  public UsedMeters(DataHome home) {
    this.home = home;
  }

  /** Returns the addresses, in words; none where the file is not the one that was kept here. */
  public Set<String> all() {
    try {
      Path file = home.root().resolve(FILE);
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        return Set.of();
      }
      List<String> lines = List.of(text(file).split("\n"));
      List<String> addresses = lines.subList(1, lines.size());
      return lines.get(0).equals(FORMAT + sum(addresses)) ? Set.copyOf(addresses) : Set.of();
    } catch (IOException unreadable) {
      return Set.of();
    }
  }

  private static String text(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      return new String(in.readNBytes(BYTES_MOST), UTF_8);
    }
  }

  /** Adds addresses; the home must be there. */
  public void add(Collection<Connection.Line> lines) throws IOException {
    Set<String> addresses = new TreeSet<>(all());
    lines.forEach(line -> addresses.add(address(line)));
    String text = FORMAT + sum(addresses) + "\n" + String.join("\n", addresses) + "\n";
    AtomicFile.write(home.root().resolve(FILE), text.getBytes(UTF_8));
  }

  /** Returns how an address is written. */
  public static String address(Connection.Line line) {
    return line.text();
  }

  private String sum(Collection<String> addresses) throws IOException {
    Path real = home.root().toRealPath();
    Object folder = Files.readAttributes(real, BasicFileAttributes.class).fileKey();
    String summed = real + "\n" + folder + "\n" + String.join("\n", addresses);
    return Sha256.of(summed.getBytes(UTF_8));
  }
}
