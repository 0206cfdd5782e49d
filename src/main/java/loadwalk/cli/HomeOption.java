package loadwalk.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loadwalk.json.Shown;
import picocli.CommandLine.Option;

/** The option that every command takes; the folder is also where a crash is reported. */
public final class HomeOption {
  private static final int SHOWN = 200;

  @Option(
      names = "--home",
      paramLabel = "DIR",
      description = "The folder that holds sequences and sessions.")
  private Path home;

  /** Returns the folder, where one was given; it need not be there. */
  public Optional<Path> home() {
    return Optional.ofNullable(home);
  }

  /** Returns the folder, where one was given, as {@link #toRead} does. */
  public Optional<Path> homeToRead() {
    return toRead(home());
  }

  /**
   * Returns a folder that was named to a command that only reads: in a mistyped one it would find
   * nothing and not say why.
   *
   * @throws BadInput with one sentence if it is no folder
   */
  public static Optional<Path> toRead(Optional<Path> named) {
    // No lambda: a kept sheet is printed by way of this, and loading one takes time.
    if (named.isPresent() && !Files.isDirectory(named.get())) {
      String shown = "--home " + Shown.text(named.get().toString(), SHOWN);
      boolean there = Files.exists(named.get());
      String fault = there ? " is a file; it must be a folder." : ": there is no such folder.";
      throw new BadInput(shown + fault);
    }
    return named;
  }
}
