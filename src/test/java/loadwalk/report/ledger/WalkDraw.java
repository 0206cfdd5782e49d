package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import loadwalk.report.ledger.DrawnWalk.Rated;
import loadwalk.report.ledger.DrawnWalk.Run;
import loadwalk.report.ledger.DrawnWalk.WarmUp;

/**
 * Draws walks of which every condition varies, often to a border and a step beyond it. What is
 * judged by an uncertainty is drawn far from its border or well within it, so that no uncertainty
 * has to be computed to know the verdict.
 */
final class WalkDraw {
  private static final int[] LIMITS = {1000, 1000, 1000, 100};
  private static final int[] TONES = {400, 400, 10_000};
  private static final int[] SUPPLIES = {13_800, 13_800, 14_400};

  private final Random random;

  /** Whether most is read as asked in this walk, so that many are alike. */
  private boolean plain;

  WalkDraw(Random random) {
    this.random = random;
  }

  DrawnWalk walk(int number) {
    plain = random.nextBoolean();
    int limit = one(LIMITS);
    int supply = one(SUPPLIES);
    int tone = one(TONES);
    boolean described = random.nextBoolean();
    Optional<Boolean> regulated =
        random.nextInt(3) == 0 ? Optional.empty() : Optional.of(random.nextInt(3) == 0);
    List<Run> runs = runs(limit, tone, supply);
    return new DrawnWalk(
        "walk-" + number,
        random.nextInt(6) == 0,
        regulated,
        ratings(runs, limit, supply),
        random.nextInt(4) == 0 ? OptionalInt.empty() : OptionalInt.of(10 * (1 + random.nextInt(9))),
        described,
        described && random.nextInt(3) == 0 ? List.of(3620) : List.of(),
        limit,
        tone,
        supply,
        one(
            new WarmUp[] {
              WarmUp.NONE, WarmUp.DONE, WarmUp.DONE, WarmUp.CUT_SHORT, WarmUp.WITHOUT_A_CLOCK
            }),
        runs);
  }

  private List<Run> runs(int limit, int tone, int supply) {
    List<Run> runs = new ArrayList<>();
    double source = random.nextInt(3) == 0 ? 14 : 10 + 8 * random.nextDouble();
    addRuns(runs, "stereo-4", false, 4000, source, limit, tone, supply);
    if (random.nextInt(3) > 0) {
      addRuns(runs, "stereo-2", false, 2000, 0.9 * source, limit, tone, supply);
    }
    if (random.nextInt(3) > 0) {
      addRuns(runs, "bridged-4", true, 4000, 1.8 * source, limit, tone, supply);
    }
    return runs;
  }

  /** Once, or twice: then the same, or a fifth less. */
  private void addRuns(
      List<Run> runs,
      String id,
      boolean bridged,
      int milliohms,
      double volts,
      int limit,
      int tone,
      int supply) {
    OptionalInt other =
        bridged || random.nextInt(3) > 0
            ? OptionalInt.empty()
            : OptionalInt.of((int) (1000 * volts * one(new double[] {0.95, 1, 1.04})));
    OptionalInt load =
        random.nextInt(3) > 0
            ? OptionalInt.empty()
            : OptionalInt.of(milliohms * one(new int[] {1000, 990, 1050, 1051, 950, 949}) / 1000);
    int first = (int) (1000 * volts);
    runs.add(run(id, bridged, milliohms, first, other, load, limit, tone, supply));
    if (random.nextInt(4) == 0) {
      boolean same = random.nextBoolean();
      int again = same ? first : 4 * first / 5;
      OptionalInt otherAgain =
          same || other.isEmpty() ? other : OptionalInt.of(4 * other.getAsInt() / 5);
      Run second = run(id + "#2", bridged, milliohms, again, otherAgain, load, limit, tone, supply);
      runs.add(withWholeMeans(runs.get(runs.size() - 1), second));
    }
  }

  /** A step more here and there, so that means of the two runs are whole numbers. */
  private static Run withWholeMeans(Run first, Run second) {
    return new Run(
        second.id(),
        second.bridged(),
        second.milliohms(),
        second.volts(),
        second.otherVolts(),
        second.loadRead(),
        even(first.thd(), second.thd()),
        even(first.tone(), second.tone()),
        even(first.supply(), second.supply()),
        second.milliamps(),
        second.said(),
        second.stoodBy(),
        second.inDoubt(),
        second.cooledBefore());
  }

  private static OptionalInt even(OptionalInt first, OptionalInt second) {
    boolean odd =
        first.isPresent() && second.isPresent() && (first.getAsInt() + second.getAsInt()) % 2 != 0;
    return odd ? OptionalInt.of(second.getAsInt() + 1) : second;
  }

  private Run run(
      String id,
      boolean bridged,
      int milliohms,
      int volts,
      OptionalInt other,
      OptionalInt load,
      int limit,
      int tone,
      int supply) {
    OptionalInt supplyRead = supply(supply);
    int doubt = random.nextInt(12);
    return new Run(
        id,
        bridged,
        milliohms,
        volts,
        other,
        load,
        thd(limit),
        tone(tone),
        supplyRead,
        amps(bridged, milliohms, volts, other, load, supplyRead),
        said(),
        doubt == 0,
        doubt == 1,
        random.nextInt(15) == 0);
  }

  /** None, at the limit, at and just beyond a third to either side, far beyond. */
  private OptionalInt thd(int limit) {
    int third = limit / 3;
    return switch (plain ? 9 : random.nextInt(10)) {
      case 0, 1 -> OptionalInt.empty();
      case 2 -> OptionalInt.of(limit + third);
      case 3 -> OptionalInt.of(limit + third + 1);
      case 4 -> OptionalInt.of(limit - third);
      case 5 -> OptionalInt.of(limit - third - 1);
      case 6 -> OptionalInt.of(one(new int[] {1, limit / 10, limit * 5, limit * 9}));
      default -> OptionalInt.of(limit + random.nextInt(2 * third) - third);
    };
  }

  private OptionalInt tone(int tone) {
    return switch (plain ? 7 : random.nextInt(8)) {
      case 0, 1 -> OptionalInt.empty();
      case 2 -> OptionalInt.of(tone + tone / 50);
      case 3 -> OptionalInt.of(tone + tone / 50 + tone / 1000 + 1);
      case 4 -> OptionalInt.of(tone == 400 ? 10_000 : 400);
      default -> OptionalInt.of(tone);
    };
  }

  /** From 5 % below to 5 % above, and at the borders of 1.5 % and of 2 %. */
  private OptionalInt supply(int asked) {
    return switch (plain ? 6 + random.nextInt(2) : random.nextInt(8)) {
      case 0 -> OptionalInt.empty();
      case 1 -> OptionalInt.of(asked + 15 * asked / 1000);
      case 2 -> OptionalInt.of(asked - 15 * asked / 1000);
      case 3 -> OptionalInt.of(asked + 15 * asked / 1000 + 1);
      case 4 -> OptionalInt.of(asked - 15 * asked / 1000 - 1);
      case 5 -> OptionalInt.of(asked - 20 * asked / 1000 - random.nextInt(2));
      case 6 -> OptionalInt.of(asked + asked * (random.nextInt(101) - 50) / 1000);
      default -> OptionalInt.of(asked);
    };
  }

  /** None, or so many that efficiency is about a half, or about 140 %. */
  private OptionalInt amps(
      boolean bridged,
      int milliohms,
      int volts,
      OptionalInt other,
      OptionalInt load,
      OptionalInt supply) {
    if (supply.isEmpty() || random.nextInt(4) == 0) {
      return OptionalInt.empty();
    }
    double ohms = load.orElse(milliohms) / 1000.0;
    double out = Math.pow(volts / 1000.0, 2) / ohms;
    double total = bridged ? out : out + Math.pow(other.orElse(volts) / 1000.0, 2) / ohms;
    double efficiency = random.nextInt(10) == 0 ? 1.4 : 0.4 + 0.2 * random.nextDouble();
    return OptionalInt.of((int) (1e6 * total / efficiency / supply.getAsInt()));
  }

  private Optional<String> said() {
    return switch (random.nextInt(6)) {
      case 0 -> Optional.of("thd-limit");
      case 1 -> Optional.of("clipping-onset");
      case 2 -> Optional.of("below-limit");
      default -> Optional.empty();
    };
  }

  /** Rated far above or far below what was read, or at it; with and without volts and THD. */
  private List<Rated> ratings(List<Run> runs, int limit, int supply) {
    List<Rated> ratings = new ArrayList<>();
    for (Run run : runs) {
      boolean rated =
          ratings.stream()
              .anyMatch(r -> r.bridged() == run.bridged() && r.milliohms() == run.milliohms());
      if (!rated && random.nextInt(4) > 0) {
        double least = Math.min(run.volts(), run.otherVolts().orElse(run.volts())) / 1000.0;
        double ohms = run.loadRead().orElse(run.milliohms()) / 1000.0;
        double watts = least * least / ohms * one(new double[] {0.4, 1.0005, 2});
        OptionalInt thd =
            random.nextInt(3) == 0
                ? OptionalInt.empty()
                : OptionalInt.of(one(new int[] {limit, limit, 1000, 100, 10}));
        ratings.add(new Rated(run.bridged(), run.milliohms(), watts, supply(supply), thd));
      }
    }
    return ratings;
  }

  private int one(int[] from) {
    return from[random.nextInt(from.length)];
  }

  private double one(double[] from) {
    return from[random.nextInt(from.length)];
  }

  private WarmUp one(WarmUp[] from) {
    return from[random.nextInt(from.length)];
  }
}
