package loadwalk.forecast;

import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;

/**
 * What readings tell of one more value under a joint normal, by a library's linear algebra.
 *
 * @param mean the mean of the value, given the readings
 * @param variance its variance
 * @param density the density of the readings themselves
 */
public record NormalAlgebra(double mean, double variance, double density) {

  /**
   * Conditions a joint normal of mean zero.
   *
   * @param covariance the covariance of the readings
   * @param y the readings
   * @param toward the covariances of the value with them
   * @param own the variance of the value before
   */
  public static NormalAlgebra of(double[][] covariance, double[] y, double[] toward, double own) {
    RealVector k = new ArrayRealVector(toward);
    RealVector solved =
        new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance)).getSolver().solve(k);
    return new NormalAlgebra(
        solved.dotProduct(new ArrayRealVector(y)),
        own - solved.dotProduct(k),
        new MultivariateNormalDistribution(new double[y.length], covariance).density(y));
  }
}
