package loadwalk.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Draws a network in plain ASCII and lists which terminal goes to which.
 *
 * <p>Resistors are called R1, R2 and so on from left to right; each has a left and a right
 * terminal.
 */
public final class WiringPicture {
  private int drawn;
  private int nodes;

  private WiringPicture() {}

  /** Returns the drawing, one string a line, with the amplifier's two terminals at its ends. */
  public static List<String> lines(Network network, String leftTerminal, String rightTerminal) {
    WiringPicture picture = new WiringPicture();
    Block block = picture.draw(network);
    List<String> out = new ArrayList<>();
    String left = leftTerminal + " --";
    for (int i = 0; i < block.lines().size(); i++) {
      boolean wire = i == block.wire();
      String line =
          (wire ? left : " ".repeat(left.length()))
              + block.lines().get(i)
              + (wire ? "-- " + rightTerminal : "");
      out.add(line.stripTrailing());
    }
    return out;
  }

  /** Returns which resistor each R is, one string each: "R1 = 4 ohm #1 (4 ohm, 100 W)". */
  public static List<String> legend(Network network) {
    List<String> out = new ArrayList<>();
    List<Network.Part> parts = network.parts();
    for (int i = 0; i < parts.size(); i++) {
      out.add("R" + (i + 1) + " = " + parts.get(i).name());
    }
    return out;
  }

  /** Returns the joints, one string each: "L+ to R1 left, R3 left". */
  public static List<String> joints(Network network, String leftTerminal, String rightTerminal) {
    WiringPicture picture = new WiringPicture();
    Map<String, List<String>> joints = new LinkedHashMap<>();
    joints.put(leftTerminal, new ArrayList<>());
    picture.join(network, leftTerminal, rightTerminal, joints);
    List<String> ends = joints.remove(rightTerminal);
    joints.put(rightTerminal, ends);
    List<String> out = new ArrayList<>();
    joints.forEach(
        (node, terminals) -> {
          boolean inner = !node.equals(leftTerminal) && !node.equals(rightTerminal);
          List<String> rest = inner ? terminals.subList(1, terminals.size()) : terminals;
          out.add((inner ? terminals.get(0) : node) + " to " + String.join(", ", rest));
        });
    return out;
  }

  private void join(Network part, String from, String to, Map<String, List<String>> joints) {
    if (part instanceof Network.Series series) {
      String left = from;
      for (int i = 0; i < series.members().size(); i++) {
        boolean last = i == series.members().size() - 1;
        String right = last ? to : "node " + ++nodes;
        join(series.members().get(i), left, right, joints);
        left = right;
      }
    } else if (part instanceof Network.Parallel parallel) {
      parallel.members().forEach(member -> join(member, from, to, joints));
    } else {
      drawn++;
      joints.computeIfAbsent(from, node -> new ArrayList<>()).add("R" + drawn + " left");
      joints.computeIfAbsent(to, node -> new ArrayList<>()).add("R" + drawn + " right");
    }
  }

  /** A rectangle of text whose wire enters and leaves on one line. */
  private record Block(List<String> lines, int wire) {
    int width() {
      return lines.get(0).length();
    }
  }

  private Block draw(Network part) {
    if (part instanceof Network.Series series) {
      return row(series.members().stream().map(this::draw).toList());
    }
    if (part instanceof Network.Parallel parallel) {
      return stack(parallel.members().stream().map(this::draw).toList());
    }
    drawn++;
    return new Block(List.of("[R" + drawn + "]"), 0);
  }

  private static Block row(List<Block> blocks) {
    int above = blocks.stream().mapToInt(Block::wire).max().orElseThrow();
    int below = blocks.stream().mapToInt(b -> b.lines().size() - b.wire()).max().orElseThrow();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < above + below; i++) {
      StringBuilder line = new StringBuilder();
      for (Block block : blocks) {
        line.append(line.isEmpty() ? "" : i == above ? "--" : "  ");
        int own = i - above + block.wire();
        boolean inside = own >= 0 && own < block.lines().size();
        line.append(inside ? block.lines().get(own) : " ".repeat(block.width()));
      }
      lines.add(line.toString());
    }
    return new Block(lines, above);
  }

  private static Block stack(List<Block> blocks) {
    int width = blocks.stream().mapToInt(Block::width).max().orElseThrow();
    List<String> lines = new ArrayList<>();
    int first = blocks.get(0).wire();
    for (int b = 0; b < blocks.size(); b++) {
      Block block = blocks.get(b);
      boolean last = b == blocks.size() - 1;
      for (int i = 0; i < block.lines().size(); i++) {
        boolean wire = i == block.wire();
        boolean bus = !(b == 0 && i < block.wire()) && !(last && i > block.wire());
        String fill = (wire ? "-" : " ").repeat(width - block.width());
        String edge = wire ? "+" : bus ? "|" : " ";
        String lead = wire ? "-" : " ";
        lines.add(edge + lead + block.lines().get(i) + fill + lead + edge);
      }
    }
    return new Block(lines, first);
  }
}
