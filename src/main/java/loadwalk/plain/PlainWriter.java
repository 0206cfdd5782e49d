package loadwalk.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Slip;
import loadwalk.quantity.Printer;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.Gate;
import loadwalk.walk.Model;
import loadwalk.walk.PausedWalk;
import loadwalk.walk.Steadiness;
import loadwalk.walk.SteadinessWords;
import loadwalk.walk.Targets;
import loadwalk.walk.WarmRun;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.fact.WalkState.Hold;

/**
 * Writes a walk as lines of text: what has changed since the last line.
 *
 * @param printer how numbers are printed
 */
public record PlainWriter(Printer printer) {

  /** Returns lines that describe the changes from one model to the next. */
  public List<String> changes(Model before, Model after) {
    List<String> lines = new ArrayList<>();
    after
        .keepProblem()
        .filter(why -> !Optional.of(why).equals(before.keepProblem()))
        .ifPresent(
            why ->
                lines.add(
                    Sentence.of(
                        "NOT ON DISK: {} The walk holds. Type retry, or write-all PLACE to write"
                            + " the whole walk to another folder or file.",
                        why)));
    after.message().filter(m -> !after.message().equals(before.message())).ifPresent(lines::add);
    if (after.isStopped() && !before.isStopped()) {
      lines.add(
          "STOP. OUTPUT DOWN, SUPPLY OFF. When that is done, say why: because REASON. The step must"
              + " be briefed and armed again.");
    }
    for (PlannedStep planned : after.state().plan()) {
      step(planned, before.state(), after.state(), lines);
    }
    steadiness(before, after).ifPresent(lines::add);
    after.state().notes().stream()
        .skip(before.state().notes().size())
        .forEach(note -> lines.add(Sentence.of("kept note: {}", note.text())));
    after
        .state()
        .controls()
        .filter(text -> !after.state().controls().equals(before.state().controls()))
        .ifPresent(text -> lines.add(Sentence.of("kept controls: {}", text)));
    hold(before.state().hold(), after.state().hold(), lines);
    if (after.state().isFinished() && !before.state().isFinished()) {
      lines.add("Every step is done. Type sheet to see the sheet, or quit.");
    }
    return lines;
  }

  /** Says after each temperature of a warm-up how steady it is, and when the next is wanted. */
  private static Optional<String> steadiness(Model before, Model after) {
    return after
        .state()
        .current()
        .filter(planned -> planned.step().warmUp().isPresent())
        .filter(planned -> temperatures(after, planned) > temperatures(before, planned))
        .map(planned -> Steadiness.of(after.state(), planned, after.clock().warmSeconds()))
        .map(SteadinessWords::now);
  }

  private static int temperatures(Model model, PlannedStep planned) {
    return WarmRun.entries(model.state().step(planned.id())).size();
  }

  private static void hold(Hold before, Hold after, List<String> lines) {
    if (before == after) {
      return;
    }
    if (after == Hold.PAUSED) {
      lines.add(Sentence.of("Paused. {} Type go-on, or quit.", PausedWalk.TOLD));
    } else if (after == Hold.RUNNING) {
      lines.add("The walk goes on.");
    }
  }

  private void step(PlannedStep planned, WalkState before, WalkState after, List<String> lines) {
    StepState was = before.step(planned.id());
    StepState now = after.step(planned.id());
    entries(planned.id(), was, now, lines);
    stop(was, now).ifPresent(lines::add);
    said(planned.id(), was, now).forEach(lines::add);
    if (now.liftReason().isPresent() && was.liftReason().isEmpty()) {
      lines.add(Sentence.of("Halt lifted: {}. {}", now.liftReason().get(), start(after, planned)));
    }
    boolean moved = was.status() != now.status();
    if ((moved || !now.brief().equals(was.brief())) && now.status() == Status.BRIEFED) {
      lines.addAll(brief(after, planned));
    }
    if (moved && now.status() == Status.RUNNING) {
      lines.add(running(after, planned));
    } else if (moved && now.status().isOver()) {
      String word = now.ended().map(Outcome::text).orElse(now.status().word());
      lines.add(
          now.reason()
              .map(why -> Sentence.of("{} {}: {}.", planned.id(), word, why))
              .orElseGet(() -> Sentence.of("{} {}.", planned.id(), word)));
      if (Targets.isWithoutPoint(after, planned)) {
        lines.add(Sentence.of("{}, output was read {}", planned.id(), Criterion.NOT_KNOWN.text()));
      }
    }
  }

  /** Returns the line that says to stop, at the reading that passes where to. */
  private static Optional<String> stop(StepState was, StepState now) {
    return now.brief()
        .flatMap(Forecast::givesFirst)
        .filter(first -> now.status() == Status.RUNNING)
        .filter(first -> first.isPassed(now.newestValues()))
        .filter(first -> !was.newestValues().equals(now.newestValues()))
        .map(first -> first.line(now.newestValues()));
  }

  /**
   * Returns lines for what the operator confirmed or stated about a step's readings, because
   * someone who types by ear has no screen that shows it.
   */
  private static List<String> said(String id, StepState was, StepState now) {
    List<String> lines = new ArrayList<>();
    for (ReadingId reading : now.entries().keySet()) {
      Optional<String> why = now.latest(reading).flatMap(Entry::stoodBy);
      if (why.isPresent() && !why.equals(was.latest(reading).flatMap(Entry::stoodBy))) {
        lines.add(Sentence.of("stood by {} {}: {}", id, reading.key(), why.get()));
      }
    }
    if (now.pairs().size() > was.pairs().size()) {
      lines.add(Sentence.of("kept {} pair {}", id, now.pairs().size()));
    }
    now.said()
        .filter(said -> was.said().filter(said::equals).isEmpty())
        .ifPresent(said -> lines.add(Sentence.of("{}, output was read {}", id, said.text())));
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
        Sentence.of(
            "Step {} of {}, {}, brief: {}",
            number,
            state.plan().size(),
            planned.id(),
            brief.verdict().capitals()));
    brief.givesFirst().ifPresent(first -> lines.add("  " + first.line()));
    planned.instruction(state.context(planned)).lines().forEach(line -> lines.add("  " + line));
    for (Caution caution : brief.cautions()) {
      lines.add("  " + caution.gravity().capitals() + ": " + caution.text());
    }
    for (Map.Entry<ReadingId, Band> e : brief.readings().entrySet()) {
      Band band = e.getValue();
      lines.add(
          Sentence.of(
              "  forecast {} {}",
              e.getKey().key(),
              printer.range(band.low(), band.high(), e.getKey().unit())));
    }
    lines.add("  " + basis(brief));
    if (Targets.asksForControls(state, planned)) {
      lines.add("  Nobody wrote down how gain and controls are set: type controls TEXT.");
    }
    lines.add("  " + start(state, planned));
    return lines;
  }

  private static String basis(Forecast brief) {
    return brief.readings().isEmpty()
        ? brief.basis()
        : Sentence.of("{} % forecast. {}", Math.round(100 * brief.level()), brief.basis());
  }

  private static String start(WalkState state, PlannedStep planned) {
    if (state.hold() != Hold.RUNNING) {
      return state.hold() == Hold.STOPPED
          ? "The walk was stopped. Type because REASON, or quit."
          : "The walk is paused. Type go-on, or quit.";
    }
    if (state.step(planned.id()).status() == Status.RUNNING) {
      return running(state, planned);
    }
    if (Gate.isHalted(state)) {
      return "Type lift REASON, or skip REASON.";
    }
    if (planned.step().isConfirmed()) {
      return "Type done.";
    }
    return Gate.needsArming(state, planned)
        ? "To arm, type arm and the load that is really connected, in ohms."
        : "Type begin.";
  }

  private static String running(WalkState state, PlannedStep planned) {
    List<String> keys =
        planned.readings(state.context(planned)).stream().map(ReadingId::key).toList();
    return keys.isEmpty()
        ? Sentence.of("{} is running. It takes no readings; type done.", planned.id())
        : Sentence.of(
            "{} is running. Readings: {}; then done.", planned.id(), String.join(", ", keys));
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
    String value = printer.reading(entry.value(), reading.unit(), entry.resolution());
    Optional<Band> band = step.brief().flatMap(b -> b.band(reading));
    if (band.isEmpty()) {
      return Sentence.of("kept {} {} {}", id, reading.key(), value);
    }
    return Sentence.of(
        band.get().holds(entry.value())
            ? "kept {} {} {}, inside the forecast {}"
            : "kept {} {} {}, outside the forecast {}",
        id,
        reading.key(),
        value,
        printer.range(band.get().low(), band.get().high(), reading.unit()));
  }

  private static String doubt(Doubt doubt, ReadingId reading) {
    String key = reading.key();
    Optional<String> earlier = doubt.earlierStep();
    return earlier.isPresent()
        ? Sentence.of(
            "DOUBT on {}: {}{} {} Type amend {} READING VALUE, then enter this again, or type stand"
                + " {} REASON.",
            key,
            doubt.question(),
            doubt.text(),
            doubt.lookAt(),
            earlier.get(),
            key)
        : doubt.slip() == Slip.THD_OFF_LIMIT
            ? Sentence.of(
                "DOUBT on {}: {}{} {} Enter it again, type criterion and the point, or type stand"
                    + " {} REASON.",
                key,
                doubt.question(),
                doubt.text(),
                doubt.lookAt(),
                key)
            : Sentence.of(
                "DOUBT on {}: {}{} {} Enter it again, or type stand {} REASON.",
                key,
                doubt.question(),
                doubt.text(),
                doubt.lookAt(),
                key);
  }

  /** Returns the commands of plain mode. */
  public static List<String> help() {
    return List.of(
        "READING VALUE        as in outputVolts 13.4 V, or output volts 13.4 V; output in volts or"
            + " watts",
        "begin                start a clear step",
        "arm OHMS             start a heed step: the load that is really connected",
        "lift REASON          lift a halt; the sheet prints the reason",
        "done                 finish the step            early REASON  end a warm-up early",
        "stand READING REASON stand by a doubted reading; the sheet prints the reason",
        "amend STEP READING VALUE   correct a reading of another step",
        "criterion thd-limit | clipping-onset | below-limit | above-limit",
        "pair VOLTS THD       volts and THD read together near the limit",
        "wave FILE full-scale VOLTS divider RATIO   output and THD from a captured wave; also known"
            + " VOLTS",
        "controls TEXT        how the amplifier's gain and controls are set, in one line",
        "photo PATH CAPTION   a PNG or JPEG for the sheet; a path with spaces in double quotes",
        "Files of wave and photo start in the folder that Loadwalk was started in.",
        "ended protected | fuse-opened | gave-out | not-reached [WHAT YOU SAW]",
        "skip REASON   note TEXT   pause   go-on   warm-again   brief   sheet   quit",
        "stop                 at once: output down, supply off; then because REASON",
        "fill                 take the readings of the connected or practice meters",
        "connect              open the addresses of meters that this data home has not used",
        "retry                write again what is not on disk",
        "write-all PLACE      the whole walk anew, where writing fails: to a folder or a file;"
            + " without PLACE where it was",
        "While a step runs, connected supply meters are watched against the brief. A reading",
        "outside it is reported at once, with its number. Loadwalk switches nothing.");
  }
}
