package loadwalk.cli;

import java.io.PrintWriter;
import java.util.List;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with the words of a command line, and where help is. */
public final class WrongUsage {
  private WrongUsage() {}

  /** Prints what is wrong and returns the exit code. */
  public static int told(ParameterException fault, String... words) {
    CommandLine command = fault.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(
        fault instanceof UnmatchedArgumentException unmatched
            ? unknown(unmatched)
            : fault.getMessage());
    err.println(Sentence.of("For help: {} --help", command.getCommandSpec().qualifiedName()));
    err.flush();
    return ExitCode.BAD_INPUT;
  }

  private static String unknown(UnmatchedArgumentException fault) {
    String word = Visible.name(fault.getUnmatched().get(0));
    CommandLine command = fault.getCommandLine();
    if (fault.isUnknownOption()) {
      List<String> near = fault.getSuggestions();
      return near.isEmpty()
          ? Sentence.of("There is no option {}.", word)
          : Sentence.of("There is no option {}; did you mean {}?", word, near.get(0));
    }
    if (command.getParent() == null) {
      String names = String.join(", ", command.getSubcommands().keySet());
      return Sentence.of("There is no command {}. The commands: {}.", word, names);
    }
    return Sentence.of("The word {} is one too many.", word);
  }
}
