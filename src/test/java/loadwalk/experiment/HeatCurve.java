package loadwalk.experiment;

import java.util.Random;

/**
 * A heatsink that warms up, computed step by step and not from any formula for its end: the heat of
 * the transistors reaches the sink late, the sink gives it to the air, faster while a fan runs, and
 * a thermometer follows the sink. Everything is drawn from one seed.
 */
final class HeatCurve {
  /** How the air is moved. */
  enum Fan {
    NONE,
    /** On above one temperature, off below a lower one. */
    THERMOSTAT,
    /** Switched by hand, once. */
    SWITCHED,
    /** The warmer, the faster. */
    REGULATED
  }

  /** What has happened up to one second of the warm-up clock. */
  record Moment(double celsius, double kelvinPerMinute, double shownCelsius) {}

  static final int SECONDS = 5400;

  final Fan fan;
  final boolean rested;
  final boolean turned;
  final Moment[] moments = new Moment[SECONDS];

  final int restedAt;
  private final double room;
  private final double tauSeconds;
  private final double lagSeconds;
  private final double sensorSeconds;
  private final double rise;
  private final double fanFactor;
  private final double onCelsius;
  private final double offCelsius;
  private final double switchedAt;
  private final boolean startsOn;

  HeatCurve(Random random) {
    room = 12 + 20 * random.nextDouble();
    tauSeconds = 60 * Math.exp(Math.log(4) + Math.log(6) * random.nextDouble());
    lagSeconds = 5 + 55 * random.nextDouble();
    sensorSeconds = 1 + 19 * random.nextDouble();
    rise = 8 + 52 * random.nextDouble();
    double kind = random.nextDouble();
    fan =
        kind < 0.7
            ? Fan.NONE
            : kind < 0.8 ? Fan.THERMOSTAT : kind < 0.9 ? Fan.SWITCHED : Fan.REGULATED;
    fanFactor = 1.3 + 1.7 * random.nextDouble();
    onCelsius = room + rise * (0.4 + 0.6 * random.nextDouble());
    offCelsius = onCelsius - 4 - 8 * random.nextDouble();
    switchedAt = 60 * (1 + 39 * random.nextDouble());
    startsOn = random.nextBoolean();
    rested = random.nextDouble() < 0.15;
    double restAt = 60 * (1 + 24 * random.nextDouble());
    double restSeconds = 60 * (1 + 8.9 * random.nextDouble());
    restedAt = rested ? (int) restAt : 0;
    turned = random.nextDouble() < 0.1;
    double turnedAt = 60 * (1 + 24 * random.nextDouble());
    double turnedTo = 0.7 + 0.6 * random.nextDouble();
    run(restAt, restSeconds, turnedAt, turnedTo);
  }

  private void run(double restAt, double restSeconds, double turnedAt, double turnedTo) {
    double[] state = {room, 0, room};
    boolean on = fan == Fan.SWITCHED && startsOn;
    for (int second = 0; second < SECONDS; second++) {
      double power = turned && second >= turnedAt ? turnedTo : 1;
      if (rested && second == (int) restAt) {
        for (int i = 0; i < restSeconds; i++) {
          step(state, 0, factor(on, state[0]));
        }
      }
      if (fan == Fan.SWITCHED && second == (int) switchedAt) {
        on = !on;
      } else if (fan == Fan.THERMOSTAT) {
        on = on ? state[0] > offCelsius : state[0] > onCelsius;
      }
      double slope = 60 * slopes(state, power, factor(on, state[0]))[0];
      moments[second] = new Moment(state[0], slope, state[2]);
      step(state, power, factor(on, state[0]));
    }
  }

  private double factor(boolean on, double celsius) {
    return switch (fan) {
      case NONE -> 1;
      case THERMOSTAT, SWITCHED -> on ? fanFactor : 1;
      case REGULATED ->
          1 + (fanFactor - 1) * Math.min(1, Math.max(0, (celsius - offCelsius) / (0.3 * rise)));
    };
  }

  /** Kelvin a second of sink, of the part of the heat that has reached it, and of thermometer. */
  private double[] slopes(double[] s, double power, double factor) {
    return new double[] {
      (s[1] * rise - factor * (s[0] - room)) / tauSeconds,
      (power - s[1]) / lagSeconds,
      (s[0] - s[2]) / sensorSeconds
    };
  }

  /** One second by the rule of Runge and Kutta, order four. */
  private void step(double[] s, double power, double factor) {
    double[] k1 = slopes(s, power, factor);
    double[] k2 = slopes(moved(s, k1, 0.5), power, factor);
    double[] k3 = slopes(moved(s, k2, 0.5), power, factor);
    double[] k4 = slopes(moved(s, k3, 1), power, factor);
    for (int i = 0; i < s.length; i++) {
      s[i] += (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]) / 6;
    }
  }

  private static double[] moved(double[] s, double[] k, double by) {
    double[] to = s.clone();
    for (int i = 0; i < s.length; i++) {
      to[i] += by * k[i];
    }
    return to;
  }
}
