package loadwalk.app.store;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Says which names a file may have so that every platform takes it and none reads more into it. */
final class FileNames {
  static final int LONGEST = 200;

  private static final Set<String> DEVICES =
      Set.of("con", "prn", "aux", "nul", "conin$", "conout$");
  private static final Set<String> NUMBERED_DEVICES = Set.of("com", "lpt");
  private static final String DEVICE_NUMBERS = "0123456789¹²³";
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
    if (holdsUnseen(name)) {
      return Optional.of("holds a control or other invisible character");
    }
    if (holdsReserved(name)) {
      return Optional.of("holds one of the characters " + RESERVED);
    }
    if (name.equals(".") || name.equals("..")) {
      return Optional.of("leads out of its folder");
    }
    if (name.endsWith(".") || name.endsWith(" ") || name.startsWith(" ")) {
      return Optional.of("starts or ends with a space or ends with a dot");
    }
    if (isDevice(name.toLowerCase(Locale.ROOT))) {
      return Optional.of("is the name of a device on some computers");
    }
    return Optional.empty();
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
