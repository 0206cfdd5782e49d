package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import loadwalk.app.MachineEffects;
import loadwalk.app.TextsForScreen;
import loadwalk.app.loop.Clocks;
import loadwalk.app.loop.ProgramRunner;
import loadwalk.app.meter.MeterServer;
import loadwalk.app.meter.Meters;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.meter.SimulatedInstrument;
import loadwalk.plan.StockRules;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Walks with a real effects whose meter answers on loopback. */
class MeterWalkTest {
  private final Semaphore nudges = new Semaphore(0);
  private ProgramRunner runner;

  @Test
  void connectedMeter_fillsTheStep_andItsThreadEndsWithTheWalk(@TempDir Path folder)
      throws Exception {
    SimulatedInstrument instrument =
        new SimulatedInstrument(
            Meters.WHO, query -> OptionalDouble.of(13.71), OptionalLong.empty());
    try (MeterServer server = new MeterServer(instrument, 0, Clocks.MACHINE)) {
      Bench bench = Meters.bench(Meters.meter(server.line(), "MEAS:VOLT:DC?", 5000));
      MachineEffects effects = open(folder, bench);
      runner.accept(new ProgramEvent.OfWalk(new Intent.Skip("warm from before")));
      runner.accept(new ProgramEvent.OfWalk(new Intent.Begin()));
      assertEquals(StepState.Status.RUNNING, step().status(), runner.program().toString());
      await(() -> screen().contains("meter 13.71 V"));
      runner.accept(new ProgramEvent.Pressed(Key.of(Key.Kind.F8)));
      Entry entry = step().latest(ReadingId.SUPPLY_VOLTS).orElseThrow();
      assertEquals(13.71, entry.value(), 1e-9);
      assertEquals(Meters.WHO.text(), entry.instrument().orElseThrow().identity());
      assertEquals("+1.37100000E+01", entry.instrument().orElseThrow().raw());
      server.pullCable();
      await(() -> !screen().contains("meter 13.71 V"));
      effects.close();
      for (int i = 0; i < 1000 && meterThreads(server) > 0; i++) {
        Thread.sleep(10);
      }
      assertEquals(0, meterThreads(server));
    }
  }

  private MachineEffects open(Path folder, Bench bench) throws Exception {
    DataHome home = new DataHome(folder);
    MachineEffects effects =
        new MachineEffects(
            new WalkFolder(new JournalFolder(home)),
            new SequenceFinder(home),
            new TextsForScreen(StockRules.RULES, false),
            Clocks.MACHINE,
            () -> {});
    effects.nudging(nudges::release);
    ProgramUpdate loop = new ProgramUpdate(new Walker(StockRules.RULES));
    runner = new ProgramRunner(loop, effects, Program.atHome("home", StockRules.RULES));
    Amplifier amplifier = Amplifier.named("Verrin", "V1");
    Effect.OpenWalk asked =
        new Effect.OpenWalk("stereo-only", amplifier, bench, OptionalLong.empty(), 1);
    effects.given(bench);
    effects.open(asked).forEach(runner::accept);
    assertTrue(runner.program().walk().isPresent(), runner.program().state().notice().orElse(""));
    return effects;
  }

  private void await(BooleanSupplier seen) throws InterruptedException {
    for (int i = 0; i < 200 && !seen.getAsBoolean(); i++) {
      if (nudges.tryAcquire(10, TimeUnit.SECONDS)) {
        runner.look();
      }
    }
    assertTrue(seen.getAsBoolean(), screen());
  }

  private static long meterThreads(MeterServer server) {
    String name = "meter-" + server.line().text();
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals(name))
        .count();
  }

  private StepState step() {
    return Optional.of(runner.program().walk().orElseThrow().state())
        .map(state -> state.step(state.currentId()))
        .orElseThrow();
  }

  private String screen() {
    return String.join("\n", runner.program().paint(new Size(110, 30), new Look(false)).lines());
  }
}
