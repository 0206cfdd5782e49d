package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a command printed.
 *
 * @param code its exit code; 128 and its number for a signal
 * @param out what it printed
 * @param err what it said of faults
 */
record Ran(int code, String out, String err) {
  private static final Pattern TRACE = Pattern.compile("(?m)^\\s+at \\S+\\(|Exception in thread");
  private static final Pattern CLASS =
      Pattern.compile(
          "\\b(java|javax|sun|jdk|loadwalk|picocli|com|org)(\\.[a-z][a-z0-9_]*)*\\.[A-Z]\\w+"
              + "|\\b[A-Z]\\w*(Exception|Error)\\b");

  /** A sentence, or a fault of a file behind its place. */
  private static final Pattern SENTENCE =
      Pattern.compile("(?m)^ *\\S.*[.?]$|^\\S.*:\\d+:\\d+: \\S.*$");

  /** Returns everything that a person reads. */
  String said() {
    return out + err;
  }

  /** Holds what is true of every end: plain words, and a sentence where something went wrong. */
  Ran isPlain() {
    for (Pattern pattern : List.of(TRACE, CLASS)) {
      Matcher found = pattern.matcher(said());
      assertFalse(found.find(), () -> "a person reads «" + found.group() + "» in\n" + said());
    }
    if (code != 0) {
      assertTrue(SENTENCE.matcher(said()).find(), () -> "no sentence says why: code " + code);
    }
    return this;
  }

  /** Holds the exit code. */
  Ran ends(int wanted) {
    assertEquals(wanted, code, this::tail);
    return isPlain();
  }

  /** Holds that a sentence says so. */
  Ran says(String regex) {
    assertTrue(
        Pattern.compile(regex).matcher(said()).find(), () -> regex + " is not in\n" + tail());
    return this;
  }

  /** Returns how many lines begin with a text. */
  long lines(String start) {
    return out.lines().filter(line -> line.startsWith(start)).count();
  }

  private String tail() {
    String all = out + "\n--- err\n" + err;
    return all.substring(Math.max(0, all.length() - 1500));
  }
}
