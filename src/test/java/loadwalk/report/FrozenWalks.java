package loadwalk.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import loadwalk.KeptText;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.report.page.Walks;
import loadwalk.result.Criterion;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.WalkState;

/**
 * Walks whose facts are kept in {@code src/test/resources/documents}, one record a line: the briefs
 * and doubts of the day they were walked are among them, so that a better forecast changes no
 * document. A walk that is deleted there is walked anew by {@code -Dsnapshots.update=true}.
 */
public final class FrozenWalks {
  private static final String HASH = "0123456789abcdef".repeat(4);

  private FrozenWalks() {}

  /** Everything that can happen in a walk, and its end. */
  public static WalkState eventful() {
    return kept("eventful", FrozenWalks::walkEventful);
  }

  /** A walk left in the middle: stopped without a reason, cold, with a doubt open. */
  public static WalkState left() {
    return kept("left", FrozenWalks::walkLeft);
  }

  /** A whole walk of a practice amplifier. */
  public static WalkState practice() {
    return kept("practice", () -> Walks.practicing(1, "full-walk").toTheEnd());
  }

  /** A walk of which nothing is known but the amplifier's name. */
  public static WalkState begun() {
    return kept("begun", () -> Walks.opened("stereo-only", plain(), bare(), OptionalLong.empty()));
  }

  /** Returns the bodies of a walk's records. */
  public static List<String> bodies(String name) {
    try {
      return Files.readAllLines(file(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path file(String name) {
    return Documents.FOLDER.resolve(name + ".jsonl");
  }

  private static WalkState kept(String name, Supplier<Walks> walked) {
    if (KeptText.UPDATE && !Files.exists(file(name))) {
      String text =
          walked.get().records().stream().map(FactText::body).collect(Collectors.joining("\n"));
      try {
        Files.writeString(file(name), text + "\n", StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return FactText.walk(bodies(name));
  }

  private static Walks walkEventful() {
    Walks w = Walks.opened("full-walk", rated(), Walks.north(), OptionalLong.empty());
    warmUpTwice(w);
    w.begin();
    w.enter("idle", ReadingId.SUPPLY_AMPS, "1.6 A");
    w.enter("idle", ReadingId.SUPPLY_VOLTS, "13.8 V");
    w.hear(new Intent.Finish());
    bothChannels(w);
    amendedAndNoted(w);
    stoodBy(w);
    stoppedAndBelow(w);
    captured(w);
    byMeter(w);
    w.hear(new Intent.Skip("not today, the bank is too hot"));
    w.begin();
    w.enter("open-load", ReadingId.OPEN_VOLTS, "16.52 V");
    w.hear(new Intent.Finish());
    w.begin();
    w.hear(new Intent.EndEarly("Still warm from the last load."));
    recheck(w);
    return w;
  }

  /** The first warm-up is forgotten: the walk stands still for a quarter of an hour. */
  private static void warmUpTwice(Walks w) {
    w.begin();
    temperatures(w, 22.5, 35, 41);
    w.hear(new Intent.Pause());
    w.pass(900);
    w.hear(new Intent.Resume());
    w.begin();
    temperatures(w, 27, 38, 45, 48.6, 50.2, 51.1, 51.5);
    w.enter("warm-up", ReadingId.SINK_CELSIUS, "51.7 degC");
    w.hear(new Intent.EndEarly("steady already, and the shop closes"));
  }

  private static void temperatures(Walks w, double... celsius) {
    for (double t : celsius) {
      w.enter("warm-up", ReadingId.SINK_CELSIUS, t + " degC");
      w.pass(100);
    }
  }

  private static void bothChannels(Walks w) {
    w.begin();
    w.enter("stereo-4", ReadingId.LOAD_OHMS, "3.98 ohm");
    w.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "15.90 V");
    w.enter("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS, "15.42 V");
    w.enter("stereo-4", ReadingId.SUPPLY_VOLTS, "13.60 V");
    w.enter("stereo-4", ReadingId.SUPPLY_AMPS, "13.2 A");
    w.standByAll("stereo-4", "the other channel is weaker, both were read twice");
    w.hear(new Event.PhotoKept("sessions/t.photos/bank.png", "the bank, cold", HASH, "image/png"));
    w.hear(new Intent.Finish());
  }

  private static void amendedAndNoted(Walks w) {
    w.begin();
    w.enter("stereo-2", ReadingId.OUTPUT_WATTS, "1130 W");
    w.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "150 V");
    w.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "150 V");
    w.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "15.0 V");
    w.enter("stereo-2", ReadingId.SUPPLY_VOLTS, "13.4 V");
    w.enter("stereo-2", ReadingId.SUPPLY_AMPS, "23.9 A");
    w.hear(new Intent.AddPair("stereo-2", "14.2 V", "0.31 %"));
    w.hear(new Intent.AddPair("stereo-2", "15.3 V", "2.4 %"));
    w.hear(new Intent.Note("fan came on <b>loud</b>"));
    w.hear(new Intent.Finish());
  }

  private static void stoodBy(Walks w) {
    w.begin();
    w.enter("stereo-1", ReadingId.OUTPUT_VOLTS, "9.1 V");
    w.enter("stereo-1", ReadingId.SUPPLY_VOLTS, "13.0 V");
    w.enter("stereo-1", ReadingId.SUPPLY_AMPS, "27.5 A");
    w.hear(new Intent.SetCriterion("stereo-1", Criterion.CLIPPING_ONSET));
    w.standByAll("stereo-1", "read twice, the limiter of this model sets in");
    w.hear(new Intent.Finish());
  }

  private static void stoppedAndBelow(Walks w) {
    w.begin();
    w.hear(new Intent.Stop());
    w.hear(new Intent.ExplainStop("smell from a load, moved it away"));
    w.hear(new Intent.Resume());
    w.begin();
    w.enter("bridged-4", ReadingId.OUTPUT_VOLTS, "22.0 V");
    w.enter("bridged-4", ReadingId.OUTPUT_VOLTS, "22.0 V");
    w.enter("bridged-4", ReadingId.SUPPLY_VOLTS, "13.5 V");
    w.enter("bridged-4", ReadingId.SUPPLY_AMPS, "18.0 A");
    w.hear(new Intent.SetCriterion("bridged-4", Criterion.BELOW_LIMIT));
    w.standByAll("bridged-4", "half power only, to spare the load");
    w.hear(new Intent.Finish());
  }

  private static void captured(Walks w) {
    w.begin();
    w.hear(new Intent.TakeCapture("bridged-2", wave(), Walks.START));
    w.enter("bridged-2", ReadingId.SUPPLY_VOLTS, "13.1 V");
    w.enter("bridged-2", ReadingId.SUPPLY_AMPS, "44.0 A");
    w.standByAll("bridged-2", "as captured");
    w.hear(new Intent.Finish());
  }

  /** A sine bent at its top, in sixteen samples a period. */
  private static Capture wave() {
    List<Double> cycle =
        List.of(
            0.0, 14.0, 26.0, 33.0, 33.5, 33.0, 26.0, 14.0, 0.0, -14.0, -26.0, -34.0, -36.7, -34.0,
            -26.0, -14.0);
    return new Capture(
        "bridged 2 ohm.wav",
        HASH,
        2,
        40.002,
        22.0,
        0.01,
        100,
        OptionalDouble.of(0.005),
        "typed: 100 V at full scale",
        OptionalDouble.of(1.0),
        true,
        "interpolated between two windows at 1 % THD",
        "clipping on one side",
        "no",
        cycle,
        List.of(0.8, 0.6, 0.05, 0.0005, 0.0));
  }

  private static void byMeter(Walks w) {
    w.begin();
    Map<ReadingId, String> shown = new LinkedHashMap<>();
    shown.put(ReadingId.OUTPUT_VOLTS, "17.94 V");
    shown.put(ReadingId.SUPPLY_VOLTS, "12.70 V");
    shown.put(ReadingId.SUPPLY_AMPS, "57.3 A");
    Instrument meter = new Instrument("AC volts", "INVENTED,1,0,0", "17.94", Walks.START, 4, 0.2);
    w.hear(new Intent.EnterAll("bridged-1", shown, Map.of(ReadingId.OUTPUT_VOLTS, meter)));
    w.standByAll("bridged-1", "shown by the meters");
    w.hear(new Intent.Finish());
  }

  private static void recheck(Walks w) {
    String step = w.state().currentId();
    w.begin();
    Map<ReadingId, String> shown = new LinkedHashMap<>();
    shown.put(ReadingId.OUTPUT_VOLTS, "16.20 V");
    shown.put(ReadingId.SUPPLY_VOLTS, "12.6 V");
    shown.put(ReadingId.SUPPLY_AMPS, "54.0 A");
    Instrument meter = new Instrument("AC volts", "INVENTED,1,0,0", "16.20", Walks.START, 6, 0.1);
    w.hear(new Intent.EnterAll(step, shown, Map.of(ReadingId.OUTPUT_VOLTS, meter)));
    w.standByAll(step, "hot");
    w.hear(new Intent.Finish());
  }

  private static Walks walkLeft() {
    Walks w = Walks.opened("full-walk", plain(), bare(), OptionalLong.of(7));
    w.begin();
    w.pass(400);
    w.hear(new Intent.EndEarly("for a picture"));
    w.begin();
    w.enter("idle", ReadingId.SUPPLY_AMPS, "1.6 A");
    w.hear(new Intent.Finish());
    w.begin();
    w.enter("stereo-4", ReadingId.OUTPUT_WATTS, "51 W");
    w.hear(new Intent.Finish());
    w.begin();
    w.enter("stereo-2", ReadingId.OUTPUT_VOLTS, "130 V");
    w.hear(new Intent.Pause());
    w.pass(9000);
    w.hear(new Intent.Resume());
    w.hear(new Intent.Stop());
    return w;
  }

  /** An amplifier with everything known, a serial number among it. */
  private static Amplifier rated() {
    Amplifier a = Walks.halvorsen();
    return new Amplifier(
        a.maker(),
        a.model(),
        a.serial(),
        a.year(),
        a.amplifierClass(),
        a.channels(),
        List.of(
            new Rating(Mode.STEREO, 4, 50, OptionalDouble.of(14.4), OptionalDouble.of(1)),
            new Rating(Mode.STEREO, 2, 95, OptionalDouble.of(13.8), OptionalDouble.empty()),
            new Rating(Mode.BRIDGED, 4, 190, OptionalDouble.empty(), OptionalDouble.of(0.1)),
            new Rating(Mode.BRIDGED, 2, 240, OptionalDouble.of(13), OptionalDouble.of(1))),
        a.minimumStereoOhms(),
        a.minimumBridgedOhms(),
        a.fuses(),
        a.regulated());
  }

  private static Amplifier plain() {
    return new Amplifier(
        "Tessaly",
        "T | 2*",
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(25.0),
        Optional.of(true));
  }

  private static Bench bare() {
    return new Bench(
        "Kitchen table",
        List.of(new Supply(13.8, 60)),
        List.of(new Lead("both", new Lead.Mm2(16), 0.5, 1)),
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        0.9);
  }
}
