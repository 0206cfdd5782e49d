package loadwalk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import loadwalk.json.Fault;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.json.Read;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks sequence, amplifier and bench files and prints every error. */
@Command(
    name = "check",
    description = "Check sequence, amplifier and bench files; print every error.",
    mixinStandardHelpOptions = true)
public final class CheckCommand implements Callable<Integer> {
  private static final int SHOWN = 300;
  private static final Format OUTPUT = new Format("check", 1);

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;

  @Option(names = "--json", description = "Print the result as JSON.")
  private boolean json;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "A sequence, amplifier or bench file; - is stdin.")
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

  private static FileCheck check(String name) {
    Read<FileCheck> read =
        InputFile.read(name, (bytes, file) -> new Read.Good<>(FileCheck.of(bytes, file)));
    return read.found().orElseGet(() -> new FileCheck(name, "", read.faults()));
  }

  private void print(PrintWriter out, FileCheck check) {
    if (check.faults().isEmpty()) {
      String file = Visible.line(check.file(), SHOWN);
      out.println(common.text(Sentence.of("{}: no errors ({})", file, check.kind())));
    }
    check.faults().forEach(fault -> out.println(common.text(fault.text())));
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
