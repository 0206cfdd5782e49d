package loadwalk.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.quantity.Printer;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Gate;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.fact.WalkState.Hold;

/**
 * Tells a walk as lines of text: what has changed since the last line.
 *
 * @param printer how numbers are printed
 */
public record PlainWriter(Printer printer) {

  /** Returns the lines that tell what changed from one model to the next. */
  public List<String> changes(Model before, Model after) {
    List<String> lines = new ArrayList<>();
    after
        .keepProblem()
        .filter(why -> !Optional.of(why).equals(before.keepProblem()))
        .ifPresent(why -> lines.add("NOT ON DISK: " + why + " The walk holds. Type retry."));
    after.message().filter(m -> !after.message().equals(before.message())).ifPresent(lines::add);
    if (after.isStopped() && !before.isStopped()) {
      lines.add("STOP. OUTPUT DOWN, SUPPLY OFF. When that is done: because REASON.");
    }
    for (PlannedStep planned : after.state().plan()) {
      step(planned, before.state(), after.state(), lines);
    }
    after.state().notes().stream()
        .skip(before.state().notes().size())
        .forEach(note -> lines.add("kept note: " + note.text()));
    hold(before.state().hold(), after.state().hold(), lines);
    if (after.state().isFinished() && !before.state().isFinished()) {
      lines.add("Every step is done. Type sheet to see the sheet, quit to leave.");
    }
    return lines;
  }

  private static void hold(Hold before, Hold after, List<String> lines) {
    if (before == after) {
      return;
    }
    if (after == Hold.PAUSED) {
      lines.add("Paused; all that was entered is on disk. Type go-on, or quit.");
    } else if (after == Hold.RUNNING) {
      lines.add("The walk goes on.");
    }
  }

  private void step(PlannedStep planned, WalkState before, WalkState after, List<String> lines) {
    StepState was = before.step(planned.id());
    StepState now = after.step(planned.id());
    entries(planned.id(), was, now, lines);
    said(planned.id(), was, now).forEach(lines::add);
    if (now.liftReason().isPresent() && was.liftReason().isEmpty()) {
      lines.add("Halt lifted: " + now.liftReason().get() + ". " + start(after, planned));
    }
    if (!now.brief().equals(was.brief()) && now.status() == Status.BRIEFED) {
      lines.addAll(brief(after, planned));
    }
    boolean moved = was.status() != now.status();
    if (moved && now.status() == Status.RUNNING) {
      lines.add(planned.id() + " is running. Readings: " + asks(after, planned));
    } else if (moved && now.status().isOver()) {
      lines.add(
          planned.id()
              + " "
              + now.status().word()
              + now.reason().map(why -> ": " + why).orElse("")
              + ".");
    }
  }

  /** Tells what was said about a step's readings; who types by ear has no screen that shows it. */
  private static List<String> said(String id, StepState was, StepState now) {
    List<String> lines = new ArrayList<>();
    for (ReadingId reading : now.entries().keySet()) {
      Optional<String> why = now.latest(reading).flatMap(Entry::stoodBy);
      if (why.isPresent() && !why.equals(was.latest(reading).flatMap(Entry::stoodBy))) {
        lines.add("stood by " + id + " " + reading.key() + ": " + why.get());
      }
    }
    if (now.pairs().size() > was.pairs().size()) {
      lines.add("kept " + id + " pair " + now.pairs().size());
    }
    if (now.criterion() != was.criterion()) {
      lines.add(id + ", output was read " + now.criterion().text());
    }
    return lines;
  }

  /** Returns the brief of a step, worst caution first. */
  public List<String> brief(WalkState state, PlannedStep planned) {
    StepState step = state.step(planned.id());
    List<String> lines = new ArrayList<>();
    if (step.brief().isEmpty()) {
      return lines;
    }
    Forecast brief = step.brief().get();
    int number = state.plan().indexOf(planned) + 1;
    lines.add("");
    lines.add(
        "Step "
            + number
            + " of "
            + state.plan().size()
            + ", "
            + planned.id()
            + ", brief: "
            + brief.verdict().word().toUpperCase(Locale.ROOT));
    planned.instruction(state.context(planned)).lines().forEach(line -> lines.add("  " + line));
    for (Caution caution : brief.cautions()) {
      lines.add("  " + caution.gravity().word().toUpperCase(Locale.ROOT) + ": " + caution.text());
    }
    for (Map.Entry<ReadingId, Band> e : brief.readings().entrySet()) {
      Band band = e.getValue();
      lines.add(
          "  forecast "
              + e.getKey().key()
              + " "
              + printer.range(band.low(), band.high(), e.getKey().unit()));
    }
    lines.add("  " + brief.basis());
    lines.add("  " + start(state, planned));
    return lines;
  }

  private static String start(WalkState state, PlannedStep planned) {
    if (Gate.isHalted(state)) {
      return "Type lift REASON, or skip REASON.";
    }
    return Gate.needsArming(state, planned)
        ? "To arm, type arm and the load in ohms that is really connected."
        : "Type begin.";
  }

  private static String asks(WalkState state, PlannedStep planned) {
    List<ReadingId> readings = planned.readings(state.context(planned));
    return readings.isEmpty()
        ? "none; type done."
        : String.join(", ", readings.stream().map(ReadingId::key).toList()) + "; then done.";
  }

  private void entries(String id, StepState was, StepState now, List<String> lines) {
    now.entries()
        .forEach(
            (reading, list) -> {
              int old = was.entries().getOrDefault(reading, List.of()).size();
              Entry latest = list.get(list.size() - 1);
              boolean doubted =
                  list.size() == old
                      && latest.isOpen()
                      && was.latest(reading).filter(Entry::isOpen).isEmpty();
              if (list.size() > old || doubted) {
                lines.add(entry(id, reading, latest, now));
              }
              if (latest.isOpen() && (list.size() > old || doubted)) {
                latest.doubts().forEach(d -> lines.add(doubt(d, reading)));
              }
            });
  }

  private String entry(String id, ReadingId reading, Entry entry, StepState step) {
    String range =
        step.brief()
            .flatMap(b -> b.band(reading))
            .map(
                b ->
                    ", forecast "
                        + printer.range(b.low(), b.high(), reading.unit())
                        + (b.holds(entry.value()) ? ", inside" : ", outside"))
            .orElse("");
    return "kept "
        + id
        + " "
        + reading.key()
        + " "
        + printer.reading(entry.value(), reading.unit(), entry.resolution())
        + range;
  }

  private static String doubt(Doubt doubt, ReadingId reading) {
    return "DOUBT on "
        + reading.key()
        + ": "
        + doubt.question()
        + doubt.text()
        + " "
        + doubt.lookAt()
        + doubt
            .earlierStep()
            .map(earlier -> " Type amend " + earlier + " READING VALUE, then enter this again, ")
            .orElse(" Enter it again, ")
        + "or type stand "
        + reading.key()
        + " REASON.";
  }

  /** Returns the words plain mode knows. */
  public static List<String> help() {
    return List.of(
        "READING VALUE        as in outputVolts 13.4 V; volts and watts stand for each other",
        "begin                start a clear step",
        "arm OHMS             start a heed step: the load that is really connected",
        "lift REASON          lift a halt; printed on the sheet",
        "done                 finish the step            early REASON  end a warm-up early",
        "stand READING REASON stand by a doubted reading",
        "amend STEP READING VALUE",
        "criterion thd-limit | clipping-onset | below-limit",
        "pair VOLTS THD       volts and THD read together near the limit",
        "wave FILE full-scale VOLTS divider RATIO   output and THD from a captured wave; also known"
            + " VOLTS",
        "photo PATH CAPTION   a PNG or JPEG for the sheet; a path with spaces in double quotes",
        "skip REASON   note TEXT   pause   go-on   warm-again   brief   sheet   quit",
        "stop                 at once: output down, supply off; then because REASON",
        "fill                 take the readings of the connected or practice meters",
        "While a step runs, connected meters of supply amps and volts are watched against the",
        "brief; what is out of it is told at once, with its number. Loadwalk switches nothing.");
  }
}
