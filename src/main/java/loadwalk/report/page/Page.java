package loadwalk.report.page;

import java.util.ArrayList;
import java.util.List;
import loadwalk.chart.Chart;

/**
 * The content of a sheet, a ledger, a plan or a judged wave, in no format yet.
 *
 * @param title the title
 * @param subtitle one line below it
 * @param warnings what the reader must know first
 * @param sections the sections in order
 */
public record Page(String title, String subtitle, List<String> warnings, List<Section> sections) {
  /** Copies the lists. */
  public Page {
    warnings = List.copyOf(warnings);
    sections = List.copyOf(sections);
  }

  /** Returns the charts of all sections in order. */
  public List<Chart> charts() {
    List<Chart> charts = new ArrayList<>();
    for (Section section : sections) {
      for (Block block : section.blocks()) {
        block.drawnChart().ifPresent(charts::add);
      }
    }
    return charts;
  }

  /**
   * A part of a page.
   *
   * @param id a fixed word, used as an anchor
   * @param title its heading
   * @param blocks its content
   * @param closed whether it is for few readers: a page that can fold it away opens with it folded
   */
  public record Section(String id, String title, List<Block> blocks, boolean closed) {
    /** Copies the blocks. */
    public Section {
      blocks = List.copyOf(blocks);
    }

    /** Makes a section that is open. */
    public Section(String id, String title, List<Block> blocks) {
      this(id, title, blocks, false);
    }
  }
}
