package loadwalk.app.store;

import java.util.Optional;
import loadwalk.text.Sentence;

/**
 * Names a walk; the name is also the name of its files, so it is plain and cannot lead elsewhere.
 *
 * @param text letters a to z, digits, dots, hyphens and underscores
 */
public record WalkName(String text) {
  private static final int LONGEST = 100;
  private static final String SIGNS = "._-";

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
      return Optional.of(Sentence.of("The name of a walk has at most {} characters.", LONGEST));
    }
    if (!isPlain(text)) {
      return Optional.of(
          "The name of a walk is made of letters a to z, digits, dots, hyphens and underscores,"
              + " and starts with a letter or digit.");
    }
    return FileNames.fault(text);
  }

  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      boolean plain = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
      if (!plain && (at == 0 || SIGNS.indexOf(c) < 0)) {
        return false;
      }
    }
    return !text.isEmpty();
  }

  /** Returns the name of a journal's file without its ending; itself where it has another. */
  static String stem(String file) {
    return file.endsWith(JournalFolder.ENDING)
        ? file.substring(0, file.length() - JournalFolder.ENDING.length())
        : file;
  }

  String journalFile() {
    return text + JournalFolder.ENDING;
  }

  /** Returns a hidden name that version control leaves out: the file holds nothing. */
  String lockFile() {
    return "." + text + ".lock";
  }

  /**
   * Returns the hidden name of what tells where the journal ends; version control leaves it out.
   */
  String endFile() {
    return endFile(text);
  }

  static String endFile(String stem) {
    return "." + stem + ".end";
  }

  String photoFolder() {
    return text + ".photos";
  }

  /** Returns the folder of the waves held in the walk. */
  public String waveFolder() {
    return text + ".waves";
  }

  String tornFile(int number) {
    return text + ".torn-" + number;
  }
}
