package loadwalk.faults;

import java.util.ArrayList;
import java.util.List;

/** Lines to be replaced in one place of a file. Blanks at both ends of a line do not count. */
record Patch(List<Line> lines) {
  Patch {
    lines = List.copyOf(lines);
  }

  /** A line of the patch: its mark is a blank (stays), {@code -} (goes) or {@code +} (comes). */
  record Line(char mark, String text) {
    boolean isOld() {
      return mark != '+';
    }

    boolean isNew() {
      return mark != '-';
    }
  }

  /** Returns whether it changes anything and says where. */
  boolean isWhole() {
    return lines.stream().anyMatch(Line::isOld) && !stripped(true).equals(stripped(false));
  }

  /** Returns how many places of a text it fits. */
  int places(String text) {
    return fits(text.lines().toList()).size();
  }

  /** Returns the text with the fault in it; it must fit exactly one place. */
  String applied(String text) {
    List<String> before = text.lines().toList();
    List<Integer> fits = fits(before);
    if (fits.size() != 1) {
      throw new BadFault("its old lines stand in " + fits.size() + " places of the file");
    }
    int at = fits.get(0);
    List<String> after = new ArrayList<>(before.subList(0, at));
    for (Line line : lines) {
      if (line.isNew()) {
        after.add(line.isOld() ? before.get(at) : line.text());
      }
      at += line.isOld() ? 1 : 0;
    }
    after.addAll(before.subList(at, before.size()));
    return String.join("\n", after) + "\n";
  }

  private List<Integer> fits(List<String> text) {
    List<String> old = stripped(true);
    List<String> all = text.stream().map(String::strip).toList();
    List<Integer> found = new ArrayList<>();
    for (int at = 0; at + old.size() <= all.size(); at++) {
      if (all.subList(at, at + old.size()).equals(old)) {
        found.add(at);
      }
    }
    return found;
  }

  private List<String> stripped(boolean old) {
    return lines.stream()
        .filter(line -> old ? line.isOld() : line.isNew())
        .map(line -> line.text().strip())
        .toList();
  }
}
