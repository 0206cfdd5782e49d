package loadwalk.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with the words of a command line, and where help is. */
public final class WrongUsage {
  private static final Map<Class<?>, String> KINDS =
      Map.of(
          int.class, "a whole number",
          Integer.class, "a whole number",
          long.class, "a whole number",
          Long.class, "a whole number",
          double.class, "a number",
          Double.class, "a number",
          Path.class, "the name of a file or folder");

  private WrongUsage() {}

  /** Prints what is wrong and returns the exit code. */
  public static int told(ParameterException fault, String... words) {
    CommandLine command = fault.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(
        fault instanceof UnmatchedArgumentException unmatched
            ? unknown(unmatched)
            : unsuited(fault).orElseGet(fault::getMessage));
    err.println(Sentence.of("For help: {} --help", command.getCommandSpec().qualifiedName()));
    err.flush();
    return ExitCode.BAD_INPUT;
  }

  /** Says what a value must be that is none of its kind; empty where something else is wrong. */
  private static Optional<String> unsuited(ParameterException fault) {
    ArgSpec asked = fault.getArgSpec();
    String kind = asked == null ? null : KINDS.get(asked.typeInfo().getType());
    if (kind == null || fault.getValue() == null) {
      return Optional.empty();
    }
    String name = asked instanceof OptionSpec option ? option.longestName() : asked.paramLabel();
    return Optional.of(
        Sentence.of("{} takes {}, not {}.", name, kind, Visible.name(fault.getValue())));
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
