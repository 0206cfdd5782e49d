package loadwalk.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loadwalk.bench.ReadingId;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.view.state.Live;
import loadwalk.view.state.WaveFound;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.Capture;
import loadwalk.wave.analysis.LiveReading;
import loadwalk.wave.file.CaptureSetup;
import loadwalk.wave.file.ScopeCsv;

/** A walk with meters, the sound input or a captured wave, each by a name. */
final class MeterSituations {
  private static final CaptureSetup CALIBRATED = CaptureSetup.of(1.5, 21);
  private static final CaptureSetup UNDIVIDED =
      new CaptureSetup(
          OptionalDouble.of(1.5),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          1,
          ScopeCsv.Given.NOTHING);

  private MeterSituations() {}

  static Map<String, Supplier<Desk>> all() {
    Map<String, Supplier<Desk>> all = new LinkedHashMap<>();
    meters(all);
    live(all);
    waves(all);
    return all;
  }

  static Desk idling() {
    return WalkSituations.strongOnStout().press("Enter");
  }

  /** Lets the meters say numbers, some seconds after what they said before. */
  static Desk say(Desk desk, double volts, double amps) {
    return say(desk, value(ReadingId.SUPPLY_VOLTS, volts), value(ReadingId.SUPPLY_AMPS, amps));
  }

  static Desk say(Desk desk, MeterReading volts, MeterReading amps) {
    desk.press("wait:1");
    List<MeterWatch> watches =
        List.of(
            heard(desk, ReadingId.SUPPLY_VOLTS, volts), heard(desk, ReadingId.SUPPLY_AMPS, amps));
    return desk.hears(
        new ProgramEvent.MetersRead(
            new ConnectedMeters(watches, desk.millis(), desk.wall(), Optional.empty())));
  }

  private static MeterWatch heard(Desk desk, ReadingId id, MeterReading reading) {
    return desk.program()
        .state()
        .meters()
        .of(id)
        .orElseGet(() -> MeterWatch.begin(Shelf.meter(id), desk.millis()))
        .after(reading, desk.millis());
  }

  static MeterReading value(ReadingId id, double value) {
    return new MeterReading.Value(value, id.unit(), "+" + value);
  }

  private static void meters(Map<String, Supplier<Desk>> all) {
    all.put("meters-brief", () -> say(WalkSituations.strongOnStout(), 13.81, 0));
    all.put("meters-running", () -> say(idling(), 13.7, 1.62));
    all.put("meters-entered", () -> say(idling(), 13.7, 1.62).press("F8", "wait:1"));
    all.put("meters-one-entered", () -> say(idling(), 13.7, 1.62).press("F11"));
    all.put("meters-loaded-entered", () -> say(loaded(), 13.7, 34).press("F8"));
    all.put("meters-loaded-doubt", () -> say(loaded(), 13.7, 3.4).press("F8"));
    all.put("meters-alarm", () -> say(idling(), 13.7, 130));
    all.put("meters-alarm-entered", () -> say(idling(), 13.7, 130).press("F8"));
    all.put("meters-alarm-question", () -> say(idling(), 13.7, 130).press("F2"));
    all.put("meters-alarm-readings", () -> say(idling(), 13.7, 130).press("F4"));
    all.put("meters-alarm-unkept", () -> alarmedUnkept().press("F4"));
    all.put("meters-alarm-unkept-walk", () -> alarmedUnkept());
    all.put(
        "meters-silent",
        () ->
            say(
                say(idling(), 13.7, 1.62),
                value(ReadingId.SUPPLY_VOLTS, 13.7),
                new MeterReading.Silent("the cable was pulled")));
  }

  private static Desk loaded() {
    return WalkSituations.strongOnStout().press("F3", "text:later", "Enter", "text:4", "Enter");
  }

  private static Desk alarmedUnkept() {
    return say(idling(), 13.7, 130).diskFails("The disk is full.").press("F8");
  }

  /** Returns what a sound input hears; the picture is two periods of a clipped wave. */
  static LiveReading heard(boolean top, boolean bottom, boolean overdriven, boolean tone) {
    List<Double> picture =
        IntStream.range(0, 256)
            .mapToObj(i -> Math.max(-0.5, Math.min(0.6, Math.sin(4 * Math.PI * i / 256))))
            .toList();
    return new LiveReading(
        0.4213,
        tone ? OptionalDouble.of(40.02) : OptionalDouble.empty(),
        tone ? OptionalDouble.of(0.987) : OptionalDouble.empty(),
        top,
        bottom,
        overdriven,
        picture);
  }

  static Desk listening(Live.State state, LiveReading reading) {
    return WalkSituations.runningAtFour()
        .hears(new ProgramEvent.LiveHeard(new Live(state, Optional.empty(), Optional.of(reading))));
  }

  private static void live(Map<String, Supplier<Desk>> all) {
    all.put(
        "live-opening",
        () -> WalkSituations.runningAtFour().hears(new ProgramEvent.LiveHeard(Live.OPENING)));
    all.put(
        "live-none",
        () ->
            WalkSituations.runningAtFour()
                .hears(new ProgramEvent.LiveHeard(Live.none("There is no sound input here."))));
    all.put("live-hearing", () -> listening(Live.State.HEARING, heard(false, false, false, true)));
    all.put(
        "live-volts-clipping",
        () ->
            listening(Live.State.HEARING, heard(true, false, false, true))
                .hears(new ProgramEvent.InputKnown(CALIBRATED)));
    all.put("live-held", () -> listening(Live.State.HELD, heard(true, true, false, true)));
    all.put("live-overdriven", () -> listening(Live.State.HEARING, heard(true, true, true, false)));
    all.put("live-bottom", () -> listening(Live.State.HEARING, heard(false, true, false, false)));
    all.put(
        "live-volts-undivided",
        () ->
            listening(Live.State.HEARING, heard(false, false, false, true))
                .hears(new ProgramEvent.InputKnown(UNDIVIDED)));
    all.put(
        "live-hearing-in-doubt",
        () ->
            listening(Live.State.HEARING, heard(true, false, false, true))
                .press("text:1.55 V", "Enter"));
    all.put(
        "live-none-in-doubt",
        () ->
            WalkSituations.runningAtFour()
                .hears(new ProgramEvent.LiveHeard(Live.none("There is no sound input here.")))
                .press("text:1.55 V", "Enter"));
    all.put(
        "live-held-in-doubt",
        () ->
            listening(Live.State.HELD, heard(true, false, false, true))
                .press("text:1.55 V", "Enter"));
  }

  /** What a captured wave of a running step says. */
  static Capture capture() {
    List<Double> cycle =
        IntStream.range(0, 128)
            .mapToObj(i -> 20 * Math.max(-0.9, Math.min(0.9, Math.sin(2 * Math.PI * i / 128))))
            .toList();
    return new Capture(
        "ramp.wav",
        "ab".repeat(32),
        1,
        40.02,
        15.62,
        0.01,
        31.5,
        OptionalDouble.of(0.005),
        "volts of the file and divider ratio",
        OptionalDouble.of(0.99),
        true,
        "a rising tone",
        "symmetric clipping",
        "",
        cycle,
        List.of(0.1, 0.9));
  }

  static Desk atWaveForm() {
    return WalkSituations.runningAtFour().press("Ctrl-W", "Enter");
  }

  private static Desk reading() {
    return atWaveForm().press("text:/tmp/ramp.wav", "Down", "text:1.5", "Down", "text:21", "F9");
  }

  private static Effect.ReadCapture asked() {
    return new Effect.ReadCapture("/tmp/ramp.wav", CALIBRATED, false);
  }

  private static Desk found() {
    List<String> lines = new ArrayList<>(List.of("Output 15.62 V rms at 40.0 Hz.", "THD 0.99 %."));
    lines.add("The limit was found on a rising tone, at the volts where THD is 1 %. ".repeat(2));
    return reading()
        .hears(
            new ProgramEvent.CaptureRead(
                asked(), new WaveFound(Optional.of(capture()), CALIBRATED, lines)));
  }

  private static void waves(Map<String, Supplier<Desk>> all) {
    all.put("wave-cautions", () -> WalkSituations.runningAtFour().press("Ctrl-W"));
    all.put("wave-cautions-of-live", () -> WalkSituations.runningAtFour().press("Ctrl-L"));
    all.put("wave-form", () -> atWaveForm());
    all.put("wave-form-last", () -> atWaveForm().press("text:a.csv", "Up"));
    all.put("wave-form-no-file", () -> atWaveForm().press("Down", "F9"));
    all.put(
        "wave-form-wrong",
        () -> atWaveForm().press("text:a.wav", "Down", "text:1", "Down", "Down", "text:2", "F9"));
    all.put("wave-reading", () -> reading());
    all.put("wave-reading-key", () -> reading().press("Enter"));
    all.put(
        "wave-not-read",
        () ->
            reading()
                .hears(
                    new ProgramEvent.CaptureRead(
                        asked(), WaveFound.nothing(CALIBRATED, "No tone stands out."))));
    all.put("wave-found", () -> found());
    all.put("wave-another", () -> found().press("F10"));
    all.put("wave-again", () -> found().press("Enter", "Ctrl-W"));
    all.put(
        "wave-held",
        () ->
            listening(Live.State.HELD, heard(true, true, false, true))
                .press("Ctrl-W")
                .hears(new ProgramEvent.CautionRead())
                .hears(new ProgramEvent.HeldKept("stereo-4", "/walks/held-1.wav")));
    all.put(
        "wave-held-elsewhere",
        () ->
            WalkSituations.runningAtFour()
                .press("F4")
                .hears(new ProgramEvent.HeldKept("stereo-4", "/walks/held-1.wav")));
  }
}
