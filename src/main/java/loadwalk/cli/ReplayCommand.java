package loadwalk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import loadwalk.bench.ReadingId;
import loadwalk.journal.Soundness;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.rehearse.Replay;
import loadwalk.walk.rehearse.Replay.Difference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs kept walks through today's rules and shows what comes out differently. */
@Command(
    name = "replay",
    description = "Run kept walks through today's rules; show what comes out differently.",
    mixinStandardHelpOptions = true)
public final class ReplayCommand implements Callable<Integer> {
  private static final Format OUTPUT = new Format("replay", 1);
  private static final int SHOWN = 64;

  private final KeptWalks.Opener keptWalks;

  @Spec private CommandSpec spec;

  @Mixin private CommonOptions common;

  @Option(names = "--json", description = "Print the result as JSON.")
  private boolean json;

  @Parameters(
      arity = "1..*",
      paramLabel = "WALK",
      description = "The walk: its name, the start of it, or the path of its journal.")
  private List<String> walks = List.of();

  /** Makes the command on the walks of a data home. */
  public ReplayCommand(KeptWalks.Opener keptWalks) {
    this.keptWalks = keptWalks;
  }

  private record Replayed(String walk, Soundness soundness, List<Difference> differences) {}

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    KeptWalks kept = keptWalks.at(common.homeToRead());
    List<Replayed> replayed = new ArrayList<>();
    int code = ExitCode.DONE;
    for (String walk : walks) {
      code = Math.max(code, replay(kept, walk, replayed));
    }
    if (json) {
      out.println(JsonOut.line(generator -> write(generator, replayed)));
    } else {
      replayed.forEach(walk -> print(out, walk));
    }
    out.flush();
    spec.commandLine().getErr().flush();
    return code;
  }

  private int replay(KeptWalks kept, String walk, List<Replayed> replayed) {
    try {
      KeptWalks.Journal journal = kept.read(walk);
      if (journal.bodies().isEmpty()) {
        complain(walk, journal.read().told().orElse("This walk has no record that can be read."));
        return ExitCode.DAMAGED;
      }
      Soundness soundness = journal.soundness(FactText.walk(journal.bodies()).isFinished());
      soundness.remarks().forEach(why -> complain(walk, why));
      List<List<Stamped>> records = journal.bodies().stream().map(FactText::read).toList();
      replayed.add(new Replayed(walk, soundness, Replay.of(kept.rules(), records)));
      return soundness.standing().isFaulty() ? ExitCode.DAMAGED : ExitCode.DONE;
    } catch (UnreadableFact unreadable) {
      complain(walk, Sentence.of("This walk cannot be read: {}.", unreadable.getMessage()));
      return ExitCode.DAMAGED;
    } catch (IOException none) {
      complain(walk, none.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private void complain(String walk, String why) {
    spec.commandLine().getErr().println(Visible.line(walk, SHOWN) + ": " + why);
  }

  private void print(PrintWriter out, Replayed replayed) {
    int count = replayed.differences().size();
    String walk = replayed.walk();
    String told =
        switch (count) {
          case 0 -> Sentence.of("{}: nothing differs", walk);
          case 1 -> Sentence.of("{}: 1 difference", walk);
          default -> Sentence.of("{}: {} differences", walk, count);
        };
    out.println(common.text(told));
    replayed.soundness().remarks().forEach(why -> out.println(common.text("  " + why)));
    replayed.differences().forEach(d -> out.println(common.text(line(d))));
  }

  private static String line(Difference d) {
    String what = d.what().word();
    String then = words(d.kept());
    String today = words(d.today());
    return d.reading().isEmpty()
        ? Sentence.of("  {}: {} then {}, today {}", d.step(), what, then, today)
        : Sentence.of(
            "  {}, {} «{}»: {} then {}, today {}",
            d.step(),
            d.reading().get().label(),
            Visible.line(d.typed(), SHOWN),
            what,
            then,
            today);
  }

  private static String words(Set<String> codes) {
    return codes.isEmpty() ? "none" : Visible.line(String.join(" ", codes), 10 * SHOWN);
  }

  private static void write(JsonGenerator out, List<Replayed> replayed) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, OUTPUT.text());
    out.writeArrayFieldStart("walks");
    for (Replayed walk : replayed) {
      out.writeStartObject();
      out.writeStringField("walk", walk.walk());
      out.writeStringField("journal", walk.soundness().standing().word());
      out.writeArrayFieldStart("differences");
      for (Difference difference : walk.differences()) {
        write(out, difference);
      }
      out.writeEndArray();
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void write(JsonGenerator out, Difference d) throws IOException {
    out.writeStartObject();
    out.writeStringField("step", d.step());
    if (d.reading().isPresent()) {
      out.writeStringField("reading", d.reading().map(ReadingId::key).orElseThrow());
      out.writeStringField("typed", d.typed());
    }
    out.writeStringField("what", d.what().word());
    codes(out, "kept", d.kept());
    codes(out, "today", d.today());
    out.writeEndObject();
  }

  private static void codes(JsonGenerator out, String key, Set<String> codes) throws IOException {
    out.writeArrayFieldStart(key);
    for (String code : codes) {
      out.writeString(code);
    }
    out.writeEndArray();
  }
}
