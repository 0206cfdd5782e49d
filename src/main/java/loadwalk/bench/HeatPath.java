package loadwalk.bench;

/**
 * The way of the heat in a resistor: from its element through its case to the air.
 *
 * <p>Two heat capacities and two resistances in a row, a linear network, so its step response is
 * two exponentials. Solved by hand from C₁·T₁' = P − (T₁ − T₂)/R₁ and C₂·T₂' = (T₁ − T₂)/R₁ −
 * T₂/R₂; a step-by-step integration in its test checks it.
 *
 * @param elementKelvinPerWatt from element to case, K/W
 * @param elementSeconds the time constant of the element on a case that stays cold, seconds
 * @param caseKelvinPerWatt from case to air, K/W
 * @param caseJoulesPerKelvin the heat that the case holds, J/K
 */
record HeatPath(
    double elementKelvinPerWatt,
    double elementSeconds,
    double caseKelvinPerWatt,
    double caseJoulesPerKelvin) {
  HeatPath {
    Checks.positive(elementKelvinPerWatt, "elementKelvinPerWatt");
    Checks.positive(elementSeconds, "elementSeconds");
    Checks.positive(caseKelvinPerWatt, "caseKelvinPerWatt");
    Checks.positive(caseJoulesPerKelvin, "caseJoulesPerKelvin");
  }

  /** Returns how much hotter than the air the element gets for each watt held for ever, K/W. */
  double kelvinPerWatt() {
    return elementKelvinPerWatt + caseKelvinPerWatt;
  }

  /** Returns how much hotter than the air the element is for each watt after a time, K/W. */
  double kelvinPerWatt(double seconds) {
    double elementRate = 1 / elementSeconds;
    double joinRate = 1 / (elementKelvinPerWatt * caseJoulesPerKelvin);
    double caseRate = 1 / (caseKelvinPerWatt * caseJoulesPerKelvin);
    double half = (elementRate + joinRate + caseRate) / 2;
    double product = elementRate * caseRate;
    double fast = half + Math.sqrt(half * half - product);
    double slow = product / fast;
    double whole = kelvinPerWatt();
    // The element starts to warm by 1/C₁ kelvin a second for each watt.
    double quick = (elementKelvinPerWatt * elementRate - slow * whole) / (fast - slow);
    return whole - quick * Math.exp(-fast * seconds) - (whole - quick) * Math.exp(-slow * seconds);
  }
}
