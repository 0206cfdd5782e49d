package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
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
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.plan.StockRules;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Results;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Walks a step whose supply volts and amps come from connected meters. */
class MetersOnScreenTest {
  private static final long WALL = 1_770_000_000_000L;
  private static final Identity WHO = new Identity("Brightmoor", "M6", "0", "1.0");
  private static final String SEQUENCE =
      """
      {"format":"loadwalk-sequence/1","name":"short","title":"Short","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"idle"},
       {"do":"measure","mode":"stereo","ohms":4}]}
      """;

  private final ProgramUpdate loop = new ProgramUpdate(new Walker(StockRules.RULES));
  private final List<String> journal = new ArrayList<>();
  private Program program = Program.atHome("home", StockRules.RULES);
  private int bells;
  private long now = 10_000;
  private MeterWatch volts = MeterWatch.begin(meter(ReadingId.SUPPLY_VOLTS), 0).identified(WHO);
  private MeterWatch amps = MeterWatch.begin(meter(ReadingId.SUPPLY_AMPS), 0);

  private static Meter meter(ReadingId id) {
    Connection by =
        new Connection(
            new Connection.Tcp("192.0.2.1", 5025), "READ?", id.unit().asciiSymbol(), 1, 1000);
    return new Meter(id.label() + " meter", id, 0.5, 2, 0.01, Optional.empty()).connectedBy(by);
  }

  @BeforeEach
  void openTheWalk() {
    open(SEQUENCE);
    press(Key.Kind.ENTER);
    assertEquals(StepState.Status.RUNNING, step().status(), screen());
  }

  private void open(String text) {
    journal.clear();
    Sequence sequence =
        SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "short").found().orElseThrow();
    Amplifier amplifier = Amplifier.named("Verrin", "V1");
    Bench bench =
        new Bench(
            "North bench",
            List.of(new Supply(13.8, 10)),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(volts.meter(), amps.meter()),
            0.9);
    Fact.Opened opened =
        new Fact.Opened(
            "2026-02-02-0000-test",
            "1.0.0",
            sequence,
            text,
            amplifier,
            bench,
            OptionalLong.empty());
    journal.add(FactText.body(List.of(new Stamped(opened, WALL))));
    hear(new ProgramEvent.WalkReady(Model.of(FactText.walk(journal), 1)));
    hear(new ProgramEvent.OfWalk(new Event.Reopened(now * 1_000_000, WALL)));
  }

  private void hear(ProgramEvent first) {
    Deque<ProgramEvent> waiting = new ArrayDeque<>(List.of(first));
    while (!waiting.isEmpty()) {
      ProgramNext next = loop.update(program, waiting.poll());
      program = next.program();
      for (Effect effect : next.effects()) {
        if (effect instanceof Effect.AppendJournal append) {
          journal.add(FactText.body(append.facts()));
          waiting.add(new ProgramEvent.OfWalk(new Event.Kept(append.facts())));
        } else {
          bells++;
        }
      }
    }
  }

  private void press(Key.Kind kind) {
    hear(new ProgramEvent.Pressed(Key.of(kind)));
  }

  private void metersSay(MeterReading voltsNow, MeterReading ampsNow) {
    now += 500;
    volts = volts.after(voltsNow, now);
    amps = amps.after(ampsNow, now);
    hear(
        new ProgramEvent.MetersRead(
            new ConnectedMeters(List.of(volts, amps), now, WALL + now, Optional.empty())));
  }

  private static MeterReading value(ReadingId id, double value) {
    return new MeterReading.Value(value, id.unit(), "+" + value);
  }

  private static MeterReading volts(double value) {
    return value(ReadingId.SUPPLY_VOLTS, value);
  }

  private static MeterReading amps(double value) {
    return value(ReadingId.SUPPLY_AMPS, value);
  }

  private WalkState state() {
    return program.walk().orElseThrow().state();
  }

  private StepState step() {
    return state().step(state().currentId());
  }

  private String screen() {
    return screen(110);
  }

  private String screen(int columns) {
    return String.join("\n", program.paint(new Size(columns, 30), new Look(false)).lines());
  }

  @Test
  void fillKey_entersAllMetersOfTheStep_withWhatTheyWereReadFrom() {
    metersSay(volts(13.70), amps(1.6));
    metersSay(volts(13.72), amps(1.6));
    assertTrue(screen().contains("meter 13.72 V"), screen());
    press(Key.Kind.F8);
    Entry entry = step().latest(ReadingId.SUPPLY_VOLTS).orElseThrow();
    assertEquals(13.72, entry.value(), 1e-9);
    Instrument by = entry.instrument().orElseThrow();
    assertEquals("Brightmoor,M6,0,1.0", by.identity());
    assertEquals("+13.72", by.raw());
    assertEquals(WALL + now, by.wallMillis());
    assertEquals(2, by.count());
    // s of 13.70 and 13.72 is 0.02/√2 (JCGM 100:2008, 4.2.2).
    assertEquals(0.02 / Math.sqrt(2), by.scatter(), 1e-9);
    assertEquals(1.6, step().latest(ReadingId.SUPPLY_AMPS).orElseThrow().value(), 1e-9);
    assertTrue(
        program.state().notice().orElseThrow().contains("Spread of the last 2: "),
        program.state().notice().get());
    assertTrue(
        program.state().notice().orElseThrow().contains("supply volts 20 mV"),
        program.state().notice().get());
    assertTrue(program.state().notice().orElseThrow().endsWith("; read within 0.0 s."), screen());
    metersSay(volts(13.69), amps(1.7));
    assertTrue(screen().contains("meters now: supply amps 1.70 A, supply volts 13.69 V"), screen());
    assertEquals(state(), FactText.walk(journal));
    assertEquals(
        by.scatter(),
        Results.taken(state()).get(0).reading(ReadingId.SUPPLY_VOLTS).orElseThrow().scatter());
  }

  @Test
  void fieldKey_entersTheReadingInFocusAlone() {
    metersSay(volts(13.7), amps(1.6));
    press(Key.Kind.F11);
    assertEquals(1, step().latest().size(), screen());
  }

  @Test
  void whatIsNoReading_isTold_neverEntered() {
    List<MeterReading> none =
        List.of(
            new MeterReading.Overload("9.9E37"),
            new MeterReading.NotANumber("9.91E37"),
            new MeterReading.Garbage("?!", "the reply is not a number: ?!"),
            new MeterReading.Silent("no answer to READ? within 1000 ms"));
    for (MeterReading reading : none) {
      metersSay(reading, reading);
      press(Key.Kind.F8);
      press(Key.Kind.F11);
      assertEquals(0, step().entryCount(), reading.toString());
      assertTrue(
          program.state().notice().orElseThrow().contains("Nothing was entered"),
          reading.toString());
    }
  }

  @Test
  void staleReading_isNotEntered_evenWhereItsMeterSaysNothingMore() {
    metersSay(volts(13.7), amps(1.6));
    now += MeterWatch.STALE_MILLIS + 2000;
    hear(new ProgramEvent.OfWalk(new Event.Tick(now * 1_000_000, WALL + now)));
    assertTrue(screen().contains("stale, 7 s old"), screen());
    press(Key.Kind.F8);
    assertEquals(0, step().entryCount());
    assertTrue(program.state().notice().orElseThrow().contains("last answered 7 s ago"), screen());
  }

  @Test
  void heldReading_isNotEntered() {
    for (int i = 0; i < 10; i++) {
      metersSay(volts(13.70123), amps(1.6));
    }
    press(Key.Kind.F8);
    assertTrue(step().latest(ReadingId.SUPPLY_VOLTS).isEmpty());
    assertTrue(step().latest(ReadingId.SUPPLY_AMPS).isPresent());
    assertTrue(program.state().notice().orElseThrow().contains("is its hold on?"), screen());
  }

  @Test
  void supplyCurrent_aboveWhatTheSuppliesGive_ringsOnce_andSaysItsNumber() {
    metersSay(volts(13.7), amps(1.0));
    int before = bells;
    assertFalse(screen().contains("SUPPLY AMPS"), screen());
    metersSay(volts(13.7), amps(9.4));
    metersSay(volts(13.7), amps(9.5));
    assertEquals(before + 1, bells);
    assertTrue(screen().contains("SUPPLY AMPS 9.50 A, above the 9.00 A"), screen());
    assertTrue(screen().contains("switches nothing"), screen());
    metersSay(volts(13.7), new MeterReading.Silent("the cable was pulled"));
    assertTrue(screen().contains("SUPPLY AMPS 9.50 A"), "a silent meter clears nothing");
    metersSay(volts(13.7), amps(1.0));
    assertFalse(screen().contains("SUPPLY AMPS 9"), screen());
    metersSay(volts(13.7), new MeterReading.Overload("9.9E37"));
    assertEquals(before + 2, bells);
  }

  /** A meter left on hold above a limit before the step began: its digits no longer change. */
  @Test
  void heldCurrent_aboveWhatTheSuppliesGive_warnsAsSoonAsTheStepRuns() {
    metersSay(volts(13.7), amps(1.6));
    press(Key.Kind.F8);
    press(Key.Kind.F9);
    for (int i = 0; i < 10; i++) {
      metersSay(volts(13.7), amps(9.5012));
    }
    assertFalse(screen().contains("SUPPLY AMPS"), "nothing runs yet");
    hear(new ProgramEvent.OfWalk(new Intent.LiftHalt("small supply, low level")));
    hear(new ProgramEvent.OfWalk(new Intent.Arm("4 ohm")));
    assertEquals(StepState.Status.RUNNING, step().status(), screen());
    metersSay(volts(13.7), amps(9.5012));
    assertTrue(screen().contains("SUPPLY AMPS 9.50 A, above the 9.00 A"), screen());
  }

  @Test
  void alarm_thatBecomesAnother_ringsAgain_andNamesTheLeastLimitPassed() {
    metersSay(volts(9.0), amps(1.0));
    int before = bells;
    assertTrue(screen().contains("SUPPLY VOLTS 9.00 V, below the "), screen());
    metersSay(volts(9.0), amps(8.5));
    assertEquals(before + 1, bells);
    assertTrue(screen().contains("SUPPLY AMPS 8.50 A, above the "), screen());
    assertTrue(screen().contains("forecast maximum of"), screen());
    metersSay(volts(9.0), amps(9.5));
    assertEquals(before + 2, bells);
    assertTrue(screen().contains("9.00 A usable from the supplies"), screen());
    metersSay(volts(9.0), amps(9.6));
    assertEquals(before + 2, bells);
  }

  @Test
  void alarm_isToldOnEveryScreen_besidesWhatElseIsToTell() {
    metersSay(volts(13.7), amps(9.5));
    press(Key.Kind.F8);
    List<String> lines = screen().lines().toList();
    String foot = String.join("\n", lines.subList(lines.size() - 4, lines.size()));
    assertTrue(foot.contains("SUPPLY AMPS 9.50 A") && foot.contains("Entered: "), screen());
    press(Key.Kind.F4);
    assertTrue(screen().startsWith(" SUPPLY AMPS 9.50 A, above the 9.00 A"), screen());
    press(Key.Kind.F10);
    press(Key.Kind.F2);
    assertTrue(screen().startsWith(" SUPPLY AMPS 9.50 A, above the 9.00 A"), screen());
  }

  /** On the least terminal the alarm needs two lines and the notice two more. */
  @Test
  void alarmAndNotice_areBothWhole_onTheLeastTerminal() {
    metersSay(volts(13.69), amps(9.4));
    metersSay(volts(13.7), amps(9.5));
    press(Key.Kind.F8);
    String notice = program.state().notice().orElseThrow();
    String alarm = program.state().meters().alarm().orElseThrow().sentence();
    assertTrue(alarm.length() > 78 && notice.length() > 78, alarm + notice);
    String told = least().replaceAll("\\s+", " ");
    assertTrue(told.contains(alarm + " " + notice), least());
    press(Key.Kind.F4);
    String what = program.state().meters().alarm().orElseThrow().what();
    assertEquals(" " + what, least().lines().findFirst().orElseThrow().stripTrailing());
  }

  /** What is typed shows in its row alone, and that row is not one of the foot. */
  @Test
  void typing_besidesAnAlarm_paintsTheSame() {
    metersSay(volts(13.69), amps(9.5));
    press(Key.Kind.F11);
    ProgramPainter painter = new ProgramPainter(new Look(false));
    painter.paint(program, Size.LEAST);
    for (char c : "13.7".toCharArray()) {
      hear(new ProgramEvent.Pressed(Key.of(c)));
      assertEquals(
          program.paint(Size.LEAST, new Look(false)).lines(),
          painter.paint(program, Size.LEAST).lines());
    }
  }

  private String least() {
    return String.join("\n", program.paint(Size.LEAST, new Look(false)).lines());
  }

  @Test
  void watchedMeter_thatFallsSilent_isToldWithoutTheBell() {
    metersSay(volts(13.7), amps(1.6));
    int before = bells;
    metersSay(volts(13.7), new MeterReading.Silent("the cable was pulled"));
    assertTrue(
        screen().contains("SUPPLY AMPS not watched: no answer from supply amps meter."), screen());
    assertEquals(before, bells);
    metersSay(volts(13.7), amps(1.6));
    assertFalse(screen().contains("not watched"), screen());
  }

  @Test
  void readingThatStillMoves_isToldAsNotSettled() {
    metersSay(volts(13.7), amps(8.0));
    metersSay(volts(13.71), amps(1.6));
    press(Key.Kind.F8);
    String told = program.state().notice().orElseThrow();
    assertTrue(told.startsWith("NOT SETTLED: supply amps. Wait, then read again with F11. "), told);
    assertTrue(told.contains("supply amps 6.4 A"), told);
  }

  @Test
  void fillKey_takesDoubtedReadingsAgain_andLeavesTheOthers() {
    metersSay(volts(13.7), amps(60));
    press(Key.Kind.F8);
    assertTrue(step().openDoubts().contains(ReadingId.SUPPLY_AMPS), screen());
    metersSay(volts(13.6), amps(1.6));
    press(Key.Kind.F8);
    assertEquals(1.6, step().latest(ReadingId.SUPPLY_AMPS).orElseThrow().value(), 1e-9);
    assertEquals(
        2, step().entries().get(ReadingId.SUPPLY_AMPS).size(), "the first is never erased");
    assertEquals(1, step().entries().get(ReadingId.SUPPLY_VOLTS).size());
    press(Key.Kind.F8);
    assertTrue(
        program.state().notice().orElseThrow().contains("is in; F11 takes one again"), screen());
  }

  @Test
  void readingFromAMeter_countsAsReadAsFinelyAsItShows() {
    metersSay(volts(13.7), amps(2));
    press(Key.Kind.F8);
    assertEquals(0.01, step().latest(ReadingId.SUPPLY_VOLTS).orElseThrow().resolution(), 1e-12);
    assertEquals(0.01, step().latest(ReadingId.SUPPLY_AMPS).orElseThrow().resolution(), 1e-12);
  }

  @Test
  void foot_namesTheFieldKey_onlyWhereAMeterIsInFocus() {
    assertFalse(screen().contains("F11 this"), screen());
    metersSay(volts(13.7), amps(1.6));
    assertTrue(screen().contains("F8 fill  F11 this"), screen());
    String narrow = screen(80);
    assertTrue(narrow.contains("F8 fill F11 this F10 leave Esc STOP"), narrow);
    press(Key.Kind.F8);
    press(Key.Kind.F9);
    assertEquals(StepState.Status.BRIEFED, step().status(), screen());
    assertFalse(screen().contains("F11 this"), screen());
  }

  @Test
  void brief_tellsWhatStandsAtTheTerminals() {
    metersSay(volts(13.7), amps(1.6));
    press(Key.Kind.F8);
    press(Key.Kind.F9);
    metersSay(volts(13.81), amps(0));
    assertTrue(screen().contains("supply meter 13.81 V"), screen());
    metersSay(new MeterReading.Silent("the cable was pulled"), amps(0));
    assertTrue(screen().contains("supply meter no answer"), screen());
  }

  @Test
  void warmUp_showsTheHeatsink_andTakesItWithTheFieldKey() {
    open(
        SEQUENCE.replace(
            "{\"do\":\"idle\"}",
            "{\"do\":\"warm-up\",\"minutes\":15,\"powerFraction\":0.5,"
                + "\"steadyCelsiusPerMinute\":0.5}"));
    hear(new ProgramEvent.OfWalk(new Intent.LiftHalt("small supply, low level")));
    hear(new ProgramEvent.OfWalk(new Intent.Arm("4 ohm")));
    assertEquals(StepState.Status.RUNNING, step().status(), screen());
    assertFalse(screen().contains("meter 41"), screen());
    for (double celsius : new double[] {41.2, 41.6}) {
      now += 500;
      MeterWatch heat =
          MeterWatch.begin(meter(ReadingId.SINK_CELSIUS), now)
              .after(value(ReadingId.SINK_CELSIUS, celsius), now);
      hear(
          new ProgramEvent.MetersRead(
              new ConnectedMeters(List.of(heat), now, WALL + now, Optional.empty())));
      assertTrue(screen(80).contains("meter " + celsius + "0 °C"), screen(80));
      press(Key.Kind.F11);
    }
    List<Entry> entries = step().entries().get(ReadingId.SINK_CELSIUS);
    assertEquals(List.of(41.2, 41.6), entries.stream().map(Entry::value).toList(), screen());
  }

  @Test
  void withoutAnyMeter_typingWorks_andTheKeysSayWhy() {
    press(Key.Kind.F8);
    assertEquals(
        Optional.of("No meter is connected; type the readings."), program.state().notice());
    press(Key.Kind.F11);
    assertTrue(
        program.state().notice().orElseThrow().startsWith("No meter is connected for "), screen());
    "1.6 A".chars().forEach(c -> hear(new ProgramEvent.Pressed(Key.of((char) c))));
    press(Key.Kind.ENTER);
    assertEquals(1, step().entryCount(), screen());
    assertTrue(step().latest().values().iterator().next().instrument().isEmpty());
    assertEquals(state(), FactText.walk(journal));
  }
}
