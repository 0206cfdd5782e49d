package loadwalk.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;

/**
 * Many amplifiers of one population with what their meters show at every step: what somebody who
 * knows the population could have seen.
 */
final class Crowd {
  /** The factors of the load of which readings are kept: as asked, wired double, wired half. */
  static final double[] WIRED = {1, 2, 0.5};

  final List<Member> members = new ArrayList<>();

  /** Draws members that no other experiment meets. */
  Crowd(Population population, long seed, int count) {
    for (int number = 0; number < count; number++) {
      members.add(Member.of(new Entries(population.specimen(~seed, number), Arrangement.AMPS)));
    }
  }

  /**
   * One reading of a step.
   *
   * @param logVolts ln of one channel's volts
   * @param logEase ln of the supply amps over the square of the volts, which turns over where the
   *     efficiency does
   */
  record Look(double logVolts, double logEase) {
    static Look of(Map<ReadingId, Double> entries, int step) {
      boolean bridged = Ladder.STEPS.get(step).mode() == Mode.BRIDGED;
      double volts = Math.max(0.005, entries.get(ReadingId.OUTPUT_VOLTS));
      double log = Math.log(bridged ? volts / 2 : volts);
      Double amps = entries.get(ReadingId.SUPPLY_AMPS);
      return new Look(log, amps == null ? Double.NaN : Math.log(Math.max(0.05, amps)) - 2 * log);
    }

    Look minus(Look other) {
      return new Look(logVolts - other.logVolts, logEase - other.logEase);
    }
  }

  /**
   * One amplifier.
   *
   * @param looks by way of wiring and step; null where a step could not be run
   * @param ratedLogVolts ln of one channel's volts by its first rating
   * @param kind what is printed that bears on the rating and the efficiency
   */
  record Member(Look[][] looks, double ratedLogVolts, String kind) {
    static Member of(Entries entries) {
      Look[][] looks = new Look[WIRED.length][Ladder.STEPS.size()];
      for (int step = Ladder.FIRST_LOADED; step < Ladder.STEPS.size(); step++) {
        double ohms = Ladder.STEPS.get(step).ohms();
        for (int way = 0; way < WIRED.length && entries.canRun(step); way++) {
          looks[way][step] = Look.of(entries.loaded(step, WIRED[way] * ohms, false), step);
        }
      }
      Amplifier amplifier = entries.specimen().amplifier();
      return new Member(looks, rated(amplifier), kind(amplifier));
    }

    Look look(int step) {
      return looks[0][step];
    }

    private static double rated(Amplifier amplifier) {
      Rating rating = amplifier.ratings().get(0);
      return 0.5 * Math.log(rating.watts() * rating.ohms());
    }

    private static String kind(Amplifier amplifier) {
      OptionalDouble stated = amplifier.ratings().get(0).supplyVolts();
      boolean same = stated.isEmpty() || Math.abs(stated.getAsDouble() - 13.8) < 0.01;
      String rails = same ? "" : amplifier.regulated().map(r -> r ? "R" : "U").orElse("?");
      return (same ? "" : stated.getAsDouble()) + rails + amplifier.amplifierClass().orElse("");
    }
  }
}
