package loadwalk.app.loop;

import java.io.IOException;
import java.io.PrintStream;
import java.util.Optional;
import loadwalk.cli.ExitCode;
import loadwalk.plain.PlainAnswer;
import loadwalk.plain.PlainParser;
import loadwalk.plain.PlainWriter;
import loadwalk.plain.SimulatedHand;
import loadwalk.quantity.Printer;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.view.LastWords;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Look;
import loadwalk.view.state.Alarm;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;
import loadwalk.wave.file.CaptureCaution;

/** Runs a walk as lines of text: a line in, the lines that tell what it changed out. */
public final class PlainLoop {
  private static final long TICK_NANOS = 5_000_000_000L;

  private final ProgramRunner runner;
  private final PrintStream out;
  private final Look look;
  private final PlainWriter writer;
  private final Clocks clocks;
  private Optional<Alarm.Kind> saidAlarm = Optional.empty();
  private boolean saidQuit;

  /** Makes the loop of lines; nothing is printed yet. */
  public PlainLoop(ProgramRunner runner, PrintStream out, Look look, Clocks clocks) {
    this.runner = runner;
    this.out = out;
    this.look = look;
    this.writer = new PlainWriter(look.ascii() ? Printer.ASCII : Printer.UTF8);
    this.clocks = clocks;
  }

  /** Runs until the input ends or the operator quits. */
  public int run(LineFeed lines) throws IOException {
    begin();
    boolean quit = false;
    while (!quit) {
      Optional<String> line = lines.next(this::look, this::passed);
      if (line.isEmpty() || runner.program().walk().isEmpty()) {
        break;
      }
      passed();
      quit = heard(line.get());
    }
    LastWords.of(runner.program()).forEach(this::print);
    return exitCode();
  }

  /** Lets the simulated operator walk to the end, its clock running ahead of the machine's. */
  public int fill() {
    begin();
    SimulatedHand hand =
        new SimulatedHand(PracticeAnswers.in(model().state().opened()).orElseThrow());
    long nanos = clocks.monoNanos();
    while (runner.program().walk().isPresent() && !model().state().isFinished()) {
      Optional<Intent> intent = hand.next(model());
      if (intent.isPresent()) {
        tell(new ProgramEvent.OfWalk(intent.get()));
      } else {
        nanos += TICK_NANOS;
        tick(nanos);
      }
      if (model().keepProblem().isPresent()) {
        return ExitCode.BAD_INPUT;
      }
    }
    ask(new Effect.ShowSheet(model().state().opened().walk()));
    return exitCode();
  }

  /** Lets time pass, also while nothing is typed: a warm-up takes longer than between two lines. */
  private void passed() {
    if (runner.program().walk().isPresent()) {
      tick(clocks.monoNanos());
    }
  }

  /** Takes what the meters said while the operator typed nothing; an alarm is told at once. */
  private void look() {
    Model before = model();
    runner.look();
    tellChanges(before);
  }

  private void begin() {
    runner.takeNotice().ifPresent(this::print);
    runner
        .program()
        .walk()
        .ifPresent(
            m -> {
              WalkState state = m.state();
              print(
                  Sentence.of(
                      "walk {}, {}", state.opened().walk(), state.opened().amplifier().name()));
              state.current().ifPresent(p -> writer.brief(state, p).forEach(this::print));
              runner.program().text().forEach(this::print);
            });
  }

  private Model model() {
    return runner.program().walk().orElseThrow();
  }

  private boolean heard(String line) {
    if (line.length() > BoundedLines.MOST) {
      print(
          Sentence.of(
              "That line is longer than {} characters. Nothing was entered.", BoundedLines.MOST));
      return false;
    }
    PlainAnswer meant = PlainParser.parse(line, model(), runner.program().state().waves());
    if (meant.effects().contains(new Effect.Leave())) {
      return mayQuit();
    }
    meant.intents().forEach(this::want);
    meant.effects().forEach(this::ask);
    meant.text().ifPresent(this::show);
    meant.notice().ifPresent(this::print);
    return false;
  }

  private void want(Intent intent) {
    saidQuit = false;
    Model before = model().silent();
    runner.accept(new ProgramEvent.OfWalk(intent));
    tellChanges(before);
  }

  private void show(PlainAnswer.Text text) {
    switch (text) {
      case HELP:
        PlainWriter.help().forEach(this::print);
        break;
      case BRIEF:
        Optional<PlannedStep> current = model().state().current();
        current.ifPresent(p -> writer.brief(model().state(), p).forEach(this::print));
        break;
      default:
        CaptureCaution.LINES.forEach(this::print);
        print("Once you have read these and they hold, type: wave confirm");
    }
  }

  /** Leaves an entry that is not on the disk behind only when told twice. */
  private boolean mayQuit() {
    if (!model().isWriting() || saidQuit) {
      return true;
    }
    saidQuit = true;
    print("The last entry is not on the disk. Type quit again to leave without it.");
    return false;
  }

  /** Has something done and tells all that is new: a wave read, the walk, a text to show. */
  private void ask(Effect effect) {
    Program before = runner.program();
    runner.perform(effect);
    Program after = runner.program();
    if (after.state().waves().found() != before.state().waves().found()) {
      after.state().waves().lines().forEach(this::print);
    }
    tellChanges(before.walk().orElseThrow());
    if (after.screen() != before.screen()) {
      after.text().forEach(this::print);
    }
  }

  private void tick(long nanos) {
    tell(new ProgramEvent.OfWalk(new Event.Tick(nanos, clocks.wallMillis())));
  }

  private void tell(ProgramEvent event) {
    Model before = model();
    runner.accept(event);
    tellChanges(before);
  }

  private void tellChanges(Model before) {
    runner.program().walk().ifPresent(after -> writer.changes(before, after).forEach(this::print));
    runner.takeNotice().ifPresent(this::print);
    Optional<Alarm> alarm = runner.program().state().meters().alarm();
    if (!alarm.map(Alarm::kind).equals(saidAlarm)) {
      alarm.map(Alarm::sentence).ifPresent(this::print);
      saidAlarm = alarm.map(Alarm::kind);
    }
  }

  private void print(String line) {
    out.println(look.text(line));
  }

  private int exitCode() {
    Optional<Model> walk = runner.program().walk();
    if (walk.filter(Model::isWriting).isPresent()) {
      return ExitCode.BAD_INPUT;
    }
    return walk.map(Model::state).filter(PlainLoop::isHeld).isPresent()
        ? ExitCode.HELD
        : ExitCode.DONE;
  }

  private static boolean isHeld(WalkState state) {
    return !state.openDoubts().isEmpty() || Gate.isHalted(state);
  }
}
