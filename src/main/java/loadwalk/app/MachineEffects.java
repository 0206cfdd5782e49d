package loadwalk.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.app.loop.Background;
import loadwalk.app.loop.Clocks;
import loadwalk.app.loop.EffectRunner;
import loadwalk.app.meter.MetersOfWalk;
import loadwalk.app.sound.CaptureReader;
import loadwalk.app.sound.LiveInput;
import loadwalk.app.sound.SoundInput;
import loadwalk.app.sound.WalkSound;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.DiskFaults;
import loadwalk.app.store.HeldWalk;
import loadwalk.app.store.KeptWalksOnDisk;
import loadwalk.app.store.OpeningOutcome;
import loadwalk.app.store.SequenceFinder;
import loadwalk.app.store.WalkFolder;
import loadwalk.app.store.WalkName;
import loadwalk.bench.Bench;
import loadwalk.cli.LedgerReading;
import loadwalk.journal.KeepResult;
import loadwalk.json.Read;
import loadwalk.practice.PracticeRig;
import loadwalk.result.Repeatability;
import loadwalk.text.Sentence;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.state.WaveFound;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Learned;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.fact.WalkState;

/** Does what the program asks of this machine: journals, sequences, meters, sound, texts. */
public final class MachineEffects implements EffectRunner {
  private static final int SAMPLES_PER_SECOND = 48_000;

  /** How many of the newest walks a new one learns from: more would keep its start waiting. */
  private static final int LEARNED_FROM = 100;

  private final WalkFolder walks;
  private final SequenceFinder sequences;
  private final TextsForScreen texts;
  private final Clocks clocks;
  private final Runnable bell;
  private final WalkSound live;
  private final MetersOfWalk meters;
  private final AskedMeters asked;
  private Optional<HeldWalk> open = Optional.empty();
  private Background background = Background.NONE;
  private boolean leaving;

  /** Makes the effects of a machine with a sound input. */
  public MachineEffects(
      WalkFolder walks,
      SequenceFinder sequences,
      TextsForScreen texts,
      Clocks clocks,
      Runnable bell) {
    this(walks, sequences, texts, clocks, bell, () -> SoundInput.open(SAMPLES_PER_SECOND));
  }

  /** Does effects, listening to a given input. */
  public MachineEffects(
      WalkFolder walks,
      SequenceFinder sequences,
      TextsForScreen texts,
      Clocks clocks,
      Runnable bell,
      LiveInput input) {
    this.live = new WalkSound(walks.home(), clocks, input);
    this.meters = new MetersOfWalk(clocks);
    this.asked = new AskedMeters(meters, walks.home());
    this.walks = walks;
    this.sequences = sequences;
    this.texts = texts;
    this.clocks = clocks;
    this.bell = bell;
  }

  /** Does long work away from the event loop from now on. */
  public void workingIn(Background elsewhere) {
    background = elsewhere;
  }

  LedgerForScreen ledger() {
    return new LedgerForScreen(new KeptWalksOnDisk(walks.home(), texts.rules()), texts.ascii());
  }

  @Override
  public boolean isLeaving() {
    return leaving;
  }

  @Override
  public List<ProgramEvent> perform(Effect effect, Program program) {
    try {
      return effect.performedBy(new ProgramEffects(this, program));
    } catch (IOException fault) {
      return told(DiskFaults.sentence(fault));
    }
  }

  /** Keeps facts of the walk as it stands on the disk. */
  Event kept(Effect.AppendJournal append, WalkState before) {
    HeldWalk walk = open.orElseThrow();
    KeepResult result = walk.append(FactText.body(before, append.facts(), walk.due()));
    Optional<String> failure = result.failure();
    return failure.isPresent() ? new Event.NotKept(failure.get()) : new Event.Kept(append.facts());
  }

  /** Writes the whole walk anew and goes on there, or says why not. */
  List<ProgramEvent> writtenAnew(Effect.WriteAnew asked, WalkState before) {
    HeldWalk walk = open.orElseThrow();
    try {
      String body = FactText.body(before, asked.facts(), walk.due());
      HeldWalk anew = walks.store().writeAnew(walk, asked.place(), body);
      open = Optional.of(anew);
      return List.of(
          new ProgramEvent.OfWalk(new Event.Kept(asked.facts())),
          new ProgramEvent.Told(anew.goesOn(walks.home(), before.attachments().size())));
    } catch (IOException fault) {
      return List.of(new ProgramEvent.OfWalk(new Event.NotWrittenAnew(DiskFaults.sentence(fault))));
    }
  }

  /** Returns where photos of the open walk are kept: beside its journal. */
  DataHome home() {
    return open.flatMap(HeldWalk::home).orElse(walks.home());
  }

  /** Closes the open walk, and leaves the program where that is asked. */
  List<ProgramEvent> leave(boolean forGood) throws IOException {
    Optional<String> elsewhere = open.flatMap(walk -> walk.elsewhere(walks.home()));
    close();
    leaving = forGood;
    if (leaving) {
      return List.of();
    }
    List<ProgramEvent> events = new ArrayList<>();
    events.add(new ProgramEvent.WalkClosed());
    events.add(libraryRead());
    elsewhere.ifPresent(how -> events.add(new ProgramEvent.Told(how)));
    return events;
  }

  /** Reads what the home screen offers to start from. */
  public ProgramEvent libraryRead() throws IOException {
    return new ProgramEvent.LibraryRead(walks.library(sequences));
  }

  /** Returns the walk to open on the practice bench of a seed. */
  public static Effect.OpenWalk onPracticeBench(Effect.OpenPractice practice) {
    PracticeRig rig = PracticeRig.ofSeed(practice.seed());
    return new Effect.OpenWalk(
        practice.sequence(),
        rig.amplifier().printed(),
        rig.bench().described(),
        OptionalLong.of(practice.seed()),
        practice.speed());
  }

  /** Opens a new walk, or says why not. */
  public List<ProgramEvent> open(Effect.OpenWalk asked) throws IOException {
    Optional<Read<SequenceFinder.Found>> found = sequences.find(asked.sequence());
    if (found.isEmpty()) {
      return told(Sentence.of("There is no sequence named {}.", asked.sequence()));
    }
    if (found.get().found().isEmpty()) {
      return told(found.get().faults().get(0).text());
    }
    SequenceFinder.Found sequence = found.get().found().get();
    Fact.Opened opened =
        new Fact.Opened(
            "unnamed",
            CrashReport.Machine.ofThisProcess().version(),
            sequence.sequence(),
            sequence.text(),
            asked.amplifier(),
            asked.bench(),
            asked.practiceSeed(),
            learned(asked));
    meters.pace(asked.speed());
    return opened(walks.begin(opened, clocks.wallMillis()));
  }

  /** What cannot be read teaches nothing, and keeps no walk from beginning. */
  private Optional<Learned> learned(Effect.OpenWalk asked) {
    try {
      Repeatability known =
          LedgerReading.newest(new KeptWalksOnDisk(walks.home(), texts.rules()), LEARNED_FROM)
              .repeatability(asked.bench(), asked.practiceSeed().isPresent());
      return known.pairs() > 0 ? Optional.of(Learned.of(known)) : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  WalkFolder walks() {
    return walks;
  }

  SequenceFinder sequences() {
    return sequences;
  }

  TextsForScreen texts() {
    return texts;
  }

  WalkSound live() {
    return live;
  }

  MetersOfWalk meters() {
    return meters;
  }

  Background background() {
    return background;
  }

  void ring() {
    bell.run();
  }

  /** Sets how many warm-up seconds pass in one second on the practice bench. */
  void pace(int warmSecondsASecond) {
    meters.pace(warmSecondsASecond);
  }

  /** Takes a bench whose file the operator named, so that its meters need no question. */
  public void given(Bench bench) {
    asked.give(bench);
  }

  List<ProgramEvent> connectMeters(Fact.Opened opened) {
    return asked.connectAll(opened);
  }

  /** Opens a walk that is on disk, or says why not. */
  public List<ProgramEvent> resume(WalkName name) {
    return opened(walks.store().open(name));
  }

  private List<ProgramEvent> opened(OpeningOutcome opening) {
    return opening.to(
        new OpeningOutcome.Reader<>() {
          @Override
          public List<ProgramEvent> writing(OpeningOutcome.Writing opened) {
            return ready(opened);
          }

          @Override
          public List<ProgramEvent> watching(OpeningOutcome.Watching opened) {
            return List.of(texts.watching(opened), new ProgramEvent.Told(opened.why()));
          }

          @Override
          public List<ProgramEvent> refused(String why) {
            return told(why);
          }
        });
  }

  private List<ProgramEvent> ready(OpeningOutcome.Writing writing) {
    try {
      close();
      open = Optional.of(writing.walk());
      WalkState state = WalkFolder.state(writing.read());
      List<ProgramEvent> question = asked.connect(state.opened());
      List<ProgramEvent> events = new ArrayList<>();
      events.add(new ProgramEvent.WalkReady(Model.of(state, meters.pace())));
      events.add(
          new ProgramEvent.OfWalk(new Event.Reopened(clocks.monoNanos(), clocks.wallMillis())));
      events.addAll(question);
      told(writing, state).ifPresent(told -> events.add(new ProgramEvent.Told(told)));
      return events;
    } catch (UnreadableFact foreign) {
      return told(Sentence.of("This walk cannot be resumed: {}.", foreign.getMessage()));
    } catch (IOException fault) {
      return told(DiskFaults.sentence(fault));
    }
  }

  /** Returns what the operator is to know of a journal that is written on. */
  private static Optional<String> told(OpeningOutcome.Writing writing, WalkState state) {
    List<String> told = new ArrayList<>(WalkFolder.soundness(writing.read(), state).remarks());
    writing.aside().ifPresent(told::add);
    return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
  }

  private static List<ProgramEvent> told(String sentence) {
    return List.of(new ProgramEvent.Told(sentence));
  }

  /** Reads a captured wave, in the background unless it is entered at once. */
  List<ProgramEvent> capture(Effect.ReadCapture asked, Program program) {
    WalkState state = program.walk().orElseThrow().state();
    double limit = state.opened().sequence().limitThdPercent();
    if (!program.state().waves().cautioned()) {
      return told("Read and confirm the cautions for a capture first.");
    }
    if (!asked.take()) {
      return background.answering(
          "Reading the wave.",
          task ->
              new ProgramEvent.CaptureRead(
                  asked, CaptureReader.read(asked.file(), asked.setup(), limit)));
    }
    WaveFound found = CaptureReader.read(asked.file(), asked.setup(), limit);
    List<ProgramEvent> events =
        new ArrayList<>(List.of(new ProgramEvent.CaptureRead(asked, found)));
    events.addAll(taken(Optional.of(found), state.currentId()));
    return events;
  }

  List<ProgramEvent> taken(Optional<WaveFound> found, String step) {
    return found
        .flatMap(WaveFound::capture)
        .map(c -> new Intent.TakeCapture(step, c, clocks.wallMillis()))
        .<List<ProgramEvent>>map(intent -> List.of(new ProgramEvent.OfWalk(intent)))
        .orElse(List.of());
  }

  /** Sets what is run, on a meter's thread, whenever a meter has spoken. */
  public void nudging(Runnable whenMetersSpeak) {
    meters.nudging(whenMetersSpeak);
  }

  @Override
  public List<ProgramEvent> after(Program program) {
    List<ProgramEvent> heard = live.after(program);
    return heard.isEmpty() ? meters.news(program) : heard;
  }

  /** Closes the open walk; all of it is on the disk already. */
  public void close() throws IOException {
    live.close();
    meters.close();
    if (open.isPresent()) {
      open.get().close();
      open = Optional.empty();
    }
  }
}
