package loadwalk.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import loadwalk.journal.KeepResult;
import loadwalk.json.Read;
import loadwalk.practice.PracticeRig;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.WaveFound;
import loadwalk.view.Wish;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Fact;
import loadwalk.walk.FactWriter;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.UnreadableFact;
import loadwalk.walk.WalkState;

/** The outside world of the program: journals, sequences, the practice bench, texts to show. */
final class MachineEffects implements EffectRunner {
  private static final int SAMPLES_PER_SECOND = 48_000;

  private final WalkFolder walks;
  private final SequenceShelf sequences;
  private final Texts texts;
  private final Clocks clocks;
  private final Runnable bell;
  private final WalkSound live;
  private final WalkMeters meters;
  private Optional<OpenWalk> open = Optional.empty();
  private Background background = Background.NONE;
  private boolean leaving;

  MachineEffects(
      WalkFolder walks, SequenceShelf sequences, Texts texts, Clocks clocks, Runnable bell) {
    this(walks, sequences, texts, clocks, bell, () -> SoundInput.open(SAMPLES_PER_SECOND));
  }

  /** Does effects, listening to a given input. */
  MachineEffects(
      WalkFolder walks,
      SequenceShelf sequences,
      Texts texts,
      Clocks clocks,
      Runnable bell,
      LiveInput input) {
    this.live = new WalkSound(walks.home(), clocks, input);
    this.meters = new WalkMeters(clocks);
    this.walks = walks;
    this.sequences = sequences;
    this.texts = texts;
    this.clocks = clocks;
    this.bell = bell;
  }

  /** Does long work away from the event loop from now on. */
  void workingIn(Background elsewhere) {
    background = elsewhere;
  }

  private LedgerForScreen ledger() {
    return new LedgerForScreen(new SessionShelf(walks.home(), texts.rules()), texts.ascii());
  }

  @Override
  public boolean isLeaving() {
    return leaving;
  }

  @Override
  public List<ProgramEvent> perform(Effect effect) {
    if (effect instanceof Effect.AppendJournal append) {
      return List.of(new ProgramEvent.OfWalk(kept(append)));
    }
    if (effect instanceof Effect.KeepPhoto photo) {
      return List.of(new ProgramEvent.OfWalk(new PhotoBox(walks.home()).keep(photo)));
    }
    bell.run();
    return List.of();
  }

  private Event kept(Effect.AppendJournal append) {
    KeepResult result = open.orElseThrow().append(FactWriter.body(append.facts()));
    Optional<String> failure = result.failure();
    return failure.isPresent() ? new Event.NotKept(failure.get()) : new Event.Kept(append.facts());
  }

  @Override
  public List<ProgramEvent> grant(Wish wish, Program program) {
    try {
      return granted(wish, program);
    } catch (IOException fault) {
      return List.of(new ProgramEvent.Told(fault.getMessage() + "."));
    }
  }

  private List<ProgramEvent> granted(Wish wish, Program program) throws IOException {
    if (wish instanceof Wish.OpenWalk open) {
      return open(open);
    }
    if (wish instanceof Wish.OpenPractice practice) {
      return open(onPracticeBench(practice));
    }
    if (wish instanceof Wish.ResumeWalk resume) {
      return resume(new WalkName(resume.walk()));
    }
    if (wish instanceof Wish.CloseWalk || wish instanceof Wish.Leave) {
      close();
      leaving = wish instanceof Wish.Leave;
      return leaving ? List.of() : List.of(new ProgramEvent.WalkClosed(), libraryRead());
    }
    if (wish instanceof Wish.StopWork) {
      background.stop();
      return List.of();
    }
    Optional<List<ProgramEvent>> measured = measured(wish, program);
    return measured.isPresent() ? measured.get() : shown(wish, program);
  }

  /** Does what a step asks of meters, captured waves and the live input; empty for other wishes. */
  private Optional<List<ProgramEvent>> measured(Wish wish, Program program) {
    if (wish instanceof Wish.FillStep) {
      return Optional.of(meters.fill(program));
    }
    if (wish instanceof Wish.SetSpeed set) {
      meters.pace(set.speed());
      return Optional.of(List.of());
    }
    if (wish instanceof Wish.ReadCapture read) {
      return Optional.of(capture(read, program));
    }
    if (wish instanceof Wish.ConfirmCautions) {
      return Optional.of(List.of(new ProgramEvent.CautionRead()));
    }
    if (wish instanceof Wish.TakeCapture take) {
      return Optional.of(taken(program.waves().found(), take.step()));
    }
    if (wish instanceof Wish.Listen listen) {
      return Optional.of(live.listen(listen.on(), program, meters.practice(), meters.nudge()));
    }
    if (wish instanceof Wish.Hold hold) {
      return Optional.of(live.hold(hold.on()));
    }
    return wish instanceof Wish.KeepHeld keep
        ? Optional.of(live.keep(keep.step(), program, background))
        : Optional.empty();
  }

  /** Makes the text that a wish asks to see. */
  private List<ProgramEvent> shown(Wish wish, Program program) throws IOException {
    if (wish instanceof Wish.ShowSheet sheet) {
      return List.of(texts.sheet(walks, sheet.walk(), program));
    }
    if (wish instanceof Wish.ShowLedger show) {
      return background.answering("Reading walks. Esc stops.", task -> ledger().show(show, task));
    }
    if (wish instanceof Wish.Compare compare) {
      return background.answering(
          "Reading walks. Esc stops.", task -> ledger().compare(compare, task));
    }
    return List.of(
        wish instanceof Wish.ShowPlan plan
            ? texts.plan(sequences, plan)
            : texts.planSoFar(program));
  }

  /** Reads what is at hand to start from. */
  ProgramEvent libraryRead() throws IOException {
    return new ProgramEvent.LibraryRead(walks.library(sequences));
  }

  static Wish.OpenWalk onPracticeBench(Wish.OpenPractice practice) {
    PracticeRig rig = PracticeRig.ofSeed(practice.seed());
    return new Wish.OpenWalk(
        practice.sequence(),
        rig.amplifier().printed(),
        rig.bench().described(),
        OptionalLong.of(practice.seed()),
        practice.speed());
  }

  List<ProgramEvent> open(Wish.OpenWalk wish) throws IOException {
    Optional<Read<SequenceShelf.Found>> found = sequences.find(wish.sequence());
    if (found.isEmpty()) {
      return told("There is no sequence named " + wish.sequence() + ".");
    }
    if (found.get().found().isEmpty()) {
      return told(found.get().faults().get(0).text());
    }
    SequenceShelf.Found sequence = found.get().found().get();
    Fact.Opened opened =
        new Fact.Opened(
            "unnamed",
            CrashReport.Machine.ofThisProcess().version(),
            sequence.sequence(),
            sequence.text(),
            wish.amplifier(),
            wish.bench(),
            wish.practiceSeed());
    meters.pace(wish.speed());
    return opened(walks.begin(opened, clocks.wallMillis()));
  }

  /** Sets how many warm-up seconds pass in one second on the practice bench. */
  void pace(int warmSecondsASecond) {
    meters.pace(warmSecondsASecond);
  }

  List<ProgramEvent> resume(WalkName name) {
    return opened(walks.store().open(name));
  }

  private List<ProgramEvent> opened(Opening opening) {
    return opening.to(
        new Opening.Reader<>() {
          @Override
          public List<ProgramEvent> writing(Opening.Writing opened) {
            return takenUp(opened);
          }

          @Override
          public List<ProgramEvent> watching(Opening.Watching opened) {
            return List.of(texts.watching(opened), new ProgramEvent.Told(opened.why()));
          }

          @Override
          public List<ProgramEvent> refused(String why) {
            return told(why);
          }
        });
  }

  private List<ProgramEvent> takenUp(Opening.Writing writing) {
    try {
      close();
      open = Optional.of(writing.walk());
      WalkState state = WalkFolder.state(writing.read());
      meters.connect(state.opened());
      List<ProgramEvent> events = new ArrayList<>();
      events.add(new ProgramEvent.WalkReady(Model.of(state, meters.pace())));
      events.add(
          new ProgramEvent.OfWalk(new Event.Reopened(clocks.monoNanos(), clocks.wallMillis())));
      writing.told().ifPresent(told -> events.add(new ProgramEvent.Told(told)));
      return events;
    } catch (UnreadableFact | IOException fault) {
      return told("The walk cannot be taken up: " + fault.getMessage() + ".");
    }
  }

  private static List<ProgramEvent> told(String sentence) {
    return List.of(new ProgramEvent.Told(sentence));
  }

  /** Reads a captured wave; where it is to be taken at once nobody waits for a screen. */
  private List<ProgramEvent> capture(Wish.ReadCapture wish, Program program) {
    WalkState state = program.walk().orElseThrow().state();
    double limit = state.opened().sequence().limitThdPercent();
    if (!program.waves().cautioned()) {
      return told("The cautions of a capture must be read and confirmed first.");
    }
    if (!wish.take()) {
      return background.answering(
          "Reading the wave.",
          task ->
              new ProgramEvent.CaptureRead(
                  wish, CaptureReader.read(wish.file(), wish.setup(), limit)));
    }
    WaveFound found = CaptureReader.read(wish.file(), wish.setup(), limit);
    List<ProgramEvent> events = new ArrayList<>(List.of(new ProgramEvent.CaptureRead(wish, found)));
    events.addAll(taken(Optional.of(found), state.currentId()));
    return events;
  }

  private List<ProgramEvent> taken(Optional<WaveFound> found, String step) {
    return found
        .flatMap(WaveFound::capture)
        .map(c -> new Intent.TakeCapture(step, c, clocks.wallMillis()))
        .<List<ProgramEvent>>map(intent -> List.of(new ProgramEvent.OfWalk(intent)))
        .orElse(List.of());
  }

  /** Sets what is run, on a meter's thread, whenever a meter has spoken. */
  void nudging(Runnable whenMetersSpeak) {
    meters.nudging(whenMetersSpeak);
  }

  @Override
  public List<ProgramEvent> after(Program program) {
    List<ProgramEvent> heard = live.after(program);
    return heard.isEmpty() ? meters.news(program) : heard;
  }

  /** Lets the open walk go; all of it is on the disk already. */
  void close() throws IOException {
    live.close();
    meters.close();
    if (open.isPresent()) {
      open.get().close();
      open = Optional.empty();
    }
  }
}
