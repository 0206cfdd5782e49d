package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.text.Sentence;

/** Records which resistor ends meet at which node, from left to right. */
final class Joints {
  private final Map<String, List<String>> ends = new LinkedHashMap<>();
  private final String left;
  private final String right;
  private int resistors;
  private int nodes;

  /** Starts with the two terminals of an amplifier. */
  Joints(String left, String right) {
    this.left = left;
    this.right = right;
    ends.put(left, new ArrayList<>());
  }

  /** Returns the name of a new node. */
  String node() {
    nodes++;
    return Sentence.of("node {}", nodes);
  }

  /** Records the next resistor, between two nodes. */
  void resistor(String from, String to) {
    resistors++;
    ends.computeIfAbsent(from, node -> new ArrayList<>()).add(Sentence.of("R{} left", resistors));
    ends.computeIfAbsent(to, node -> new ArrayList<>()).add(Sentence.of("R{} right", resistors));
  }

  /** Returns one string for each joint, the right terminal last: "L+ to R1 left, R3 left". */
  List<String> words() {
    ends.put(right, ends.remove(right));
    List<String> out = new ArrayList<>();
    ends.forEach(
        (node, met) -> {
          boolean inner = !node.equals(left) && !node.equals(right);
          List<String> rest = inner ? met.subList(1, met.size()) : met;
          out.add(Sentence.of("{} to {}", inner ? met.get(0) : node, String.join(", ", rest)));
        });
    return out;
  }
}
