package loadwalk.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that every command takes; the folder is also where a crash is reported. */
public final class HomeOption {
  @Option(
      names = "--home",
      paramLabel = "DIR",
      description = "The folder that holds sequences and sessions.")
  private Path home;

  /** Returns the folder, where one was given. */
  public Optional<Path> home() {
    return Optional.ofNullable(home);
  }
}
