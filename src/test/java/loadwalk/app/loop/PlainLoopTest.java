package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.plan.StockRules;
import loadwalk.sequence.SequenceReader;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Look;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Model;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** What plain mode tells between two lines, and what it wants before it is left. */
class PlainLoopTest {
  private static final String SEQUENCE =
      """
      {"format":"loadwalk-sequence/1","name":"short","title":"Short","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"idle"},
       {"do":"measure","mode":"stereo","ohms":4}]}
      """;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final FakeClocks clocks = new FakeClocks();

  /** A disk that may be full, and meters that say the next thing after each note. */
  private static final class World implements EffectRunner {
    private final Deque<ConnectedMeters> metersAfterANote = new ArrayDeque<>();
    private boolean full;
    private int heard;

    @Override
    public List<ProgramEvent> perform(Effect effect, Program program) {
      if (effect instanceof Effect.AppendJournal append) {
        Event answer =
            full ? new Event.NotKept("The disk is full.") : new Event.Kept(append.facts());
        return List.of(new ProgramEvent.OfWalk(answer));
      }
      return List.of();
    }

    @Override
    public List<ProgramEvent> after(Program program) {
      int notes = program.walk().map(walk -> walk.state().notes().size()).orElse(0);
      if (notes <= heard || metersAfterANote.isEmpty()) {
        return List.of();
      }
      heard++;
      return List.of(new ProgramEvent.MetersRead(metersAfterANote.poll()));
    }

    @Override
    public boolean isLeaving() {
      return false;
    }
  }

  private final World world = new World();

  private static Meter meter(ReadingId id) {
    Connection by =
        new Connection(
            new Connection.Tcp("192.0.2.1", 5025), "READ?", id.unit().asciiSymbol(), 1, 1000);
    return new Meter(id.label() + " meter", id, 0.5, 2, 0.01, Optional.empty()).connectedBy(by);
  }

  private void meterWillSay(ReadingId id, double value) {
    MeterReading reading = new MeterReading.Value(value, id.unit(), "+" + value);
    MeterWatch watch = MeterWatch.begin(meter(id), 0).after(reading, 0);
    world.metersAfterANote.add(new ConnectedMeters(List.of(watch), 0, 0, Optional.empty()));
  }

  private int told(String lines) throws IOException {
    Bench bench =
        new Bench(
            "North bench",
            List.of(new Supply(13.8, 10)),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(meter(ReadingId.SUPPLY_VOLTS), meter(ReadingId.SUPPLY_AMPS)),
            0.9);
    Fact.Opened opened =
        new Fact.Opened(
            "2026-03-01-1000-test",
            "test",
            SequenceReader.read(SEQUENCE, "short").found().orElseThrow(),
            SEQUENCE,
            Amplifier.named("Verrin", "V1"),
            bench,
            OptionalLong.empty());
    ProgramRunner runner =
        new ProgramRunner(
            new ProgramUpdate(new Walker(StockRules.RULES)),
            world,
            Program.atHome("home", StockRules.RULES));
    WalkState begun = WalkState.begin(opened, clocks.wallMillis());
    runner.accept(new ProgramEvent.WalkReady(Model.of(begun, 1)));
    Event again = new Event.Reopened(clocks.monoNanos(), clocks.wallMillis());
    boolean full = world.full;
    world.full = false;
    runner.accept(new ProgramEvent.OfWalk(again));
    world.full = full;
    PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    try (LineFeed feed = new LineFeed(new StringReader(lines))) {
      return new PlainLoop(runner, to, new Look(false), clocks).run(feed);
    }
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void quit_withAnEntryThatIsNotOnTheDisk_isAskedTwice() throws IOException {
    world.full = true;
    int code = told("begin\nquit\nbrief\nquit\n");
    assertTrue(said().contains("Type quit again to leave without it."), said());
    assertTrue(said().lastIndexOf("idle") > said().indexOf("Type quit again"), "it went on");
    assertEquals(2, code, "the disk did not take it; Loadwalk is not at fault");
  }

  @Test
  void quit_withEverythingOnTheDisk_leavesAtOnce() throws IOException {
    int code = told("begin\nquit\nbrief\n");
    assertFalse(said().contains("quit again"), said());
    assertEquals(0, code);
  }

  /** A script must not go on as if the walk were done. */
  @Test
  void quit_atAHalt_isNoSuccess() throws IOException {
    int code = told("skip not for this test\nquit\n");
    assertTrue(said().contains("HALT"), said());
    assertEquals(3, code);
  }

  @Test
  void alarmThatBecomesAnother_isToldToo() throws IOException {
    meterWillSay(ReadingId.SUPPLY_VOLTS, 9);
    meterWillSay(ReadingId.SUPPLY_AMPS, 9.5);
    told("begin\nnote the supply sags\nnote and now\nquit\n");
    assertTrue(said().contains("SUPPLY VOLTS 9.00 V, below the forecast minimum"), said());
    assertTrue(said().contains("SUPPLY AMPS 9.50 A, above the 9.00 A"), said());
  }
}
