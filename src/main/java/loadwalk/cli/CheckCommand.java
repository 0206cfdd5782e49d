package loadwalk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import loadwalk.json.Fault;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.json.JsonText;
import loadwalk.text.Visible;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints every error of sequence, amplifier and bench files. */
@Command(
    name = "check",
    description = "Print all errors of sequence, amplifier and bench files.",
    mixinStandardHelpOptions = true)
public final class CheckCommand implements Callable<Integer> {
  private static final Format OUTPUT = new Format("check", 1);

  @Spec private CommandSpec spec;
  @Mixin private HomeOption home;

  @Option(names = "--json", description = "Print the result as one JSON object.")
  private boolean json;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "A file, or - for stdin.")
  private List<String> files = List.of();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<FileCheck> checks = new ArrayList<>();
    for (String file : files) {
      checks.add(check(file));
    }
    if (json) {
      out.println(JsonOut.line(generator -> write(generator, checks)));
    } else {
      checks.forEach(check -> print(out, check));
    }
    out.flush();
    return checks.stream().allMatch(check -> check.faults().isEmpty())
        ? ExitCode.DONE
        : ExitCode.BAD_INPUT;
  }

  private static FileCheck check(String file) {
    try (InputStream in = file.equals("-") ? System.in : Files.newInputStream(Path.of(file))) {
      return FileCheck.of(in.readNBytes(JsonText.LARGEST + 1), file.equals("-") ? "stdin" : file);
    } catch (NoSuchFileException e) {
      return unreadable(file, "there is no such file");
    } catch (AccessDeniedException e) {
      return unreadable(file, "the file may not be read");
    } catch (IOException | InvalidPathException e) {
      return unreadable(file, "the file cannot be read");
    }
  }

  private static FileCheck unreadable(String file, String sentence) {
    return new FileCheck(file, "", List.of(new Fault(file, 1, 1, "", sentence)));
  }

  private static void print(PrintWriter out, FileCheck check) {
    if (check.faults().isEmpty()) {
      out.println(Visible.line(check.file(), 300) + ": no errors (" + check.kind() + ")");
    }
    check.faults().forEach(fault -> out.println(fault.text()));
  }

  private static void write(JsonGenerator out, List<FileCheck> checks) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, OUTPUT.text());
    out.writeArrayFieldStart("files");
    for (FileCheck check : checks) {
      out.writeStartObject();
      out.writeStringField("file", check.file());
      out.writeStringField("kind", check.kind());
      out.writeArrayFieldStart("errors");
      for (Fault fault : check.faults()) {
        writeFault(out, fault);
      }
      out.writeEndArray();
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void writeFault(JsonGenerator out, Fault fault) throws IOException {
    out.writeStartObject();
    out.writeNumberField("line", fault.line());
    out.writeNumberField("column", fault.column());
    out.writeStringField("key", fault.key());
    out.writeStringField("text", fault.sentence());
    out.writeEndObject();
  }
}
