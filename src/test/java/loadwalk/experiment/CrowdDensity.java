package loadwalk.experiment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The density of a step's reading given those before it, from the members of a crowd whose readings
 * before it were most alike.
 *
 * <p>A reading is taken against that of the nearest load measured before, or against the rating
 * where there is none. Alike is who fell as much between the two loads before, at an efficiency as
 * high. Each neighbour spreads a normal kernel as wide as the eighth nearest of the others is far;
 * a small part of the weight is spread wide for what no neighbour showed.
 */
final class CrowdDensity {
  private static final int NEIGHBOURS = 300;
  private static final int WIDTH_RANK = 8;
  private static final double LEAST_WIDTH = 0.006;
  private static final double FALL_SCALE = 0.02;
  private static final double EASE_SCALE = 0.05;
  private static final double OTHER_KIND = 1;
  private static final double STRAY = 0.003;
  private static final double STRAY_WIDTH = 0.7;

  private final boolean withAmps;
  private final Crowd.Look base;
  private final double[][][] points = new double[Crowd.WIRED.length][][];
  private final double[][] widths = new double[Crowd.WIRED.length][];

  /**
   * Looks up the neighbours.
   *
   * @param walk the amplifier on the bench; its honest readings before the step are used
   * @param step the index of the step
   */
  CrowdDensity(Crowd crowd, Crowd.Member walk, int step, boolean withAmps) {
    this.withAmps = withAmps;
    int near = nearer(walk, step, 0);
    int far = near == 0 || ohms(near) == ohms(step) ? 0 : nearer(walk, near, ohms(near));
    base = base(walk, near);
    List<Crowd.Member> alike =
        crowd.members.stream()
            .filter(m -> has(m, step) && (near == 0 || has(m, near)) && (far == 0 || has(m, far)))
            .sorted(Comparator.comparingDouble(m -> distance(walk, m, near, far)))
            .limit(NEIGHBOURS)
            .toList();
    for (int way = 0; way < Crowd.WIRED.length; way++) {
      points[way] = new double[alike.size()][];
      for (int i = 0; i < alike.size(); i++) {
        Crowd.Member member = alike.get(i);
        points[way][i] = point(member.looks()[way][step].minus(base(member, near)));
      }
      widths[way] = widths(points[way]);
    }
  }

  /** Returns the density of a reading if the load is wired in one of the ways of a crowd. */
  double of(Crowd.Look look, int way) {
    return density(look, way, true, withAmps);
  }

  /** Returns the density of the amps alone, 1 without them. */
  double ofAmps(Crowd.Look look) {
    return withAmps ? density(look, 0, false, true) : 1;
  }

  /** Returns the density of the volts alone. */
  double ofVolts(Crowd.Look look) {
    return density(look, 0, true, false);
  }

  private double density(Crowd.Look look, int way, boolean volts, boolean amps) {
    double[] at = point(look.minus(base));
    double sum = 0;
    for (int i = 0; i < points[way].length; i++) {
      double[] point = points[way][i];
      double value = 1;
      if (volts) {
        value *= normal(at[0] - point[0], widths[way][i]);
      }
      if (amps) {
        // Alone the amps are told by ln A = ease + 2 ln V, else by the ease beside the volts.
        double off = at[1] - point[1] + (volts ? 0 : 2 * (at[0] - point[0]));
        value *= normal(off, volts ? widths[way][i] : Math.max(0.02, widths[way][i]));
      }
      sum += value;
    }
    double stray = volts ? normal(at[0], STRAY_WIDTH) : 1;
    stray *= amps ? normal(at[1] + (volts ? 0 : 2 * at[0]), STRAY_WIDTH) : 1;
    return (1 - STRAY) * sum / points[way].length + STRAY * stray + 1e-12;
  }

  private static double normal(double off, double width) {
    double z = off / width;
    return Math.exp(-0.5 * z * z) / width / Math.sqrt(2 * Math.PI);
  }

  private double[] point(Crowd.Look difference) {
    return withAmps
        ? new double[] {difference.logVolts(), difference.logEase()}
        : new double[] {difference.logVolts()};
  }

  private static double[] widths(double[][] points) {
    double[] widths = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      double[] far = new double[points.length];
      for (int j = 0; j < points.length; j++) {
        double sum = 0;
        for (int d = 0; d < points[i].length; d++) {
          sum += Math.pow(points[i][d] - points[j][d], 2);
        }
        far[j] = Math.sqrt(sum);
      }
      Arrays.sort(far);
      widths[i] = Math.max(LEAST_WIDTH, far[Math.min(WIDTH_RANK, far.length - 1)]);
    }
    return widths;
  }

  /** Returns the step before one with the same load or else the nearest above, 0 where none is. */
  private static int nearer(Crowd.Member walk, int step, double above) {
    List<Integer> before = new ArrayList<>();
    for (int s = Ladder.FIRST_LOADED; s < step; s++) {
      if (has(walk, s) && ohms(s) > above && ohms(s) >= ohms(step)) {
        before.add(s);
      }
    }
    return before.stream().min(Comparator.comparingDouble(CrowdDensity::ohms)).orElse(0);
  }

  private static boolean has(Crowd.Member member, int step) {
    return Objects.nonNull(member.look(step));
  }

  private static double ohms(int step) {
    return Ladder.STEPS.get(step).mode().channelOhms(Ladder.STEPS.get(step).ohms());
  }

  private static Crowd.Look base(Crowd.Member member, int near) {
    return near == 0 ? new Crowd.Look(member.ratedLogVolts(), 0) : member.look(near);
  }

  private double distance(Crowd.Member walk, Crowd.Member member, int near, int far) {
    double sum = walk.kind().equals(member.kind()) ? 0 : near == 0 ? 100 : OTHER_KIND;
    if (far > 0) {
      Crowd.Look fall = walk.look(near).minus(walk.look(far));
      Crowd.Look other = member.look(near).minus(member.look(far));
      sum += square((fall.logVolts() - other.logVolts()) / FALL_SCALE);
      sum += withAmps ? square((fall.logEase() - other.logEase()) / EASE_SCALE) : 0;
    }
    if (near > 0 && withAmps) {
      double ease = walk.look(near).logEase() - member.look(near).logEase();
      sum += square(ease / EASE_SCALE);
    }
    return sum;
  }

  private static double square(double value) {
    return value * value;
  }
}
