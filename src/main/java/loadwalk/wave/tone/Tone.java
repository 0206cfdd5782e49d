package loadwalk.wave.tone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loadwalk.text.Sentence;
import loadwalk.wave.file.Cue;

/** A test tone as a formula of the frame number; levels are peaks relative to full scale. */
public sealed interface Tone {
  /** Returns the frames per second. */
  int samplesPerSecond();

  /** Returns the length in frames. */
  long frames();

  /** Returns the frequency that results from the whole periods. */
  double hertz();

  /** Returns the value at a frame, from -1 to 1. */
  double at(long frame);

  /** Returns the named places of the recording; none for a steady tone. */
  List<Cue> cues();

  /**
   * A sine of one level.
   *
   * @param periods the whole periods
   * @param dbfs the level, 0 or below
   * @param fadeSeconds the time of the rise at the start and of the fall at the end
   */
  record Steady(Periods periods, double dbfs, double fadeSeconds) implements Tone {
    /** Checks level and fade. */
    public Steady {
      Levels.gain(dbfs);
      Levels.requireFade(fadeSeconds, periods.frames(), periods.samplesPerSecond());
    }

    @Override
    public int samplesPerSecond() {
      return periods.samplesPerSecond();
    }

    @Override
    public long frames() {
      return periods.frames();
    }

    @Override
    public double hertz() {
      return periods.hertz();
    }

    @Override
    public double at(long frame) {
      double fade = Levels.fade(frame, frames(), fadeSeconds * samplesPerSecond());
      return Levels.gain(dbfs) * fade * periods.sineAt(frame);
    }

    @Override
    public List<Cue> cues() {
      return List.of();
    }
  }

  /**
   * A sine that goes through levels, each named by a cue.
   *
   * @param step the whole periods of one step
   * @param dbfs the level of each step, 0 or below
   * @param fadeSeconds the time of each change of level and of the rise and fall at the ends
   */
  record Stepped(Periods step, List<Double> dbfs, double fadeSeconds) implements Tone {
    /** Checks levels and fade and copies the levels. */
    public Stepped {
      dbfs = List.copyOf(dbfs);
      if (dbfs.isEmpty()) {
        throw new IllegalArgumentException("a stepped tone needs one level or more");
      }
      dbfs.forEach(Levels::gain);
      Levels.requireFade(fadeSeconds, step.frames(), step.samplesPerSecond());
    }

    @Override
    public int samplesPerSecond() {
      return step.samplesPerSecond();
    }

    @Override
    public long frames() {
      return step.frames() * dbfs.size();
    }

    @Override
    public double hertz() {
      return step.hertz();
    }

    @Override
    public double at(long frame) {
      double width = fadeSeconds * samplesPerSecond();
      int index = (int) (frame / step.frames());
      double gain = Levels.gain(dbfs.get(index));
      double before = index == 0 ? gain : Levels.gain(dbfs.get(index - 1));
      double glide = Levels.rise(frame % step.frames(), width);
      double level = before + (gain - before) * glide;
      return level * Levels.fade(frame, frames(), width) * step.sineAt(frame % step.frames());
    }

    @Override
    public List<Cue> cues() {
      List<Cue> cues = new ArrayList<>();
      for (int i = 0; i < dbfs.size(); i++) {
        String level = String.format(Locale.ROOT, "%.2f", dbfs.get(i));
        cues.add(new Cue(i * step.frames(), Sentence.of("{} dBFS", level)));
      }
      return cues;
    }
  }

  /**
   * A sine that bursts from a rest level at zero crossings, again and again.
   *
   * @param cycle the whole periods from one burst to the next
   * @param burstPeriods the periods at the burst level, fewer than in the cycle
   * @param dbfs the burst level, 0 or below
   * @param restDb the rest level relative to the burst level, 0 or below
   * @param repeats how many bursts
   */
  record Burst(Periods cycle, long burstPeriods, double dbfs, double restDb, int repeats)
      implements Tone {
    /** Checks that a burst fits its cycle. */
    public Burst {
      Levels.gain(dbfs);
      Levels.gain(restDb);
      if (burstPeriods < 1 || burstPeriods >= cycle.count() || repeats < 1) {
        throw new IllegalArgumentException(
            "a burst needs 1 to "
                + (cycle.count() - 1)
                + " periods of its cycle, got "
                + burstPeriods
                + ", and 1 repeat or more, got "
                + repeats);
      }
    }

    @Override
    public int samplesPerSecond() {
      return cycle.samplesPerSecond();
    }

    @Override
    public long frames() {
      return cycle.frames() * repeats;
    }

    @Override
    public double hertz() {
      return cycle.hertz();
    }

    @Override
    public double at(long frame) {
      long within = frame % cycle.frames();
      boolean bursting = within * cycle.count() < burstPeriods * cycle.frames();
      return Levels.gain(bursting ? dbfs : dbfs + restDb) * cycle.sineAt(within);
    }

    @Override
    public List<Cue> cues() {
      List<Cue> cues = new ArrayList<>();
      for (int i = 0; i < repeats; i++) {
        cues.add(new Cue(i * cycle.frames(), Sentence.of("burst {}", i + 1)));
      }
      return cues;
    }
  }

  /**
   * Returns a steady tone of whole periods, nearest to the duration.
   *
   * @throws IllegalArgumentException if a number is out of range, in a sentence
   */
  static Tone steady(
      double hertz, double dbfs, int samplesPerSecond, double seconds, double fadeSeconds) {
    return new Steady(Periods.near(hertz, samplesPerSecond, seconds), dbfs, fadeSeconds);
  }

  /**
   * Returns a tone stepped through levels, each of whole periods, nearest to the duration.
   *
   * @throws IllegalArgumentException if a number is out of range, in a sentence
   */
  static Tone stepped(
      double hertz,
      List<Double> dbfs,
      int samplesPerSecond,
      double secondsPerStep,
      double fadeSeconds) {
    return new Stepped(Periods.near(hertz, samplesPerSecond, secondsPerStep), dbfs, fadeSeconds);
  }

  /**
   * Returns a tone burst.
   *
   * @param burstSeconds the time at the burst level, rounded to whole periods
   * @param everySeconds the time from one burst to the next, rounded to whole periods
   * @throws IllegalArgumentException if a number is out of range, in a sentence
   */
  static Tone burst(
      double hertz,
      double dbfs,
      double restDb,
      int samplesPerSecond,
      double burstSeconds,
      double everySeconds,
      int repeats) {
    Periods cycle = Periods.near(hertz, samplesPerSecond, everySeconds);
    long periods = Math.max(1, Math.round(burstSeconds * hertz));
    return new Burst(cycle, periods, dbfs, restDb, repeats);
  }
}
