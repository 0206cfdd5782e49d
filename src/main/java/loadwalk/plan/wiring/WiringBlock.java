package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of text whose wire enters and leaves on its first line.
 *
 * @param lines its lines, all of one length
 */
record WiringBlock(List<String> lines) {
  /** Copies the lines. */
  WiringBlock {
    lines = List.copyOf(lines);
  }

  private int width() {
    return lines.get(0).length();
  }

  private int height() {
    return lines.size();
  }

  /** Returns blocks joined in a row. */
  static WiringBlock row(List<WiringBlock> blocks) {
    int height = blocks.stream().mapToInt(WiringBlock::height).max().orElseThrow();
    List<String> lines = new ArrayList<>();
    for (int line = 0; line < height; line++) {
      List<String> row = new ArrayList<>();
      for (WiringBlock block : blocks) {
        row.add(line < block.height() ? block.lines().get(line) : " ".repeat(block.width()));
      }
      lines.add(String.join(line == 0 ? "--" : "  ", row));
    }
    return new WiringBlock(lines);
  }

  /** Returns blocks joined in parallel, each drawn below the one before. */
  static WiringBlock stack(List<WiringBlock> blocks) {
    int width = blocks.stream().mapToInt(WiringBlock::width).max().orElseThrow();
    List<String> lines = new ArrayList<>();
    for (WiringBlock block : blocks) {
      String below = block == blocks.get(blocks.size() - 1) ? " " : "|";
      for (int line = 0; line < block.height(); line++) {
        String lead = line == 0 ? "-" : " ";
        String edge = line == 0 ? "+" : below;
        String fill = lead.repeat(width - block.width());
        lines.add(edge + lead + block.lines().get(line) + fill + lead + edge);
      }
    }
    return new WiringBlock(lines);
  }
}
