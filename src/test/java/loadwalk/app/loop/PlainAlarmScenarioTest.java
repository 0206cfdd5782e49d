package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import loadwalk.app.MachineEffects;
import loadwalk.app.TextsForScreen;
import loadwalk.app.meter.MeterServer;
import loadwalk.app.meter.Meters;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.JournalFolder;
import loadwalk.app.store.SequenceFinder;
import loadwalk.app.store.WalkFolder;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.meter.SimulatedInstrument;
import loadwalk.plan.StockRules;
import loadwalk.view.Program;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import loadwalk.walk.Walker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** In plain mode the supply watch speaks while the operator types nothing. */
class PlainAlarmScenarioTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private volatile double amps = 1;

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void supplyAmps_aboveTheSupplies_areToldBeforeTheNextLine(@TempDir Path folder) throws Exception {
    SimulatedInstrument instrument =
        new SimulatedInstrument(Meters.WHO, query -> OptionalDouble.of(amps), OptionalLong.empty());
    PipedOutputStream typed = new PipedOutputStream();
    try (MeterServer server = new MeterServer(instrument, 0, Clocks.MACHINE);
        BufferedReader in =
            new BufferedReader(
                new InputStreamReader(new PipedInputStream(typed), StandardCharsets.UTF_8));
        LineFeed lines = new LineFeed(in)) {
      MachineEffects effects = effects(folder);
      effects.nudging(lines::metersSpoke);
      ProgramUpdate loop = new ProgramUpdate(new Walker(StockRules.RULES));
      ProgramRunner runner =
          new ProgramRunner(loop, effects, Program.atHome("home", StockRules.RULES));
      effects.given(asked(server).bench());
      effects.open(asked(server)).forEach(runner::accept);
      PrintStream told = new PrintStream(out, true, StandardCharsets.UTF_8);
      FutureTask<Integer> walk =
          new FutureTask<>(
              () -> new PlainLoop(runner, told, new Look(false), Clocks.MACHINE).run(lines));
      new Thread(walk, "plain walk").start();
      type(typed, "skip warm from before\nbegin\n");
      await("idle is running");
      amps = 9.5;
      await("SUPPLY AMPS 9.5 A, above the 9.00 A");
      amps = 1;
      type(typed, "note all is well again\nquit\n");
      assertEquals(0, walk.get(), said());
      assertTrue(said().contains("Turn it down by hand"), said());
      effects.close();
    }
  }

  private static void type(PipedOutputStream typed, String text) throws Exception {
    typed.write(text.getBytes(StandardCharsets.UTF_8));
    typed.flush();
  }

  private static MachineEffects effects(Path folder) throws Exception {
    DataHome home = new DataHome(folder);
    return new MachineEffects(
        new WalkFolder(new JournalFolder(home)),
        new SequenceFinder(home),
        new TextsForScreen(StockRules.RULES, false),
        Clocks.MACHINE,
        () -> {});
  }

  private static Effect.OpenWalk asked(MeterServer server) {
    Meter clamp =
        new Meter("clamp", ReadingId.SUPPLY_AMPS, 1, 2, 0.1, Optional.empty())
            .connectedBy(new Connection(server.line(), "MEAS:CURR:DC?", "A", 1, 5000));
    Bench bench =
        new Bench(
            "North bench",
            List.of(new Supply(13.8, 10)),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(clamp),
            Bench.DEFAULT_USABLE_FRACTION);
    return new Effect.OpenWalk(
        "stereo-only", Amplifier.named("Verrin", "V1"), bench, OptionalLong.empty(), 1);
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private void await(String words) throws InterruptedException {
    for (int i = 0; i < 6000 && !said().contains(words); i++) {
      Thread.sleep(10);
    }
    assertTrue(said().contains(words), said());
  }
}
