package loadwalk.numeric;

import java.util.Arrays;

/** Brings the ends of a long row of numbers in order without sorting its middle. */
final class Selection {
  private static final int SAMPLE = 1024;
  private static final int LONG = 16 * SAMPLE;

  private Selection() {}

  /**
   * Sorts the least and the greatest of finite numbers to the two ends of their array; those
   * between come in any order.
   *
   * @param count how many at each end
   */
  static void sortEnds(double[] values, int count) {
    int end = values.length;
    if (2L * count >= end) {
      Arrays.sort(values);
      return;
    }
    select(values, 0, count);
    select(values, count, end - count);
    Arrays.sort(values, 0, count);
    Arrays.sort(values, end - count, end);
  }

  /**
   * Puts the number that belongs at a place there, with none greater between {@code from} and it
   * and none less behind it (Hoare, 1961; the pivot after Floyd and Rivest, 1975).
   */
  private static void select(double[] values, int from, int place) {
    int low = from;
    int high = values.length - 1;
    while (low < high) {
      double pivot = pivot(values, low, high, place);
      int left = low;
      int right = high;
      while (left <= right) {
        while (values[left] < pivot) {
          left++;
        }
        while (values[right] > pivot) {
          right--;
        }
        if (left <= right) {
          double held = values[left];
          values[left++] = values[right];
          values[right--] = held;
        }
      }
      if (place <= right) {
        high = right;
      } else if (place >= left) {
        low = left;
      } else {
        return;
      }
    }
  }

  /**
   * Guesses a number that splits off little more than what is wanted: of a long row by a sample's
   * quantile, two standard deviations towards the greater part; of a short one by three of it.
   */
  private static double pivot(double[] values, int low, int high, int place) {
    int length = high - low + 1;
    if (length < LONG) {
      return middle(values[low], values[(low + high) >>> 1], values[high]);
    }
    double[] sample = new double[SAMPLE];
    for (int i = 0; i < SAMPLE; i++) {
      sample[i] = values[low + (int) ((long) i * length / SAMPLE)];
    }
    Arrays.sort(sample);
    double share = (double) (place - low) / length;
    double margin = 2 * Math.sqrt(SAMPLE * share * (1 - share));
    long rank = Math.round(SAMPLE * share + (share < 0.5 ? margin : -margin));
    return sample[(int) Math.max(0, Math.min(SAMPLE - 1, rank))];
  }

  private static double middle(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
