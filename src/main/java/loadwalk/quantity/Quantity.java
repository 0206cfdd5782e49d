package loadwalk.quantity;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Holds a value with its standard uncertainty (k = 1), split by the source each part comes from.
 *
 * <p>Keeping the signed part of every source lets equal sources cancel or add before they are
 * squared, so that {@code x.minus(x)} is 0 ± 0 (JCGM 100:2008, 5.2). Different sources are assumed
 * independent.
 *
 * @param value the estimate, finite, in the unit
 * @param unit the unit of value and contributions
 * @param contributions the signed part of the standard uncertainty by source, each finite, in the
 *     unit
 * @param shapes the distributions of the parts, by source; a part not listed is normal and known
 */
public record Quantity(
    double value, Unit unit, Map<String, Double> contributions, Map<String, Shape> shapes) {

  /** The coverage factor where the parts add up to a normal distribution that is known. */
  public static final double COVERAGE_FACTOR = 2.0;

  /** Checks that every number is finite and copies the parts. */
  public Quantity {
    Objects.requireNonNull(unit, "unit");
    requireFinite(value, "value");
    SortedMap<String, Double> copy = new TreeMap<>(contributions);
    copy.values().forEach(part -> requireFinite(part, "contribution"));
    contributions = Collections.unmodifiableSortedMap(copy);
    // In one order always, so that sums over them are the same to the last bit.
    shapes = shapes.isEmpty() ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(shapes));
  }

  /** Makes a quantity whose parts are all normal and known. */
  public Quantity(double value, Unit unit, Map<String, Double> contributions) {
    this(value, unit, contributions, Map.of());
  }

  /** Returns a value whose whole standard uncertainty comes from one named source. */
  public static Quantity of(double value, Unit unit, String source, double u) {
    if (!(u >= 0)) {
      throw new IllegalArgumentException("standard uncertainty must be 0 or more, got " + u);
    }
    return new Quantity(value, unit, Map.of(source, u));
  }

  /** Returns a number that is exact by definition, such as a factor of two in a formula. */
  public static Quantity exact(double value, Unit unit) {
    return new Quantity(value, unit, Map.of());
  }

  /** Returns the standard uncertainty (k = 1): the root of the summed squares of the parts. */
  public double u() {
    double sum = 0;
    for (double part : contributions.values()) {
      sum = Math.hypot(sum, part);
    }
    return sum;
  }

  /** Returns the expanded uncertainty U = k·u. */
  public double expanded() {
    return coverageFactor() * u();
  }

  /**
   * Returns the coverage factor k of 95.45 %: 2, or more where parts estimated from few readings
   * need it (JCGM 100:2008, G.4.1 and table G.2), or less where one part with limits, such as a
   * tolerance, outweighs the others (JCGM 100:2008, G.1.4 and 4.3.7: 1.65 for a rectangular one).
   */
  public double coverageFactor() {
    return shapes.isEmpty()
        ? COVERAGE_FACTOR
        : Coverage.factor(effectiveDegreesOfFreedom()) * Coverage.shapeFactor(excess());
  }

  /** Returns the excess kurtosis: that of each part, weighted by the square of its variance. */
  public double excess() {
    double u = u();
    double sum = 0;
    for (Map.Entry<String, Shape> shape : shapes.entrySet()) {
      double share = share(shape.getKey(), u);
      sum += share * share * shape.getValue().excess();
    }
    return sum;
  }

  /** Returns which part of the variance comes from a source. */
  private double share(String source, double u) {
    double part = u > 0 ? contributions.getOrDefault(source, 0.0) / u : 0;
    return part * part;
  }

  /**
   * Returns ν_eff = u⁴ / Σ(uᵢ⁴/νᵢ) by Welch–Satterthwaite (JCGM 100:2008, equation G.2b); infinite
   * where no part was estimated from readings. It is never below the smallest νᵢ. Parts estimated
   * from one pool of readings count as one part: two of them are known no better than one.
   */
  public double effectiveDegreesOfFreedom() {
    double u = u();
    Map<String, Double> shareOfPool = new TreeMap<>();
    Map<String, Double> degreesOfPool = new TreeMap<>();
    shapes.forEach(
        (source, shape) -> {
          if (shape.isEstimated()) {
            shareOfPool.merge(shape.poolOf(source), share(source, u), Double::sum);
            degreesOfPool.merge(shape.poolOf(source), shape.degreesOfFreedom(), Math::min);
          }
        });
    double sum = 0;
    for (Map.Entry<String, Double> pool : shareOfPool.entrySet()) {
      sum += pool.getValue() * pool.getValue() / degreesOfPool.get(pool.getKey());
    }
    return sum > 0 ? Math.max(1, 1 / sum) : Double.POSITIVE_INFINITY;
  }

  /** Returns the degrees of freedom of one part: infinite for one that is known. */
  public double degreesOfFreedom(String source) {
    Shape shape = shapes.get(source);
    return shape == null ? Double.POSITIVE_INFINITY : shape.degreesOfFreedom();
  }

  /** Tells whether any part was estimated from few readings. */
  public boolean isEstimated() {
    return shapes.values().stream().anyMatch(Shape::isEstimated);
  }

  /** Returns this plus other; both must carry the same unit. */
  public Quantity plus(Quantity other) {
    requireSameUnit(other);
    return combine(other, value + other.value, 1, 1, unit);
  }

  /** Returns this minus other; both must carry the same unit. */
  public Quantity minus(Quantity other) {
    requireSameUnit(other);
    return combine(other, value - other.value, 1, -1, unit);
  }

  /** Returns the product in the given unit. */
  public Quantity times(Quantity other, Unit resultUnit) {
    return combine(other, value * other.value, other.value, value, resultUnit);
  }

  /**
   * Returns the quotient in the given unit.
   *
   * @throws IllegalArgumentException if the divisor is zero
   */
  public Quantity dividedBy(Quantity other, Unit resultUnit) {
    if (other.value == 0) {
      throw new IllegalArgumentException("division by a quantity of 0 " + other.unit.symbol());
    }
    double quotient = value / other.value;
    return combine(other, quotient, 1 / other.value, -quotient / other.value, resultUnit);
  }

  /** Returns this times an exact number, in the same unit. */
  public Quantity scaledBy(double factor) {
    return mapped(value * factor, factor, unit);
  }

  /**
   * Returns f(this), given the value of f and its derivative here.
   *
   * @param result the value of f at this value
   * @param derivative the derivative of f at this value
   * @param resultUnit the unit of f
   */
  public Quantity mapped(double result, double derivative, Unit resultUnit) {
    Map<String, Double> parts = new TreeMap<>();
    contributions.forEach((source, part) -> parts.put(source, derivative * part));
    return new Quantity(result, resultUnit, parts, shapes);
  }

  /** Returns this with another independent, normal part of the standard uncertainty. */
  public Quantity withPart(String source, double u) {
    Map<String, Double> parts = new TreeMap<>(contributions);
    parts.merge(source, u, Math::hypot);
    return new Quantity(value, unit, parts, shapes);
  }

  /**
   * Returns this with another independent part that is equally likely anywhere within limits: u =
   * a/√3 (JCGM 100:2008, 4.3.7).
   *
   * @param source the name of the part, not yet used here
   * @param halfWidth a, the distance of the limits; its sign tells which way the value goes
   */
  public Quantity withRectangular(String source, double halfWidth) {
    return withShaped(source, halfWidth / Math.sqrt(3), Shape.RECTANGULAR);
  }

  /**
   * Returns this with another independent part, estimated from readings (type A).
   *
   * @param source the name of the part, not yet used here
   * @param u the standard uncertainty
   * @param degrees its degrees of freedom, 1 or more: for n readings n − 1 (JCGM 100:2008, 4.2.6)
   */
  public Quantity withScatter(String source, double u, double degrees) {
    return withShaped(source, u, Shape.estimated(degrees, ""));
  }

  /**
   * Returns this with another independent part of a shape.
   *
   * @param source the name of the part, not yet used here
   * @param u the standard uncertainty; its sign tells which way the value goes
   */
  public Quantity withShaped(String source, double u, Shape shape) {
    if (contributions.containsKey(source)) {
      throw new IllegalArgumentException("there is a part named " + source + " already");
    }
    Map<String, Double> parts = new TreeMap<>(contributions);
    parts.put(source, u);
    Map<String, Shape> all = new TreeMap<>(shapes);
    all.put(source, shape);
    return new Quantity(value, unit, parts, all);
  }

  /** Returns this without the parts whose sources another quantity shares. */
  public Quantity withoutSourcesOf(Quantity other) {
    Map<String, Double> parts = new TreeMap<>(contributions);
    parts.keySet().removeAll(other.contributions.keySet());
    return new Quantity(value, unit, parts, shapes);
  }

  /** Returns this without the part of one source. */
  public Quantity without(String source) {
    Map<String, Double> parts = new TreeMap<>(contributions);
    parts.remove(source);
    return new Quantity(value, unit, parts, shapes);
  }

  private Quantity combine(
      Quantity other, double result, double derivative, double otherDerivative, Unit resultUnit) {
    Map<String, Double> parts = new TreeMap<>();
    contributions.forEach((source, part) -> parts.put(source, derivative * part));
    other.contributions.forEach(
        (source, part) -> parts.merge(source, otherDerivative * part, Double::sum));
    return new Quantity(result, resultUnit, parts, shapesOfBoth(other));
  }

  private Map<String, Shape> shapesOfBoth(Quantity other) {
    if (other.shapes.isEmpty()) {
      return shapes;
    }
    Map<String, Shape> both = new TreeMap<>(shapes);
    other.shapes.forEach((source, shape) -> both.merge(source, shape, Shape::lessSure));
    return both;
  }

  private void requireSameUnit(Quantity other) {
    if (unit != other.unit) {
      throw new IllegalArgumentException("units differ: " + unit + " and " + other.unit);
    }
  }

  private static void requireFinite(double number, String what) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(what + " must be finite, got " + number);
    }
  }
}
