package loadwalk.app;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Names a walk; the name is also the name of its files, so it is plain and cannot lead elsewhere.
 *
 * @param text letters a to z, digits, dots, hyphens and underscores
 */
public record WalkName(String text) {
  private static final int LONGEST = 100;
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

  /** Checks the name; the caller asks {@link #fault} first when an operator typed it. */
  public WalkName {
    Optional<String> fault = fault(text);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(fault.get());
    }
  }

  /** Says in one sentence why the text cannot name a walk, or nothing if it can. */
  public static Optional<String> fault(String text) {
    if (text.length() > LONGEST) {
      return Optional.of("The name of a walk has at most " + LONGEST + " characters.");
    }
    if (!PLAIN.matcher(text).matches()) {
      return Optional.of(
          "The name of a walk is made of letters a to z, digits, dots, hyphens and underscores,"
              + " and starts with a letter or digit.");
    }
    return FileNames.fault(text).map(fault -> "The name of this walk " + fault + ".");
  }

  String journalFile() {
    return text + SessionStore.ENDING;
  }

  String lockFile() {
    return text + ".lock";
  }

  String photoFolder() {
    return text + ".photos";
  }

  String waveFolder() {
    return text + ".waves";
  }

  String tornFile(int number) {
    return text + ".torn-" + number;
  }
}
