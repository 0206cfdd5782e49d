package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of text whose wire enters and leaves on the same line.
 *
 * @param lines its lines, all of one length
 * @param wire the line of the wire, from 0
 */
record WiringBlock(List<String> lines, int wire) {
  /** Copies the lines. */
  WiringBlock {
    lines = List.copyOf(lines);
  }

  private int width() {
    return lines.get(0).length();
  }

  /** Returns blocks joined in a row. */
  static WiringBlock row(List<WiringBlock> blocks) {
    int above = blocks.stream().mapToInt(WiringBlock::wire).max().orElseThrow();
    int below = blocks.stream().mapToInt(b -> b.lines().size() - b.wire()).max().orElseThrow();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < above + below; i++) {
      StringBuilder line = new StringBuilder();
      for (WiringBlock block : blocks) {
        line.append(line.isEmpty() ? "" : i == above ? "--" : "  ");
        int own = i - above + block.wire();
        boolean inside = own >= 0 && own < block.lines().size();
        line.append(inside ? block.lines().get(own) : " ".repeat(block.width()));
      }
      lines.add(line.toString());
    }
    return new WiringBlock(lines, above);
  }

  /** Returns blocks joined in parallel, each drawn below the one before. */
  static WiringBlock stack(List<WiringBlock> blocks) {
    int width = blocks.stream().mapToInt(WiringBlock::width).max().orElseThrow();
    List<String> lines = new ArrayList<>();
    int first = blocks.get(0).wire();
    for (int b = 0; b < blocks.size(); b++) {
      WiringBlock block = blocks.get(b);
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
    return new WiringBlock(lines, first);
  }
}
