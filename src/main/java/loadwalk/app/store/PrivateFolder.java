package loadwalk.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import loadwalk.cli.Folders;
import loadwalk.cli.OwnerOnly;
import loadwalk.journal.StorageFault;
import loadwalk.text.Sentence;

/**
 * A folder for files whose code is run: nobody but its user can enter it, or put another in its
 * place. That, and the bytes of a file, are looked at each time one is asked for.
 */
public final class PrivateFolder {
  private static final String NAME = "loadwalk";

  private final Path cache;

  private PrivateFolder(Path cache) {
    this.cache = cache;
  }

  /** Returns the one in the folder that the platform has for what a user can make anew. */
  public static PrivateFolder ofThisUser() {
    return ofUser(DataHome.Surroundings.ofThisProcess(Optional.empty()));
  }

  static PrivateFolder ofUser(DataHome.Surroundings around) {
    Path user = around.userFolder();
    return new PrivateFolder(
        switch (around.platform()) {
          case WINDOWS -> around.variable("LOCALAPPDATA", user.resolve("AppData").resolve("Local"));
          case MAC -> user.resolve("Library").resolve("Caches");
          case OTHER -> around.variable("XDG_CACHE_HOME", user.resolve(".cache"));
        });
  }

  /**
   * Returns a file that holds exactly these bytes; it is made where it is not there.
   *
   * @throws IOException with a clause that says what is wrong with the file or a folder it is in
   */
  public Path file(String name, byte[] bytes) throws IOException {
    if (!cache.isAbsolute()) {
      throw new IOException("this user has no folder to keep it in; set XDG_CACHE_HOME to one");
    }
    try {
      return kept(name, bytes);
    } catch (StorageFault fault) {
      throw unusable(fault.getCause() instanceof IOException why ? why : fault);
    } catch (FileSystemException fault) {
      throw unusable(fault);
    }
  }

  private IOException unusable(IOException why) {
    return new IOException(
        Sentence.of("the folder {} cannot be used: {}", cache, DiskFaults.reason(why)), why);
  }

  private Path kept(String name, byte[] bytes) throws IOException {
    OptionalInt user =
        Ownership.isKnown() ? OptionalInt.of(Ownership.userOfProcess()) : OptionalInt.empty();
    Folders.make(cache);
    // A link above is the user's own way to arrange the disk; what it leads to is looked at.
    Path folder = cache.toRealPath().resolve(NAME);
    try {
      Files.createDirectory(folder, OwnerOnly.folder());
    } catch (FileAlreadyExistsException there) {
      // Whatever it is, it is looked at below.
    }
    if (user.isPresent()) {
      requireOwn(folder, user.getAsInt());
    }
    Path file = folder.resolve(name);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      AtomicFile.write(file, bytes);
    }
    if (user.isPresent()) {
      requireOwnFile(file, user.getAsInt());
    }
    requireSame(file, bytes);
    return file;
  }

  private static void requireOwn(Path folder, int user) throws IOException {
    for (Path above = folder.getParent(); above != null; above = above.getParent()) {
      if (!Ownership.of(above).keepsItsNamesFor(user)) {
        throw new IOException(
            Sentence.of("others may change the folder {}, so nothing below it is run", above));
      }
    }
    Ownership own = Ownership.of(folder);
    if (!own.isFolder() || !own.isOnlyOf(user)) {
      throw new IOException(
          Sentence.of(
              "{} must be a folder that is yours alone, mode 700, so nothing in it is run",
              folder));
    }
  }

  private static void requireOwnFile(Path file, int user) throws IOException {
    Ownership own = Ownership.of(file);
    if (!own.isFile() || own.names() != 1 || !own.isOnlyOf(user)) {
      throw new IOException(
          Sentence.of("{} is not a file of yours alone, so it is not run; remove it", file));
    }
  }

  private static void requireSame(Path file, byte[] bytes) throws IOException {
    try (InputStream in =
        Files.newInputStream(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
      if (!Arrays.equals(in.readNBytes(bytes.length + 1), bytes)) {
        throw new IOException(
            Sentence.of("{} is not what Loadwalk put there, so it is not run; remove it", file));
      }
    }
  }
}
