package loadwalk.view;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.practice.PracticeRig;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.state.Library;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;

/**
 * The program on a desk of its own: keys in, frames out, a journal in memory and time as told.
 *
 * <p>A script is a row of words: {@code Enter}, {@code F8}, {@code Esc}, {@code Up}, {@code
 * Ctrl-W}…; {@code text:13,4 V} types; {@code wait:60} lets a minute go by, a second at a time.
 */
final class Desk {
  static final long WALL = 1_773_480_600_000L;

  private static final Map<String, Key.Kind> NAMED =
      Map.ofEntries(
          Map.entry("Esc", Key.Kind.ESCAPE),
          Map.entry("Back", Key.Kind.BACKSPACE),
          Map.entry("BackTab", Key.Kind.BACK_TAB),
          Map.entry("PageUp", Key.Kind.PAGE_UP),
          Map.entry("PageDown", Key.Kind.PAGE_DOWN),
          Map.entry("Ctrl-W", Key.Kind.WAVE),
          Map.entry("Ctrl-L", Key.Kind.LISTEN),
          Map.entry("Ctrl-T", Key.Kind.HOLD));

  private final ProgramUpdate loop = new ProgramUpdate(new Walker(StockRules.RULES));
  private final List<String> journal = new ArrayList<>();
  private final List<Effect> asked = new ArrayList<>();
  private final List<Fact> kept = new ArrayList<>();
  private Program program;
  private Optional<PracticeAnswers> practice = Optional.empty();
  private Optional<String> diskProblem = Optional.empty();
  private final List<Effect.AppendJournal> unwritten = new ArrayList<>();
  private boolean waitsForDisk;
  private int speed = 1;
  private long seconds = 10;

  private Desk(Program program) {
    this.program = program;
  }

  static Desk atHome() {
    return atHome("/home/bench/loadwalk");
  }

  static Desk atHome(String folder) {
    return new Desk(Program.atHome(folder, StockRules.RULES));
  }

  /** Returns a second desk where this one stands now; nothing has been kept or asked there yet. */
  Desk copy() {
    Desk copy = new Desk(program);
    copy.journal.addAll(journal);
    copy.practice = practice;
    copy.diskProblem = diskProblem;
    copy.speed = speed;
    copy.seconds = seconds;
    return copy;
  }

  Desk knowing(Library library) {
    return hears(new ProgramEvent.LibraryRead(library));
  }

  /** Opens a walk on a bench of its own. */
  Desk opens(String sequence, Amplifier amplifier, Bench bench) {
    return opens(sequence, amplifier, bench, OptionalLong.empty()).briefed();
  }

  /** Opens a walk on the practice bench of a seed, where a second counts as a minute. */
  Desk practises(String sequence, long seed) {
    PracticeRig rig = PracticeRig.ofSeed(seed);
    speed = 60;
    Amplifier amplifier = rig.amplifier().printed();
    opens(sequence, amplifier, rig.bench().described(), OptionalLong.of(seed));
    practice = PracticeAnswers.in(state().opened());
    return briefed();
  }

  /** Opens a walk whose first step is not briefed yet. */
  Desk opens(String text, Amplifier amplifier, Bench bench, OptionalLong seed) {
    Fact.Opened opened =
        new Fact.Opened(
            "2026-03-14-0930-verrin-v1", "1.0.0", sequence(text), text, amplifier, bench, seed);
    journal.add(FactText.body(List.of(new Stamped(opened, WALL))));
    return hears(new ProgramEvent.WalkReady(Model.of(FactText.walk(journal), speed)));
  }

  /** Reads the walk back from its journal, as after a restart. */
  Desk reopened() {
    hears(new ProgramEvent.WalkReady(Model.of(FactText.walk(journal), speed)));
    return briefed();
  }

  static Sequence sequence(String text) {
    return SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "desk").found().orElseThrow();
  }

  private Desk briefed() {
    return hears(new ProgramEvent.OfWalk(new Event.Reopened(nanos(), wall())));
  }

  private long nanos() {
    return seconds * 1_000_000_000L;
  }

  long millis() {
    return seconds * 1000;
  }

  long wall() {
    return WALL + seconds * 1000;
  }

  /** Lets time go by while Loadwalk is not running, then starts it again. */
  Desk reopenedAfter(int hours) {
    seconds += hours * 3600L;
    return reopened();
  }

  /** Lets what is to be written wait from now on, until {@link #diskGoesOn}. */
  Desk diskWaits() {
    waitsForDisk = true;
    return this;
  }

  Desk diskGoesOn() {
    waitsForDisk = false;
    List<Effect.AppendJournal> now = List.copyOf(unwritten);
    unwritten.clear();
    now.forEach(append -> hears(new ProgramEvent.OfWalk(appended(append))));
    return this;
  }

  /** Lets every write fail from now on, for a reason. */
  Desk diskFails(String why) {
    diskProblem = Optional.of(why);
    return this;
  }

  Desk press(String... script) {
    for (String word : script) {
      if (word.startsWith("text:")) {
        word.substring(5).chars().forEach(c -> hears(new ProgramEvent.Pressed(Key.of((char) c))));
      } else if (word.startsWith("wait:")) {
        waits(Integer.parseInt(word.substring(5)));
      } else {
        hears(new ProgramEvent.Pressed(key(word)));
      }
    }
    return this;
  }

  static Key key(String word) {
    Key.Kind named = NAMED.get(word);
    return Key.of(named == null ? Key.Kind.valueOf(word.toUpperCase(Locale.ROOT)) : named);
  }

  private void waits(int count) {
    for (int i = 0; i < count; i++) {
      seconds++;
      hears(new ProgramEvent.OfWalk(new Event.Tick(nanos(), wall())));
    }
  }

  Desk hears(ProgramEvent first) {
    Deque<ProgramEvent> waiting = new ArrayDeque<>(List.of(first));
    while (!waiting.isEmpty()) {
      ProgramNext next = loop.update(program, waiting.poll());
      program = next.program();
      next.effects().forEach(effect -> waiting.addAll(done(effect)));
    }
    practice.filter(bench -> program.walk().isPresent()).ifPresent(this::reads);
    return this;
  }

  private void reads(PracticeAnswers bench) {
    Map<ReadingId, String> shown = bench.of(state(), model().clock().warmSeconds());
    ProgramState.Practice now = new ProgramState.Practice(shown, speed);
    program = loop.update(program, new ProgramEvent.PracticeRead(Optional.of(now))).program();
  }

  /** Keeps facts and fills steps in; whatever else is asked is only noted. */
  private List<ProgramEvent> done(Effect effect) {
    if (effect instanceof Effect.AppendJournal append && waitsForDisk) {
      unwritten.add(append);
      return List.of();
    }
    if (effect instanceof Effect.AppendJournal append) {
      return List.of(new ProgramEvent.OfWalk(appended(append)));
    }
    asked.add(effect);
    if (effect instanceof Effect.FillStep) {
      Map<ReadingId, String> shown =
          practice.orElseThrow().of(state(), model().clock().warmSeconds());
      boolean warming = shown.size() == 1 && shown.containsKey(ReadingId.SINK_CELSIUS);
      Map<ReadingId, String> texts = warming ? shown : PracticeAnswers.missing(shown, step());
      return List.of(
          texts.isEmpty()
              ? new ProgramEvent.Told("This step already has every reading.")
              : new ProgramEvent.OfWalk(new Intent.EnterAll(state().currentId(), texts)));
    }
    return effect instanceof Effect.ConfirmCautions
        ? List.of(new ProgramEvent.CautionRead())
        : List.of();
  }

  private Event appended(Effect.AppendJournal append) {
    if (diskProblem.isPresent()) {
      return new Event.NotKept(diskProblem.get());
    }
    journal.add(FactText.body(append.facts()));
    append.facts().forEach(stamped -> kept.add(stamped.fact()));
    return new Event.Kept(append.facts());
  }

  Program program() {
    return program;
  }

  Model model() {
    return program.walk().orElseThrow();
  }

  WalkState state() {
    return model().state();
  }

  StepState step() {
    return state().step(state().currentId());
  }

  /** Returns what was asked of the outside world since this was last looked at. */
  List<Effect> asked() {
    List<Effect> now = List.copyOf(asked);
    asked.clear();
    return now;
  }

  /** Returns the facts that went into the journal since this was last looked at. */
  List<Fact> kept() {
    List<Fact> now = List.copyOf(kept);
    kept.clear();
    return now;
  }

  Frame frame(Size size) {
    return program.paint(size, new Look(false));
  }

  /** Returns the screen as one text with every gap made one blank, to find folded sentences. */
  String words(int columns, int rows) {
    return String.join(" ", frame(new Size(columns, rows)).lines()).replaceAll("\\s+", " ");
  }
}
