package loadwalk.sequence;

import java.util.List;
import loadwalk.bench.Mode;

/** One entry of a sequence. */
public sealed interface Step {

  /** Returns what the step does, the word of its {@code do} key. */
  String verb();

  /** Returns the id before repeats are numbered: mode and ohms, or what the step does. */
  default String baseId() {
    return verb();
  }

  /**
   * Runs the amplifier warm at part of its power.
   *
   * @param minutes the least time, minutes
   * @param powerFraction the part of full power, above 0 up to 1
   * @param steadyCelsiusPerMinute the slope at or below which the heatsink counts as steady, K/min
   */
  record WarmUp(double minutes, double powerFraction, double steadyCelsiusPerMinute)
      implements Step {
    @Override
    public String verb() {
      return "warm-up";
    }
  }

  /** Reads the idle current, no tone. */
  record Idle() implements Step {
    @Override
    public String verb() {
      return "idle";
    }
  }

  /**
   * Raises the tone to the limit into a load and reads volts and amps.
   *
   * @param mode stereo or bridged
   * @param ohms the load, ohms
   * @param optional whether the operator may pass it over without a reason
   */
  record Measure(Mode mode, double ohms, boolean optional) implements Step {
    @Override
    public String verb() {
      return "measure";
    }

    @Override
    public String baseId() {
      return loadId(mode, ohms);
    }
  }

  /** Reads the volts with the load taken off, generator untouched. */
  record OpenLoad() implements Step {
    @Override
    public String verb() {
      return "open-load";
    }
  }

  /**
   * Measures earlier steps again after another warm-up.
   *
   * @param of the ids of the steps, or {@link #HEAVIEST}
   * @param afterWarmMinutes the warm-up before, minutes; 0 for none
   */
  record Recheck(List<String> of, double afterWarmMinutes) implements Step {
    /** Stands for the heaviest step measured so far. */
    public static final String HEAVIEST = "heaviest";

    /** Copies the list. */
    public Recheck {
      of = List.copyOf(of);
    }

    @Override
    public String verb() {
      return "recheck";
    }
  }

  /**
   * Plays music and listens.
   *
   * @param minutes how long, minutes
   */
  record Music(double minutes) implements Step {
    @Override
    public String verb() {
      return "music";
    }
  }

  /**
   * Shows a text the operator confirms.
   *
   * @param text what to read or do
   */
  record Note(String text) implements Step {
    @Override
    public String verb() {
      return "note";
    }
  }

  /** Returns the id of a load: {@code stereo-4}, {@code bridged-0.5}. */
  static String loadId(Mode mode, double ohms) {
    String number =
        ohms == Math.rint(ohms) && ohms < 1e9 ? String.valueOf((long) ohms) : String.valueOf(ohms);
    return mode.word() + "-" + number;
  }
}
