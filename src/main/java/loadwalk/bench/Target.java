package loadwalk.bench;

/**
 * What a step measures: the mode, the load and the power.
 *
 * @param stepId the step's id
 * @param kind what is done
 * @param mode how the load is connected; for warm-up and open-load the mode it runs in
 * @param ohms the load, ohms; NaN where no load is connected (idle)
 * @param powerFraction the part of the power at the limit: 1 at the limit, below 1 in a warm-up
 */
public record Target(String stepId, Kind kind, Mode mode, double ohms, double powerFraction) {
  /** What is done. */
  public enum Kind {
    WARM_UP(true),
    IDLE(false),
    LOADED(true),
    /** The load is driven before it is taken off. */
    OPEN_LOAD(true);

    private final boolean drives;

    Kind(boolean drives) {
      this.drives = drives;
    }

    /** Tells whether the amplifier is driven into a load. */
    public boolean drives() {
      return drives;
    }
  }

  /** Returns a step that measures into a load at the limit. */
  public static Target loaded(String stepId, Mode mode, double ohms) {
    return new Target(stepId, Kind.LOADED, mode, ohms, 1);
  }

  /** Returns the same step with another load connected, ohms. */
  public Target into(double otherOhms) {
    return otherOhms == ohms ? this : new Target(stepId, kind, mode, otherOhms, powerFraction);
  }

  /** Returns the same step with the loads connected in another mode. */
  public Target in(Mode other) {
    return new Target(stepId, kind, other, ohms, powerFraction);
  }

  /** Returns the idle step. */
  public static Target idle(String stepId) {
    return new Target(stepId, Kind.IDLE, Mode.STEREO, Double.NaN, 0);
  }
}
