package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.view.state.Library;
import loadwalk.view.state.Library.KeptWalk;

/** Amplifiers, benches, sequences and kept walks to show screens with; all of them invented. */
final class Shelf {
  static final String SHORT =
      """
      {"format":"loadwalk-sequence/1","name":"short","title":"Idle, then 4 ohm","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"idle"},
       {"do":"measure","mode":"stereo","ohms":4},{"do":"measure","mode":"bridged","ohms":4}]}
      """;
  static final String LADDER =
      """
      {"format":"loadwalk-sequence/1","name":"ladder","title":"Warm-up, a ladder, a recheck",
       "tone":{"hertz":40},"limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[
       {"do":"warm-up","minutes":15,"powerFraction":0.5,"steadyCelsiusPerMinute":0.5},
       {"do":"idle"},{"do":"measure","mode":"stereo","ohms":4},
       {"do":"measure","mode":"stereo","ohms":2},{"do":"measure","mode":"bridged","ohms":4},
       {"do":"open-load"},{"do":"recheck","of":["heaviest"],"afterWarmMinutes":15}]}
      """;
  static final String NOTED =
      """
      {"format":"loadwalk-sequence/1","name":"noted","title":"A note first","tone":{"hertz":1000},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[
       {"do":"note","text":"Read the manual and check that nothing hot touches a lead."},
       {"do":"measure","mode":"stereo","ohms":4}]}
      """;

  static final String MUSIC =
      """
      {"format":"loadwalk-sequence/1","name":"music","title":"Music alone","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"music","minutes":2.5},
       {"do":"measure","mode":"stereo","ohms":8}]}
      """;

  /** More steps than a row of the least terminal has room to name. */
  static final String LONG =
      """
      {"format":"loadwalk-sequence/1","name":"long","title":"Every load","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"idle"},
       {"do":"measure","mode":"stereo","ohms":8},{"do":"measure","mode":"stereo","ohms":4},
       {"do":"measure","mode":"stereo","ohms":2},{"do":"measure","mode":"bridged","ohms":16},
       {"do":"measure","mode":"bridged","ohms":8},{"do":"measure","mode":"bridged","ohms":4},
       {"do":"open-load"},{"do":"recheck","of":["stereo-4"],"afterWarmMinutes":5}]}
      """;

  static final String LONG_NOTE =
      NOTED.replace("hot touches a lead.", "hot touches a lead. " + "Mind the fan. ".repeat(90));

  /** An amplifier that asks little of a stout bench. */
  static final Amplifier SMALL =
      new Amplifier(
          "Verrin",
          "V1 Small",
          Optional.empty(),
          OptionalInt.empty(),
          Optional.of("D"),
          OptionalInt.of(2),
          List.of(
              new Rating(Mode.STEREO, 4, 10, OptionalDouble.of(13.8), OptionalDouble.of(1)),
              new Rating(Mode.STEREO, 8, 5, OptionalDouble.of(13.8), OptionalDouble.of(1))),
          OptionalDouble.of(2),
          OptionalDouble.of(4),
          List.of(40.0),
          Optional.of(true));

  /** An amplifier of which everything is known, rated for more than small benches give. */
  static final Amplifier STRONG =
      new Amplifier(
          "Verrin",
          "V1 Grand",
          Optional.of("A-117"),
          OptionalInt.of(1994),
          Optional.of("AB"),
          OptionalInt.of(2),
          List.of(
              new Rating(Mode.STEREO, 4, 150, OptionalDouble.of(14.4), OptionalDouble.of(0.1)),
              new Rating(Mode.BRIDGED, 4, 500, OptionalDouble.empty(), OptionalDouble.empty())),
          OptionalDouble.of(2),
          OptionalDouble.of(4),
          List.of(30.0, 30.0),
          Optional.of(false));

  static final Amplifier NAMED = Amplifier.named("Halvorsen & Pike", "HP 90");

  /** A bench that each heavy step asks too much of, in more ways than a brief has room for. */
  static final Bench WEAK =
      new Bench(
          "Weak bench",
          List.of(new Supply(13.8, 20)),
          List.of(
              new Lead("plus", new Lead.Awg(12), 2, 1), new Lead("minus", new Lead.Mm2(2.5), 2, 1)),
          OptionalDouble.of(20),
          List.of(new LoadResistor("4 ohm", 4, 5, 25, 2, OptionalDouble.empty())),
          List.of(
              new Meter(
                  "DMM",
                  ReadingId.OUTPUT_VOLTS,
                  0.8,
                  3,
                  0.01,
                  Optional.of(new Meter.Band(45, 1000)))),
          0.9);

  static final Bench STOUT =
      new Bench(
          "Stout bench",
          List.of(new Supply(13.8, 60), new Supply(13.8, 60)),
          List.of(new Lead("plus", new Lead.Mm2(25), 1.5, 2)),
          OptionalDouble.of(100),
          List.of(
              new LoadResistor("4 ohm", 4, 1, 300, 4, OptionalDouble.of(50)),
              new LoadResistor("2 ohm", 2, 1, 300, 4, OptionalDouble.empty())),
          List.of(meter(ReadingId.SUPPLY_VOLTS), meter(ReadingId.SUPPLY_AMPS)),
          0.9);

  private Shelf() {}

  static Meter meter(ReadingId id) {
    Connection by =
        new Connection(
            new Connection.Tcp("192.0.2.1", 5025), "READ?", id.unit().asciiSymbol(), 1, 1000);
    return new Meter(id.label() + " meter", id, 0.5, 2, 0.01, Optional.empty()).connectedBy(by);
  }

  /** Returns a library of more benches than a screen has rows. */
  static Library crowded() {
    List<Bench> benches = new ArrayList<>();
    for (int i = 1; i <= 30; i++) {
      benches.add(
          new Bench(
              "Bench number " + i,
              WEAK.supplies(),
              List.of(),
              OptionalDouble.empty(),
              List.of(),
              List.of(),
              0.9));
    }
    return new Library(
        List.of(Desk.sequence(SHORT)), List.of(), List.of(STRONG), benches, List.of());
  }

  /** Returns a library with so many kept walks; every third one is done. */
  static Library library(int walks, String... refused) {
    List<KeptWalk> kept = new ArrayList<>();
    for (int i = 1; i <= walks; i++) {
      boolean open = i % 3 != 0;
      String standing = open ? "at step " + i + " of 9" : "done";
      kept.add(new KeptWalk("2026-03-14-09" + (10 + i), "Verrin V" + i, "short", standing, open));
    }
    return new Library(
        List.of(Desk.sequence(SHORT), Desk.sequence(LADDER), Desk.sequence(NOTED)),
        List.of(refused),
        List.of(STRONG, NAMED),
        List.of(WEAK, STOUT),
        kept);
  }
}
