package loadwalk.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loadwalk.text.Visible;
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

  /**
   * Returns the folder, where one was given, for a command that only reads: in a mistyped one it
   * would find nothing and not say why.
   *
   * @throws BadInput with one sentence if it is no folder
   */
  public Optional<Path> homeToRead() {
    if (home != null && !Files.isDirectory(home)) {
      String shown = "--home " + Visible.line(home.toString(), SHOWN);
      boolean there = Files.exists(home);
      String fault = there ? " is a file; it must be a folder." : ": there is no such folder.";
      throw new BadInput(shown + fault);
    }
    return home();
  }
}
