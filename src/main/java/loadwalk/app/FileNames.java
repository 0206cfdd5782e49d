package loadwalk.app;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says which names a file may have so that every platform takes it and none reads more into it. */
final class FileNames {
  static final int LONGEST = 200;

  private static final Pattern DEVICE =
      Pattern.compile("(con|prn|aux|nul|conin\\$|conout\\$|com[0-9¹²³]|lpt[0-9¹²³])(\\..*)?");
  private static final String RESERVED = "<>:\"|?*/\\";

  private FileNames() {}

  /** Says what is wrong with one part of a path, or nothing if it may be used. */
  static Optional<String> fault(String name) {
    if (name.isEmpty() || name.isBlank()) {
      return Optional.of("is empty");
    }
    if (name.length() > LONGEST) {
      return Optional.of("is longer than " + LONGEST + " characters");
    }
    if (name.codePoints().anyMatch(FileNames::unseen)) {
      return Optional.of("holds a control or other invisible character");
    }
    if (name.chars().anyMatch(c -> RESERVED.indexOf(c) >= 0)) {
      return Optional.of("holds one of the characters " + RESERVED);
    }
    if (name.equals(".") || name.equals("..")) {
      return Optional.of("leads out of its folder");
    }
    if (name.endsWith(".") || name.endsWith(" ") || name.startsWith(" ")) {
      return Optional.of("starts or ends with a space or ends with a dot");
    }
    if (DEVICE.matcher(name.toLowerCase(Locale.ROOT)).matches()) {
      return Optional.of("is the name of a device on some computers");
    }
    return Optional.empty();
  }

  private static boolean unseen(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.UNASSIGNED;
  }
}
