package loadwalk.app.sound;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import loadwalk.app.loop.Background;
import loadwalk.app.loop.Clocks;
import loadwalk.app.store.AtomicFile;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.DiskFaults;
import loadwalk.app.store.WalkName;
import loadwalk.cli.Folders;
import loadwalk.journal.StorageFault;
import loadwalk.practice.PracticeTone;
import loadwalk.text.Sentence;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.state.Live;
import loadwalk.walk.Model;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;
import loadwalk.wave.file.CaptureSetup;
import loadwalk.wave.tone.MonoWav;

/** The live input of the open walk: the machine's, or the practice bench's. */
public final class WalkSound {
  private static final int FILES_MOST = 999;
  private static final String KEEPING = "Keeping the wave.";

  /** The practice bench's sound input takes 2 V peak behind 56 kΩ over 1 kΩ. */
  private static final CaptureSetup PRACTICE_INPUT = CaptureSetup.of(2, 57);

  private final DataHome home;
  private final Clocks clocks;
  private final LiveInput machine;
  private Optional<LiveListener> listener = Optional.empty();

  /** The file of what is held, while it is written and after; it holds none where that failed. */
  private Optional<CompletableFuture<Optional<String>>> file = Optional.empty();

  /** Makes what a walk hears; nothing listens yet. */
  public WalkSound(DataHome home, Clocks clocks, LiveInput machine) {
    this.home = home;
    this.clocks = clocks;
    this.machine = machine;
  }

  /**
   * Begins to listen, or ends it.
   *
   * @param bench the practice bench that is heard in place of the machine's input
   */
  public List<ProgramEvent> listen(
      boolean on, Program program, Optional<PracticeAnswers> bench, Runnable nudge) {
    close();
    if (!on) {
      return List.of(new ProgramEvent.LiveHeard(Live.OFF));
    }
    Model model = program.walk().orElseThrow();
    WalkState state = model.state();
    Optional<LiveInput> practice =
        bench.flatMap(b -> b.tone(state, model.clock().warmSeconds())).map(this::input);
    LiveListener fresh =
        new LiveListener(
            practice.orElse(machine),
            program.state().waves().setup().channel(),
            state.opened().sequence().toneHertz(),
            state.opened().sequence().limitThdPercent(),
            nudge);
    listener = Optional.of(fresh);
    fresh.start();
    return practice.isPresent() ? List.of(new ProgramEvent.InputKnown(PRACTICE_INPUT)) : List.of();
  }

  private LiveInput input(PracticeTone tone) {
    double fullScale =
        PRACTICE_INPUT.fullScaleVolts().orElseThrow() * PRACTICE_INPUT.divider().orElseThrow();
    return () -> new RealTimeSource(new PracticeSource(tone, fullScale), clocks);
  }

  /** Holds what is heard, or goes on. */
  public List<ProgramEvent> hold(boolean on) {
    if (on) {
      listener.ifPresent(LiveListener::hold);
    } else {
      listener.ifPresent(LiveListener::goOn);
      file = Optional.empty();
    }
    return List.of();
  }

  /** Keeps what is held as a file beside the journal, once, however often it is asked for. */
  public List<ProgramEvent> keep(String step, Program program, Background background) {
    if (file.filter(f -> !f.isDone()).isPresent()) {
      return List.of(new ProgramEvent.Told(KEEPING));
    }
    Optional<String> there = file.flatMap(CompletableFuture::join);
    if (there.isPresent()) {
      return List.of(new ProgramEvent.HeldKept(step, there.get()));
    }
    Optional<LiveListener.Held> held = listener.flatMap(LiveListener::held);
    if (held.isEmpty()) {
      return List.of(
          new ProgramEvent.Told("The end of the wave is still coming in. Try again in a moment."));
    }
    WalkName walk = new WalkName(program.walk().orElseThrow().state().opened().walk());
    CompletableFuture<Optional<String>> written = new CompletableFuture<>();
    file = Optional.of(written);
    return background.answering(KEEPING, task -> kept(step, walk, held.get(), written));
  }

  private ProgramEvent kept(
      String step,
      WalkName walk,
      LiveListener.Held held,
      CompletableFuture<Optional<String>> written) {
    try {
      String path = file(step, walk, held);
      written.complete(Optional.of(path));
      return new ProgramEvent.HeldKept(step, path);
    } catch (StorageFault fault) {
      written.complete(Optional.empty());
      return new ProgramEvent.Told(fault.getMessage());
    }
  }

  private String file(String step, WalkName walk, LiveListener.Held held) throws StorageFault {
    Path folder = home.sessions().resolve(walk.waveFolder());
    if (!home.stays(folder)) {
      throw StorageFault.broken("The folder of waves is a link that leads out of the data home.");
    }
    byte[] bytes = MonoWav.of(held.samples(), held.samplesPerSecond());
    try {
      Folders.make(folder);
      for (int number = 1; number <= FILES_MOST; number++) {
        Path file = folder.resolve(step + "-" + number + ".wav");
        if (made(file, bytes)) {
          return file.toAbsolutePath().toString();
        }
      }
      throw StorageFault.broken(
          Sentence.of("This step already has {} waves; no more are kept.", FILES_MOST));
    } catch (IOException fault) {
      throw DiskFaults.of(folder.resolve(step), fault);
    }
  }

  private static boolean made(Path file, byte[] bytes) throws IOException {
    try {
      AtomicFile.writeNew(file, bytes);
      return true;
    } catch (FileAlreadyExistsException taken) {
      return false;
    }
  }

  /** Returns what is new; an input is let go as soon as no step needs it. */
  public List<ProgramEvent> after(Program program) {
    if (listener.isEmpty()) {
      return List.of();
    }
    if (!measures(program)) {
      close();
      return List.of(new ProgramEvent.LiveHeard(Live.OFF));
    }
    return listener
        .get()
        .news()
        .<List<ProgramEvent>>map(n -> List.of(new ProgramEvent.LiveHeard(n)))
        .orElse(List.of());
  }

  private static boolean measures(Program program) {
    return program
        .walk()
        .map(Model::state)
        .filter(s -> s.hold() == WalkState.Hold.RUNNING)
        .filter(s -> s.current().isPresent())
        .filter(s -> s.step(s.currentId()).status() == Status.RUNNING)
        .isPresent();
  }

  /** Stops listening. */
  public void close() {
    listener.ifPresent(LiveListener::close);
    listener = Optional.empty();
    file = Optional.empty();
  }
}
