package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Notes which resistor ends meet at which node, from left to right. */
final class Joints {
  private final Map<String, List<String>> ends = new LinkedHashMap<>();
  private final String left;
  private final String right;
  private int resistors;
  private int nodes;

  /** Starts between the two terminals of an amplifier. */
  Joints(String left, String right) {
    this.left = left;
    this.right = right;
    ends.put(left, new ArrayList<>());
  }

  /** Names a new node. */
  String node() {
    nodes++;
    return "node " + nodes;
  }

  /** Notes the next resistor between two nodes. */
  void resistor(String from, String to) {
    resistors++;
    ends.computeIfAbsent(from, node -> new ArrayList<>()).add("R" + resistors + " left");
    ends.computeIfAbsent(to, node -> new ArrayList<>()).add("R" + resistors + " right");
  }

  /** Returns one string a joint, the right terminal last: "L+ to R1 left, R3 left". */
  List<String> words() {
    ends.put(right, ends.remove(right));
    List<String> out = new ArrayList<>();
    ends.forEach(
        (node, met) -> {
          boolean inner = !node.equals(left) && !node.equals(right);
          List<String> rest = inner ? met.subList(1, met.size()) : met;
          out.add((inner ? met.get(0) : node) + " to " + String.join(", ", rest));
        });
    return out;
  }
}
