package loadwalk.plan;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Wire;
import loadwalk.text.Sentence;

/** Says once what amplifier and bench leave unsaid, and what is presumed instead. */
public final class NotSaid {
  private static final List<ReadingId> METERED =
      List.of(ReadingId.OUTPUT_VOLTS, ReadingId.SUPPLY_VOLTS, ReadingId.SUPPLY_AMPS);

  private NotSaid() {}

  /** Returns one sentence for each thing that is not said; none where all is. */
  public static List<String> sentences(Amplifier amplifier, Bench bench, Wire wire) {
    List<String> told = new ArrayList<>();
    if (bench.supplies().isEmpty()) {
      told.add("Supplies: not entered, so not checked. Check their rating yourself.");
    }
    if (amplifier.fuseAmps().isEmpty()) {
      told.add("The amplifier's own fuses: not entered, taken as none.");
    }
    if (bench.fuseAmps().isEmpty()) {
      told.add("Fuse at the source: not entered, taken as none.");
    }
    if (bench.leads().isEmpty()) {
      told.add("Supply leads: not entered, taken to lose nothing. They are not checked.");
    }
    told.addAll(wire.taken(bench));
    loads(bench, told);
    meters(bench, told);
    return told;
  }

  private static void loads(Bench bench, List<String> told) {
    if (bench.loads().isEmpty()) {
      told.add("Load resistors: not entered. What you connect is not checked.");
    }
    List<String> unmounted =
        bench.loads().stream()
            .filter(kind -> kind.mount().isEmpty())
            .map(LoadResistor::label)
            .distinct()
            .toList();
    if (!unmounted.isEmpty()) {
      told.add(
          Sentence.of(
              "Mount of load resistors {}: not said, taken as {}.",
              String.join(", ", unmounted),
              Mount.PRESUMED.words()));
    }
  }

  private static void meters(Bench bench, List<String> told) {
    List<String> missing =
        METERED.stream().filter(id -> bench.meterFor(id).isEmpty()).map(ReadingId::label).toList();
    if (!missing.isEmpty()) {
      told.add(
          Sentence.of(
              "Meters for {}: not entered. No step counts on them to show when to stop.",
              String.join(", ", missing)));
    }
  }
}
