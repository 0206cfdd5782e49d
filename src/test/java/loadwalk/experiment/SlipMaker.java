package loadwalk.experiment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Slip;

/**
 * Makes a slip of an honest step the way an operator would.
 *
 * <p>A slip that changes nothing by more than a fifth is left out, as nobody could tell it from a
 * real amplifier; how many and why is counted.
 *
 * @param entries the bench it happens on
 */
record SlipMaker(Entries entries) {
  private static final double TELLING = 0.2;

  /** What became of a slip. */
  sealed interface Outcome permits Made, LeftOut {}

  /**
   * A step with one slip in it.
   *
   * @param entries what was typed
   * @param how what was done to which reading, a word or two
   */
  record Made(Map<ReadingId, Double> entries, String how) implements Outcome {}

  /**
   * A slip that cannot happen here, or cannot be seen.
   *
   * @param reason why, a few words
   */
  record LeftOut(String reason) implements Outcome {}

  /** Returns the indices of the steps at which a slip can happen at all. */
  static List<Integer> stepsFor(Slip slip, Arrangement arrangement) {
    return IntStream.range(Ladder.FIRST_LOADED, arrangement.steps())
        .filter(step -> canHappen(slip, step))
        .boxed()
        .toList();
  }

  /** Tells whether a slip is made here; the others have no reading or are found by a rule. */
  static boolean makes(Slip slip) {
    return switch (slip) {
      case UNNAMED, TONE_OFF, THD_OFF_LIMIT, RECORDER_CLIPPED, FAHRENHEIT_FOR_CELSIUS, WRONG_ROW ->
          false;
      default -> true;
    };
  }

  private static boolean canHappen(Slip slip, int step) {
    boolean bridged = Ladder.at(step).mode() == Mode.BRIDGED;
    return switch (slip) {
      case BOTH_CHANNELS_FOR_ONE -> !bridged;
      case STEREO_READING_IN_BRIDGED -> bridged;
      case COPIED_FROM_BEFORE -> step > Ladder.FIRST_LOADED;
      case TONE_OFF, THD_OFF_LIMIT, RECORDER_CLIPPED, FAHRENHEIT_FOR_CELSIUS, WRONG_ROW -> false;
      default -> true;
    };
  }

  /**
   * Makes one slip at one loaded step.
   *
   * @param slip the slip
   * @param step the index of the step
   * @param before the honest entries of the step before
   */
  Outcome make(Slip slip, int step, Map<ReadingId, Double> before) {
    Target target = Ladder.at(step);
    RandomGenerator random = entries.specimen().random(slip.code(), step);
    Map<ReadingId, Double> honest = entries.loaded(step, target.ohms(), false);
    return switch (slip) {
      case DECIMAL_POINT -> volts(honest, random.nextBoolean() ? 10 : 0.1, random);
      case PEAK_FOR_RMS -> volts(honest, Math.sqrt(2), random);
      case PEAK_TO_PEAK_FOR_RMS -> volts(honest, 2 * Math.sqrt(2), random);
      case BOTH_CHANNELS_FOR_ONE -> bothForOne(honest, step, random);
      case ONE_CHANNEL_FOR_BOTH -> oneForBoth(honest, step, random);
      case STEREO_READING_IN_BRIDGED ->
          new Made(
              with(honest, ReadingId.OUTPUT_VOLTS, entries.oneChannelVolts(step)), "volts halved");
      case LOAD_DOUBLE -> wrongLoad(honest, step, 2);
      case LOAD_HALF -> wrongLoad(honest, step, 0.5);
      case SUPPLY_AMPS_TEN_TIMES -> amps(honest, random.nextBoolean() ? 10 : 0.1);
      case DIGITS_SWAPPED -> digits(honest, random);
      case COPIED_FROM_BEFORE -> copied(honest, before, random);
      case OUTPUT_ABOVE_INPUT -> aboveInput(honest, step, random);
      case TONE_OFF, THD_OFF_LIMIT, RECORDER_CLIPPED, WRONG_ROW -> new LeftOut("found by a rule");
      case FAHRENHEIT_FOR_CELSIUS -> new LeftOut("a temperature");
      case UNNAMED -> new LeftOut("no slip of its own");
    };
  }

  private static Outcome volts(
      Map<ReadingId, Double> honest, double factor, RandomGenerator random) {
    ReadingId channel = channel(honest, random);
    String how = factor == 0.5 ? "volts halved" : "volts";
    double volts = Entries.rounded(honest.get(channel) * factor, 0.01);
    return new Made(with(honest, channel, volts), of(channel, how));
  }

  /** Half of the slips in volts are made at the other channel where it is read. */
  private static ReadingId channel(Map<ReadingId, Double> honest, RandomGenerator random) {
    boolean other = honest.containsKey(ReadingId.OTHER_OUTPUT_VOLTS) && random.nextBoolean();
    return other ? ReadingId.OTHER_OUTPUT_VOLTS : ReadingId.OUTPUT_VOLTS;
  }

  private static String of(ReadingId channel, String how) {
    return channel == ReadingId.OTHER_OUTPUT_VOLTS ? "other channel's " + how : how;
  }

  private Outcome amps(Map<ReadingId, Double> honest, double factor) {
    if (!entries.arrangement().withAmps) {
      return new LeftOut("no supply amps");
    }
    double amps = honest.get(ReadingId.SUPPLY_AMPS) * factor;
    return new Made(with(honest, ReadingId.SUPPLY_AMPS, Entries.rounded(amps, 0.01)), "amps");
  }

  /** Half of the operators add the volts of both channels, half type the watts of both. */
  private Outcome bothForOne(Map<ReadingId, Double> honest, int step, RandomGenerator random) {
    if (random.nextBoolean()) {
      return watts(honest, step, 2);
    }
    return new Made(
        with(honest, ReadingId.OUTPUT_VOLTS, entries.bothChannelsVolts(step)), "volts doubled");
  }

  /** Half of the operators halve the volts of a stereo step, the others type half the watts. */
  private static Outcome oneForBoth(
      Map<ReadingId, Double> honest, int step, RandomGenerator random) {
    boolean stereo = Ladder.at(step).mode() == Mode.STEREO;
    return random.nextBoolean() && stereo ? volts(honest, 0.5, random) : watts(honest, step, 0.5);
  }

  /** Types watts of the honest volts times a factor in place of the volts. */
  private static Outcome watts(Map<ReadingId, Double> honest, int step, double factor) {
    double volts = honest.get(ReadingId.OUTPUT_VOLTS);
    double watts = factor * volts * volts / Ladder.at(step).ohms();
    Map<ReadingId, Double> typed = new LinkedHashMap<>();
    typed.put(ReadingId.OUTPUT_WATTS, Entries.rounded(watts, 0.1));
    typed.putAll(honest);
    typed.remove(ReadingId.OUTPUT_VOLTS);
    return new Made(typed, factor > 1 ? "watts doubled" : "watts halved");
  }

  /** Solves the circuit again with the wrong load, so volts and amps change together. */
  private Outcome wrongLoad(Map<ReadingId, Double> honest, int step, double factor) {
    double ohms = Ladder.at(step).ohms() * factor;
    Map<ReadingId, Double> typed = entries.loaded(step, ohms, false);
    boolean seen = typed.keySet().stream().anyMatch(id -> tells(typed, honest, id));
    return seen ? new Made(typed, "load") : new LeftOut("no reading changes by a fifth");
  }

  private Outcome digits(Map<ReadingId, Double> honest, RandomGenerator random) {
    boolean amps = entries.arrangement().withAmps && random.nextInt(3) == 0;
    ReadingId id = amps ? ReadingId.SUPPLY_AMPS : channel(honest, random);
    double value = honest.get(id);
    List<Double> candidates = new ArrayList<>();
    String shown = BigDecimal.valueOf(value).toPlainString();
    for (int i = 0; i + 1 < shown.length(); i++) {
      double swapped = swapped(shown, i, shown.charAt(i + 1) == '.' ? i + 2 : i + 1);
      if (Math.abs(swapped / value - 1) > TELLING && swapped > 0) {
        candidates.add(swapped);
      }
    }
    return candidates.isEmpty()
        ? new LeftOut("no swap changes it by a fifth")
        : new Made(
            with(honest, id, candidates.get(random.nextInt(candidates.size()))),
            amps ? "amps" : of(id, "volts"));
  }

  static double swapped(String shown, int first, int second) {
    if (second >= shown.length() || shown.charAt(first) == '.') {
      return 0;
    }
    char[] letters = shown.toCharArray();
    char kept = letters[first];
    letters[first] = letters[second];
    letters[second] = kept;
    return Double.parseDouble(new String(letters));
  }

  /** Half of the operators copy the volts, half the whole line. */
  private static Outcome copied(
      Map<ReadingId, Double> honest, Map<ReadingId, Double> before, RandomGenerator random) {
    if (!before.containsKey(ReadingId.OUTPUT_VOLTS)) {
      return new LeftOut("watts in the step before");
    }
    boolean line = random.nextBoolean();
    Map<ReadingId, Double> typed =
        line
            ? alike(before, honest)
            : with(honest, ReadingId.OUTPUT_VOLTS, before.get(ReadingId.OUTPUT_VOLTS));
    boolean seen = typed.keySet().stream().anyMatch(id -> tells(typed, honest, id));
    return seen
        ? new Made(typed, line ? "all" : "volts")
        : new LeftOut("no reading changes by a fifth");
  }

  /** Types volts whose watts exceed the input by 10 to 100 %, away from the factors of others. */
  private Outcome aboveInput(Map<ReadingId, Double> honest, int step, RandomGenerator random) {
    if (!entries.arrangement().withAmps) {
      return new LeftOut("no supply amps");
    }
    Target target = Ladder.at(step);
    double input = honest.get(ReadingId.SUPPLY_VOLTS) * honest.get(ReadingId.SUPPLY_AMPS);
    double wanted = input * (1.1 + 0.9 * random.nextDouble()) / target.mode().loads();
    double volts = Math.sqrt(wanted * target.ohms());
    double factor = volts / honest.get(ReadingId.OUTPUT_VOLTS);
    for (double taken : new double[] {Math.sqrt(2), 2, 2 * Math.sqrt(2), 10}) {
      if (Math.abs(factor / taken - 1) < 0.08) {
        return new LeftOut("looks like another slip");
      }
    }
    return new Made(with(honest, ReadingId.OUTPUT_VOLTS, Entries.rounded(volts, 0.01)), "volts");
  }

  /** Returns the readings of a step that another step has too. */
  private static Map<ReadingId, Double> alike(
      Map<ReadingId, Double> readings, Map<ReadingId, Double> others) {
    Map<ReadingId, Double> kept = new LinkedHashMap<>(readings);
    kept.keySet().retainAll(others.keySet());
    return kept;
  }

  private static boolean tells(
      Map<ReadingId, Double> typed, Map<ReadingId, Double> honest, ReadingId id) {
    return Math.abs(typed.get(id) / honest.get(id) - 1) > TELLING;
  }

  private static Map<ReadingId, Double> with(
      Map<ReadingId, Double> honest, ReadingId id, double value) {
    Map<ReadingId, Double> typed = new LinkedHashMap<>(honest);
    typed.put(id, value);
    return typed;
  }
}
