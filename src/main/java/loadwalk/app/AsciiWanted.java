package loadwalk.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Decides whether text is printed in plain ASCII: the user says so, or the locale is not UTF-8. */
final class AsciiWanted {
  static final String OPTION = "--ascii";

  /** The locale as it was given, where the launcher runs Java in another. */
  private static final String GIVEN = "LOADWALK_LOCALE";

  private AsciiWanted() {}

  /** Tells it from the words of a command line and the environment. */
  static boolean in(List<String> words, Map<String, String> environment) {
    return words.contains(OPTION) || !isUtf8(environment);
  }

  private static boolean isUtf8(Map<String, String> environment) {
    for (String name : List.of(GIVEN, "LC_ALL", "LC_CTYPE", "LANG")) {
      String value = environment.get(name);
      if (value != null && !value.isEmpty()) {
        return value.toUpperCase(Locale.ROOT).replace("-", "").contains("UTF8");
      }
    }
    return false;
  }

  /** Adds the option that is not there yet, ahead of all others of a command. */
  static List<String> added(List<String> words, boolean behindCommand) {
    if (words.contains(OPTION)) {
      return words;
    }
    List<String> all = new ArrayList<>(words);
    all.add(behindCommand ? 1 : 0, OPTION);
    return all;
  }
}
