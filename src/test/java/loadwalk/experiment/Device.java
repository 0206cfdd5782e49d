package loadwalk.experiment;

import loadwalk.bench.Mode;

/** A simulated amplifier with its supplies; pure. */
interface Device {
  /** Solves a step at the limit of 1 % THD into the load really connected. */
  Truth at(Mode mode, double ohms, double celsius);

  /** Solves a step at a part of the power at the limit. */
  Truth atPart(Mode mode, double ohms, double celsius, double fraction);

  /** Solves the step without a tone. */
  Truth idle();

  /** Returns the same on supplies that hold their current at a limit. */
  Device withSupplyAmps(double amps);

  /** Returns the same on supplies without a current limit. */
  default Device unlimited() {
    return withSupplyAmps(1e6);
  }
}
