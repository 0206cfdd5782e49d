package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Reads what an operator may have put into the data home. Only what is not there counts as none:
 * what stands there and cannot be read is a fault, for something of Loadwalk's own taken in its
 * place would have other numbers.
 */
public final class HomeFiles {
  private HomeFiles() {}

  /**
   * Tells whether something stands at a path, be it a link that leads nowhere.
   *
   * @throws StorageFault if that cannot be found out
   */
  public static boolean isThere(Path path) throws StorageFault {
    try {
      Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return true;
    } catch (NoSuchFileException none) {
      return false;
    } catch (IOException e) {
      // It is the way there that fails, so the whole of it has to be named.
      throw unreadable(Visible.line(path.toString(), Visible.SENTENCE), e);
    }
  }

  /**
   * Tells whether a folder of the data home is there.
   *
   * @throws StorageFault if something else has its name, or it leads out of the data home
   */
  public static boolean isFolderThere(Path home, String name) throws StorageFault {
    Path folder = home.resolve(name);
    if (!isThere(folder)) {
      return false;
    }
    staysInside(home, folder, name);
    if (!Files.isDirectory(folder)) {
      throw StorageFault.broken(Sentence.of("{} is not a folder, and must be one.", name));
    }
    return true;
  }

  /**
   * Lists what is in a folder of the data home; nothing where it is not there.
   *
   * @throws StorageFault if it cannot be listed
   */
  public static List<Path> list(Path home, String name) throws StorageFault {
    List<Path> paths = new ArrayList<>();
    if (isFolderThere(home, name)) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(home.resolve(name))) {
        all.forEach(paths::add);
      } catch (DirectoryIteratorException e) {
        throw unreadable(name, e.getCause());
      } catch (IOException e) {
        throw unreadable(name, e);
      }
    }
    return paths;
  }

  /**
   * Reads a file in a folder of the data home; empty where there is none.
   *
   * @param name its path from the data home, with slashes
   * @param largest the most bytes that are read
   * @throws StorageFault if something stands there that cannot be read, with what and where
   */
  public static Optional<byte[]> read(Path home, String name, int largest) throws StorageFault {
    Path file = home.resolve(name);
    if (!isFolderThere(home, name.substring(0, name.indexOf('/'))) || !isThere(file)) {
      return Optional.empty();
    }
    String shown = Visible.name(name);
    staysInside(home, file, shown);
    if (!Files.isRegularFile(file)) {
      throw StorageFault.broken(
          Sentence.of("{} is a folder, a pipe or a device; it must be a plain file.", shown));
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(largest + 1);
      if (bytes.length > largest) {
        throw StorageFault.broken(
            Sentence.of("{} is larger than {} MiB and was not read.", shown, largest >> 20));
      }
      return Optional.of(bytes);
    } catch (StorageFault known) {
      throw known;
    } catch (IOException e) {
      throw unreadable(shown, e);
    }
  }

  private static void staysInside(Path home, Path path, String shown) throws StorageFault {
    try {
      if (!path.toRealPath().startsWith(home.toRealPath())) {
        throw StorageFault.broken(
            Sentence.of("{} is a link that leads out of the data home.", shown));
      }
    } catch (NoSuchFileException nowhere) {
      throw StorageFault.broken(Sentence.of("{} is a link that leads nowhere.", shown));
    } catch (StorageFault known) {
      throw known;
    } catch (IOException e) {
      throw unreadable(shown, e);
    }
  }

  private static StorageFault unreadable(String shown, IOException e) {
    return new StorageFault(
        FaultKind.BROKEN,
        e instanceof AccessDeniedException
            ? Sentence.of("{} cannot be read: access is denied.", shown)
            : Sentence.of("{} cannot be read: the disk or a folder on the way failed.", shown),
        e);
  }
}
