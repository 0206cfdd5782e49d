package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.sound.Inputs;
import loadwalk.app.sound.LiveInput;
import loadwalk.app.store.ProgramUnderTest;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.state.Live;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.StepState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sound input in the walk screen, played by a fake, and the machine that has none. */
class LiveWalkTest {
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(60);

  @TempDir private Path folder;
  private ProgramUnderTest program;

  private void start(LiveInput input) {
    program = new ProgramUnderTest(folder, new FakeClocks(), new Look(false), input);
    program.tick();
  }

  private LiveWalkTest press(Key.Kind... keys) {
    for (Key.Kind key : keys) {
      program.accept(new ProgramEvent.Pressed(Key.of(key)));
    }
    return this;
  }

  private LiveWalkTest type(String text) {
    text.chars().forEach(c -> program.accept(new ProgramEvent.Pressed(Key.of((char) c))));
    return press(Key.Kind.ENTER);
  }

  /** Skips to stereo-4, arms it and begins to listen. */
  private void listenAtStereoFour(LiveInput input) {
    start(input);
    program.open(
        new Effect.OpenWalk(
            "stereo-only",
            Amplifier.named("Halvorsen & Pike", "HP 250"),
            Bench.unknown(),
            OptionalLong.empty(),
            1));
    toStereoFour();
    press(Key.Kind.LISTEN);
    assertTrue(picture().contains("only through a divider"), this::picture);
    press(Key.Kind.ENTER);
  }

  private void toStereoFour() {
    press(Key.Kind.F3).type("not now").press(Key.Kind.F3).type("not now");
    type("4");
    if (step().status() == StepState.Status.BRIEFED) {
      press(Key.Kind.ENTER);
    }
    assertEquals(StepState.Status.RUNNING, step().status(), this::picture);
  }

  private StepState step() {
    return program.model().state().step("stereo-4");
  }

  private Live live() {
    return program.program().state().live();
  }

  private void until(BooleanSupplier done) {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!done.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, () -> "not within a minute:\n" + picture());
      LockSupport.parkNanos(2_000_000);
      program.look();
    }
  }

  private String picture() {
    Frame frame = program.paint(new Size(80, 24));
    return String.join("\n", frame.lines());
  }

  @Test
  void risingTone_isHeldByItselfAtTheLimit_andEntersAsACapture() throws IOException {
    Path file = Ramps.write(folder.resolve("ramp.wav"), Ramps.rising(10));
    listenAtStereoFour(Inputs.playing(file, 20));
    until(() -> live().state() == Live.State.HEARING);
    assertTrue(picture().contains("LIVE"), this::picture);
    until(() -> live().state() == Live.State.HELD);
    double thd = live().reading().orElseThrow().thdPercent().orElseThrow();
    assertTrue(thd >= 1 && thd < 1.3, () -> thd + " %");
    assertTrue(picture().contains("HELD"), this::picture);
    until(
        () -> {
          press(Key.Kind.WAVE);
          return picture().contains("Full scale");
        });
    type("2").type("21").press(Key.Kind.F9);
    assertTrue(picture().contains("at the limit"), this::picture);
    press(Key.Kind.ENTER);
    double expected = 42 * Ramps.LIMIT_RMS;
    double volts = step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value();
    assertEquals(expected, volts, 0.003 * expected);
    assertEquals("stereo-4-1.wav", step().captures().get(0).file());
    String walk = program.model().state().opened().walk();
    assertTrue(Files.exists(folder.resolve("sessions/" + walk + ".waves/stereo-4-1.wav")));
  }

  @Test
  void heldByHand_itGoesOnWhenAsked_andEndsWithTheStep() throws IOException {
    Path file = Ramps.write(folder.resolve("steady.wav"), Ramps.steady(0.4, 60));
    listenAtStereoFour(Inputs.playing(file, 10));
    until(() -> live().state() == Live.State.HEARING);
    press(Key.Kind.HOLD);
    until(() -> live().state() == Live.State.HELD);
    press(Key.Kind.HOLD);
    until(() -> live().state() == Live.State.HEARING);
    press(Key.Kind.ESCAPE);
    until(() -> live().state() == Live.State.OFF);
    assertTrue(program.model().isStopped());
  }

  @Test
  void withoutAnInput_itSaysSo_andTheRestWorks() {
    listenAtStereoFour(Inputs.NONE);
    until(() -> live().state() == Live.State.NONE);
    assertTrue(picture().contains("This computer has no sound input"), this::picture);
    type("13.4 V");
    assertEquals(13.4, step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value());
    press(Key.Kind.HOLD);
    assertTrue(picture().contains("There is no sound to hold"), this::picture);
  }

  @Test
  void inputThatHangs_keepsNobodyWaiting() {
    CountDownLatch latch = new CountDownLatch(1);
    listenAtStereoFour(Inputs.hanging(latch));
    assertEquals(Live.State.OPENING, live().state());
    type("13.4 V");
    assertEquals(13.4, step().latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value());
    press(Key.Kind.LISTEN);
    assertEquals(Live.State.OFF, live().state());
    latch.countDown();
    program.look();
    assertEquals(Live.State.OFF, live().state());
  }

  @Test
  void cautions_comeBeforeTheFirstSound() {
    List<Boolean> opened = new CopyOnWriteArrayList<>();
    start(
        () -> {
          opened.add(true);
          return Inputs.NONE.open();
        });
    program.open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 60)));
    Program before = program.program();
    press(Key.Kind.LISTEN);
    assertTrue(picture().contains("reads output volts"), this::picture);
    assertEquals(before.state().live(), program.program().state().live());
    assertEquals(List.of(), opened);
  }

  @Test
  void practiceBench_hasAnInputOfItsOwn_whoseDividerIsKnown() {
    start(Inputs.NONE);
    program.open(MachineEffects.onPracticeBench(new Effect.OpenPractice("stereo-only", 1, 60)));
    toStereoFour();
    press(Key.Kind.LISTEN);
    assertTrue(picture().contains("only through a divider"), this::picture);
    press(Key.Kind.ENTER);
    until(() -> live().state() == Live.State.OPENING);
    assertEquals(57, program.program().state().waves().setup().divider().orElseThrow());
  }
}
