package loadwalk.plan.wiring;

import java.util.Arrays;

/** Many networks as rows of plain arrays: each is a tree of two-way joins of kinds of resistor. */
final class NetworkStore {
  static final byte PART = 0;
  static final byte SERIES = 1;
  static final byte PARALLEL = 2;

  private double[] ohms = new double[1024];
  private double[] watts = new double[1024];
  private long[] selections = new long[1024];
  private byte[] joins = new byte[1024];
  private int[] lefts = new int[1024];
  private int[] rights = new int[1024];
  private int size;

  int size() {
    return size;
  }

  double ohms(int node) {
    return ohms[node];
  }

  /** Returns the most watts in the whole network that keep every part within its limit. */
  double watts(int node) {
    return watts[node];
  }

  long selection(int node) {
    return selections[node];
  }

  byte join(int node) {
    return joins[node];
  }

  /** Returns the left member, or the kind of a single part. */
  int left(int node) {
    return lefts[node];
  }

  int right(int node) {
    return rights[node];
  }

  int addPart(int kind, long selection, double partOhms, double partWatts) {
    return add(partOhms, partWatts, selection, PART, kind, -1);
  }

  int addJoin(byte join, int left, int right) {
    return add(
        joinedOhms(join, ohms[left], ohms[right]),
        joinedWatts(join, ohms[left], watts[left], ohms[right], watts[right]),
        selections[left] + selections[right],
        join,
        left,
        right);
  }

  /** Replaces a node that no other node uses yet with a join of the same value and selection. */
  void replace(int node, byte join, int left, int right, double newWatts) {
    joins[node] = join;
    lefts[node] = left;
    rights[node] = right;
    watts[node] = newWatts;
  }

  static double joinedOhms(byte join, double a, double b) {
    return join == SERIES ? a + b : a * b / (a + b);
  }

  /**
   * Returns the watts limit of a join. Current is equal in series and volts are equal in parallel,
   * so the weaker member sets the limit.
   */
  static double joinedWatts(byte join, double a, double aWatts, double b, double bWatts) {
    return join == SERIES
        ? Math.min(aWatts / a, bWatts / b) * (a + b)
        : Math.min(aWatts * a, bWatts * b) * (a + b) / (a * b);
  }

  private int add(double value, double most, long selection, byte join, int left, int right) {
    if (size == ohms.length) {
      int larger = 2 * size;
      ohms = Arrays.copyOf(ohms, larger);
      watts = Arrays.copyOf(watts, larger);
      selections = Arrays.copyOf(selections, larger);
      joins = Arrays.copyOf(joins, larger);
      lefts = Arrays.copyOf(lefts, larger);
      rights = Arrays.copyOf(rights, larger);
    }
    ohms[size] = value;
    watts[size] = most;
    selections[size] = selection;
    joins[size] = join;
    lefts[size] = left;
    rights[size] = right;
    return size++;
  }
}
