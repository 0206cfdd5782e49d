package loadwalk.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loadwalk.text.Ascii;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine.Option;

/** The options of every command. */
public final class CommonOptions {
  private static final int SHOWN = 200;

  @Option(
      names = "--home",
      paramLabel = "DIR",
      description = "The folder with your sequences and sessions.")
  private Path home;

  @Option(
      names = "--ascii",
      description = "Print text in plain ASCII; JSON, HTML, Markdown and CSV stay UTF-8.")
  private boolean ascii;

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
      String shown = Visible.line(home.toString(), SHOWN);
      throw new BadInput(
          Files.exists(home)
              ? Sentence.of("--home {} is a file; it must be a folder.", shown)
              : Sentence.of("--home {}: there is no such folder.", shown));
    }
    return home();
  }

  /** Tells whether text is printed in plain ASCII. */
  boolean ascii() {
    return ascii;
  }

  /** Returns a line of text as it is printed; what programs read is printed as it is. */
  String text(String line) {
    return ascii ? Ascii.of(line) : line;
  }
}
