package loadwalk.plan.wiring;

import java.util.Arrays;

/** Finds the node of one selection that has a given value; equal means to about 11 digits. */
final class ValueIndex {
  /** Bits of a double ignored in a comparison; 11 digits remain. */
  private static final int IGNORED_BITS = 16;

  private long[] keys = new long[64];
  private int[] nodes = new int[64];
  private int used;

  ValueIndex() {
    Arrays.fill(nodes, -1);
  }

  void clear() {
    Arrays.fill(nodes, -1);
    used = 0;
  }

  /** Returns the slot of a value: {@link #node} of it is negative if there is none yet. */
  int slot(double ohms) {
    if (2 * used >= nodes.length) {
      grow();
    }
    return find(key(ohms));
  }

  int node(int slot) {
    return nodes[slot];
  }

  void put(int slot, double ohms, int node) {
    keys[slot] = key(ohms);
    nodes[slot] = node;
    used++;
  }

  private static long key(double ohms) {
    return Double.doubleToLongBits(ohms) + (1L << (IGNORED_BITS - 1)) >> IGNORED_BITS;
  }

  private int find(long key) {
    int mask = nodes.length - 1;
    int slot = (int) (key * 0x9E3779B97F4A7C15L >>> 40) & mask;
    while (nodes[slot] >= 0 && keys[slot] != key) {
      slot = slot + 1 & mask;
    }
    return slot;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldNodes = nodes;
    keys = new long[2 * oldKeys.length];
    nodes = new int[keys.length];
    Arrays.fill(nodes, -1);
    for (int i = 0; i < oldNodes.length; i++) {
      if (oldNodes[i] >= 0) {
        int slot = find(oldKeys[i]);
        keys[slot] = oldKeys[i];
        nodes[slot] = oldNodes[i];
      }
    }
  }
}
