package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loadwalk.app.store.TypedPath.Inside;
import loadwalk.app.store.TypedPath.Outside;
import loadwalk.cli.BadInput;

/**
 * The folder that holds everything of one user: sequences, benches, amplifiers and sessions.
 *
 * @param root its absolute path
 */
public record DataHome(Path root) {
  private static final String NAME = "loadwalk";

  /** Makes the path absolute. */
  public DataHome {
    root = root.toAbsolutePath().normalize();
  }

  /** Systems that differ in where a user's folders are. */
  enum Platform {
    WINDOWS,
    MAC,
    OTHER
  }

  /**
   * What the choice of a data home depends on.
   *
   * @param home the value of {@code --home}, if given
   * @param current the current folder
   * @param environment the environment variables
   * @param system the name of the operating system, as in the property {@code os.name}
   * @param user the user's home folder
   */
  public record Surroundings(
      Optional<Path> home,
      Path current,
      Map<String, String> environment,
      String system,
      Path user) {
    /** Copies the environment. */
    public Surroundings {
      environment = Map.copyOf(environment);
    }

    /**
     * Returns the surroundings of this process.
     *
     * @throws BadInput if the locale cannot write the name of the current folder, and it matters:
     *     nothing is found in a folder of which Java has lost the name
     */
    public static Surroundings ofThisProcess(Optional<Path> home) {
      if (home.filter(Path::isAbsolute).isEmpty()) {
        LocaleLetters.require(System.getProperty("user.dir", ""));
      }
      String user = System.getProperty("user.home", "");
      return new Surroundings(
          home,
          Path.of(""),
          System.getenv(),
          System.getProperty("os.name", ""),
          Path.of(LocaleLetters.areLost(user) ? "" : user));
    }

    /** Returns the customs that hold for the folders of a user. */
    Platform platform() {
      String name = system.toLowerCase(Locale.ROOT);
      if (name.startsWith("windows")) {
        return Platform.WINDOWS;
      }
      return name.startsWith("mac") ? Platform.MAC : Platform.OTHER;
    }

    /** Returns the user's home folder; relative where there is none. */
    Path userFolder() {
      // Java knows a user without an entry in the list of users as "?", which is no folder.
      return user.isAbsolute() ? user : variable("HOME", Path.of(""));
    }

    /** Returns the folder that a variable names; a relative path there is to be ignored. */
    Path variable(String name, Path otherwise) {
      String value = environment.get(name);
      if (value != null) {
        LocaleLetters.require(value);
      }
      try {
        Path named = value == null ? otherwise : Path.of(value);
        return named.isAbsolute() ? named : otherwise;
      } catch (InvalidPathException e) {
        return otherwise;
      }
    }
  }

  /**
   * Chooses the data home: {@code --home}, else the current folder if it holds {@code sequences},
   * else the user's data folder by the custom of the platform.
   *
   * @throws BadInput if the locale cannot write the name of that folder
   */
  public static DataHome choose(Surroundings around) {
    if (around.home().isPresent()) {
      return new DataHome(around.home().get());
    }
    Path sequences = around.current().resolve("sequences");
    // A link that leads nowhere now, such as to a disk that is not connected, marks a home as well.
    if (Files.isDirectory(sequences) || Files.isSymbolicLink(sequences)) {
      return new DataHome(around.current());
    }
    return new DataHome(byPlatform(around).resolve(NAME));
  }

  private static Path byPlatform(Surroundings around) {
    Path user = around.userFolder();
    return switch (around.platform()) {
      case WINDOWS -> around.variable("APPDATA", user.resolve("AppData").resolve("Roaming"));
      case MAC -> user.resolve("Library").resolve("Application Support");
      // XDG Base Directory Specification.
      case OTHER -> around.variable("XDG_DATA_HOME", user.resolve(".local").resolve("share"));
    };
  }

  /** Returns the folder of the journals; it need not be there yet. */
  public Path sessions() {
    return root.resolve("sessions");
  }

  /** Returns the data home that a folder of journals is in; empty where it is any other folder. */
  static Optional<DataHome> around(Path folder) {
    return Optional.ofNullable(folder.getParent())
        .map(DataHome::new)
        .filter(home -> home.sessions().equals(folder));
  }

  /**
   * Finds where a path that was typed leads: parts divided by slashes, each a plain name. A link is
   * followed only if it stays in the data home.
   */
  TypedPath inside(String typed) {
    if (typed.isEmpty()) {
      return new Outside("No path was given.");
    }
    Path at = root;
    for (String part : typed.split("[/\\\\]", -1)) {
      Optional<String> fault = FileNames.fault(part);
      if (fault.isPresent()) {
        return new Outside(fault.get());
      }
      try {
        at = at.resolve(part);
      } catch (InvalidPathException e) {
        return new Outside("This computer cannot use that path.");
      }
    }
    return stays(at)
        ? new Inside(at)
        : new Outside("The path leads out of the data home through a link.");
  }

  /** Tells whether the real path, as far as it is there, lies in the real data home. */
  public boolean stays(Path path) {
    try {
      Path there = path;
      while (!Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
        there = there.getParent();
      }
      if (there.equals(root) || !there.startsWith(root)) {
        return path.startsWith(root);
      }
      return there.toRealPath().startsWith(root.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }
}
