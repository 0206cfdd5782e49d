package loadwalk.experiment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import loadwalk.sequence.WarmUp;
import loadwalk.walk.Steadiness;
import loadwalk.walk.WarmRun;
import loadwalk.walk.WarmRun.Temperature;

/**
 * Lets people read heatsinks and go on as soon as a warm-up is called steady: how often was it not,
 * and how long did they wait that read it every few minutes?
 */
final class WarmUpExperiment {
  private static final double[] STEPS = {1, 1, 1, 0.5, 0.1, 0.1};
  private static final double[] LIMITS = {0.5, 0.5, 0.5, 0.3, 1};
  private static final double[] EVERY = {0.5, 1, 2, 2.5, 3, 5};

  int curves;
  int called;
  int movingWhenCalled;
  int waitedFor;
  int calledInFiveMinutes;
  int calledInTenMinutes;
  final Map<HeatCurve.Fan, int[]> byFan = new EnumMap<>(HeatCurve.Fan.class);

  /**
   * How somebody reads.
   *
   * @param everyMinutes how long from one reading to the next
   * @param gaps whether some are left out
   * @param step the last digit
   * @param scatter how far the thermometer strays, K
   */
  private record Person(double everyMinutes, boolean gaps, double step, double scatter) {
    static Person draw(Random random) {
      return new Person(
          EVERY[random.nextInt(EVERY.length)],
          random.nextDouble() < 0.3,
          STEPS[random.nextInt(STEPS.length)],
          0.03 + 0.3 * random.nextDouble());
    }

    double next(Random random) {
      boolean away = gaps && random.nextDouble() < 0.15;
      return 60
          * (away ? 5 + 7 * random.nextDouble() : everyMinutes * (0.7 + 0.6 * random.nextDouble()));
    }

    Temperature reads(HeatCurve curve, int second, Random random) {
      double shown = curve.moments[second].shownCelsius() + scatter * random.nextGaussian();
      double late = 6 * random.nextDouble();
      return Temperature.read((second + late) / 60, Math.rint(shown / step) * step, step);
    }
  }

  static WarmUpExperiment run(long seed, int count) {
    WarmUpExperiment experiment = new WarmUpExperiment();
    Random random = new Random(seed);
    for (int i = 0; i < count; i++) {
      experiment.one(new Random(random.nextLong()));
    }
    return experiment;
  }

  private void one(Random random) {
    HeatCurve curve = new HeatCurve(random);
    Person person = Person.draw(random);
    double limit = LIMITS[random.nextInt(LIMITS.length)];
    WarmUp warmUp = new WarmUp(5 + random.nextInt(16), 0.5, limit);
    int end = calledAt(curve, person, warmUp, random);
    curves++;
    if (end < HeatCurve.SECONDS) {
      boolean moving = Math.abs(curve.moments[end].kelvinPerMinute()) > limit;
      called++;
      movingWhenCalled += moving ? 1 : 0;
      int[] of = byFan.computeIfAbsent(curve.fan, fan -> new int[2]);
      of[0]++;
      of[1] += moving ? 1 : 0;
    }
    if (person.everyMinutes() <= 3 && !person.gaps()) {
      waited(curve, limit, (int) (60 * warmUp.minutes()), end);
    }
  }

  /** Counts how long somebody waited whose heatsink stays steady from some second on. */
  private void waited(HeatCurve curve, double limit, int clock, int end) {
    int since = clock;
    for (int second = clock; second < Math.min(end, HeatCurve.SECONDS - 1); second++) {
      if (Math.abs(curve.moments[second].kelvinPerMinute()) > limit) {
        since = second + 1;
      }
    }
    if (since < HeatCurve.SECONDS - 1800) {
      waitedFor++;
      calledInFiveMinutes += end - since <= 300 ? 1 : 0;
      calledInTenMinutes += end - since <= 600 ? 1 : 0;
    }
  }

  private static int calledAt(HeatCurve curve, Person person, WarmUp warmUp, Random random) {
    List<Temperature> read = new ArrayList<>();
    double next = person.next(random);
    for (int second = 0; second < HeatCurve.SECONDS; second++) {
      boolean reads = second >= next;
      if (curve.rested && second == curve.restedAt) {
        read.clear();
      }
      if (reads) {
        read.add(person.reads(curve, second, random));
        next = second + person.next(random);
      }
      int clock = (int) (60 * warmUp.minutes());
      boolean asks = !read.isEmpty() && second >= clock && (reads || second == clock);
      if (asks && Steadiness.of(warmUp, new WarmRun(read), second).isSteady()) {
        return second;
      }
    }
    return HeatCurve.SECONDS;
  }

  double movingPercent() {
    return 100.0 * movingWhenCalled / curves;
  }

  @Override
  public String toString() {
    StringBuilder table = new StringBuilder();
    line(table, "called steady", called, curves);
    line(table, "called steady while over the limit", movingWhenCalled, curves);
    byFan.forEach((fan, of) -> line(table, "  fan " + fan, of[1], of[0]));
    line(table, "truly steady, called within 5 minutes", calledInFiveMinutes, waitedFor);
    line(table, "truly steady, called within 10 minutes", calledInTenMinutes, waitedFor);
    return table.toString();
  }

  private static void line(StringBuilder table, String what, int hits, int of) {
    table.append(
        String.format(
            Locale.ROOT, "%-42s %5d of %5d  %5.2f %%%n", what, hits, of, 100.0 * hits / of));
  }
}
