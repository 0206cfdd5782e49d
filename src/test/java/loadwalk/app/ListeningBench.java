package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.OptionalLong;
import java.util.Queue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import loadwalk.app.loop.Background;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.sound.LiveInput;
import loadwalk.app.store.ProgramUnderTest;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.state.Live;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.StepState;

/** The program with a sound input of a test, its long work done when the test says so. */
final class ListeningBench {
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(60);

  private final ProgramUnderTest program;
  private final Queue<Runnable> work = new ArrayDeque<>();

  ListeningBench(Path folder, LiveInput input) {
    program = new ProgramUnderTest(folder, new FakeClocks(), new Look(false), input);
    program.tick();
  }

  ProgramUnderTest program() {
    return program;
  }

  /** Leaves long work undone until {@link #work} does it. */
  ListeningBench slow() {
    program.workingIn(
        new Background() {
          @Override
          public List<ProgramEvent> answering(
              String meanwhile, Function<Background.Task, ProgramEvent> asked) {
            work.add(() -> program.accept(asked.apply(new Background.Silent())));
            return List.of(new ProgramEvent.Told(meanwhile));
          }

          @Override
          public void stop() {
            work.clear();
          }
        });
    return this;
  }

  /** Returns how much long work is still to be done. */
  int undone() {
    return work.size();
  }

  /** Does the piece of long work that was asked for first. */
  ListeningBench work() {
    work.remove().run();
    return this;
  }

  /** Takes the piece of long work that was asked for first, to be done later than others. */
  Runnable putOff() {
    return work.remove();
  }

  ListeningBench press(Key.Kind... keys) {
    for (Key.Kind key : keys) {
      program.accept(new ProgramEvent.Pressed(Key.of(key)));
    }
    return this;
  }

  ListeningBench letters(String text) {
    text.chars().forEach(c -> program.accept(new ProgramEvent.Pressed(Key.of((char) c))));
    return this;
  }

  ListeningBench type(String text) {
    return letters(text).press(Key.Kind.ENTER);
  }

  /** Skips to stereo-4, arms it and begins to listen. */
  ListeningBench listenAtStereoFour() {
    program.open(
        new Effect.OpenWalk(
            "stereo-only",
            Amplifier.named("Halvorsen & Pike", "HP 250"),
            Bench.unknown(),
            OptionalLong.empty(),
            1));
    return toStereoFour()
        .press(Key.Kind.LISTEN)
        .sees("only through a divider")
        .press(Key.Kind.ENTER);
  }

  ListeningBench toStereoFour() {
    press(Key.Kind.F3).type("not now").press(Key.Kind.F3).type("not now");
    type("4");
    if (step().status() == StepState.Status.BRIEFED) {
      press(Key.Kind.ENTER);
    }
    assertEquals(StepState.Status.RUNNING, step().status(), this::picture);
    return this;
  }

  StepState step() {
    return program.model().state().step("stereo-4");
  }

  Live live() {
    return program.program().state().live();
  }

  ListeningBench until(Live.State wanted) {
    return until(() -> live().state() == wanted);
  }

  ListeningBench until(BooleanSupplier done) {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!done.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, () -> "not within a minute:\n" + picture());
      LockSupport.parkNanos(2_000_000);
      program.look();
    }
    return this;
  }

  ListeningBench sees(String... parts) {
    for (String part : parts) {
      assertTrue(picture().contains(part), () -> "no «" + part + "» in\n" + picture());
    }
    return this;
  }

  ListeningBench seesNot(String part) {
    assertTrue(!picture().contains(part), () -> "«" + part + "» in\n" + picture());
    return this;
  }

  String picture() {
    Frame frame = program.paint(new Size(120, 24));
    return String.join("\n", frame.lines());
  }
}
