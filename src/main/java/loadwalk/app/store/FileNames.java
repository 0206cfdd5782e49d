package loadwalk.app.store;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Says which names a file may have so that every platform takes it and none reads more into it. */
final class FileNames {
  static final int LONGEST = 200;

  private static final Set<String> DEVICES =
      Set.of("con", "prn", "aux", "nul", "conin$", "conout$");
  private static final Set<String> NUMBERED_DEVICES = Set.of("com", "lpt");
  private static final String DEVICE_NUMBERS = "0123456789¹²³";
  private static final String RESERVED = "<>:\"|?*/\\";

  private FileNames() {}

  /** Says in one sentence why a name cannot be part of a path, or nothing if it can. */
  static Optional<String> fault(String name) {
    if (name.isEmpty() || name.isBlank()) {
      return Optional.of("A file name cannot be empty.");
    }
    if (name.length() > LONGEST) {
      return Optional.of(Sentence.of("A file name cannot be longer than {} characters.", LONGEST));
    }
    if (holdsUnseen(name)) {
      return Optional.of("A file name cannot hold a control or other invisible character.");
    }
    if (holdsReserved(name)) {
      return Optional.of(Sentence.of("A file name cannot hold any of these: {}", RESERVED));
    }
    if (name.equals(".") || name.equals("..")) {
      return Optional.of("A file name cannot be «.» or «..».");
    }
    if (name.endsWith(".") || name.endsWith(" ") || name.startsWith(" ")) {
      return Optional.of("A file name cannot start or end with a space, or end with a dot.");
    }
    if (isDevice(name.toLowerCase(Locale.ROOT))) {
      return Optional.of(
          Sentence.of("{} is the name of a device on some computers.", Visible.quoted(name)));
    }
    return Optional.empty();
  }

  /** Tells whether every part of a path, divided by slashes, may have its name. */
  static boolean arePlain(String path) {
    for (String part : path.split("[/\\\\]", -1)) {
      if (fault(part).isPresent()) {
        return false;
      }
    }
    return true;
  }

  private static boolean holdsUnseen(String name) {
    for (int at = 0; at < name.length(); at += Character.charCount(name.codePointAt(at))) {
      if (unseen(name.codePointAt(at))) {
        return true;
      }
    }
    return false;
  }

  private static boolean holdsReserved(String name) {
    for (int at = 0; at < name.length(); at++) {
      if (RESERVED.indexOf(name.charAt(at)) >= 0) {
        return true;
      }
    }
    return false;
  }

  /** Windows takes a device's name with any ending for the device. */
  private static boolean isDevice(String name) {
    int dot = name.indexOf('.');
    String stem = dot < 0 ? name : name.substring(0, dot);
    int last = stem.length() - 1;
    return DEVICES.contains(stem)
        || last > 0
            && NUMBERED_DEVICES.contains(stem.substring(0, last))
            && DEVICE_NUMBERS.indexOf(stem.charAt(last)) >= 0;
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
