package loadwalk.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Reads one list of faults; whatever is wrong is said with its line. */
final class FaultReader {
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern TEST = Pattern.compile("loadwalk(\\.\\w+)+");

  private final String area;
  private final List<String> lines;
  private int at;

  private FaultReader(String area, String text) {
    this.area = area;
    this.lines = text.lines().toList();
  }

  static List<Fault> read(String area, String text) {
    FaultReader reader = new FaultReader(area, text);
    List<Fault> faults = new ArrayList<>();
    while (reader.skipBlanks()) {
      faults.add(reader.entry());
    }
    return faults;
  }

  private boolean skipBlanks() {
    while (at < lines.size() && lines.get(at).isBlank()) {
      at++;
    }
    return at < lines.size();
  }

  private Fault entry() {
    String name = after("# ", "the name of a fault");
    require(NAME.matcher(name).matches(), "a name is in kebab case, not \"" + name + "\"");
    at++;
    String harm = harm();
    List<String> tests = List.of(after("caught by ", "the tests that catch it").split("[, ]+"));
    for (String test : tests) {
      require(TEST.matcher(test).matches(), "a test is named in full, not \"" + test + "\"");
    }
    at++;
    String file = after("in ", "the file it spoils");
    at++;
    return new Fault(area, name, harm, tests, file, patch());
  }

  private String harm() {
    int start = at;
    while (!atEnd() && !lines.get(at).startsWith("caught by")) {
      at++;
    }
    String harm = String.join(" ", lines.subList(start, at)).strip();
    require(harm.endsWith("."), "before this a sentence says what it would do to a person");
    return harm;
  }

  private Patch patch() {
    int start = at;
    for (; !atEnd(); at++) {
      require(" -+".indexOf(lines.get(at).charAt(0)) >= 0, "a patch has lines with blank, - or +");
    }
    Patch patch =
        new Patch(
            lines.subList(start, at).stream()
                .map(line -> new Patch.Line(line.charAt(0), line.substring(1)))
                .toList());
    require(patch.isWhole(), "before this a patch names old lines and changes something");
    return patch;
  }

  /** Returns whether the entry ends before this line. */
  private boolean atEnd() {
    return at == lines.size() || lines.get(at).isBlank();
  }

  private String after(String start, String what) {
    require(!atEnd() && lines.get(at).startsWith(start), "\"" + start + "\" brings " + what);
    return lines.get(at).substring(start.length()).strip();
  }

  private void require(boolean met, String expected) {
    if (!met) {
      throw new BadFault(area + ".faults:" + (at + 1) + ": expected that " + expected);
    }
  }
}
