package loadwalk.disk;

import java.util.Locale;

/**
 * One thing a program asked of the system, as a tracer wrote it down. Paths are relative to the
 * folder that is watched.
 *
 * @param kind what was asked
 * @param file the number of the file, whatever its name is just then
 * @param path where it is
 * @param to where it is moved
 * @param offset where it is written, or cut
 * @param bytes what is written, or said
 * @param done whether the system did it
 * @param name the system's name of the call
 * @param order the how manieth of its thread's calls of this name it is, from 1
 */
record Call(
    Kind kind,
    int file,
    String path,
    String to,
    long offset,
    byte[] bytes,
    boolean done,
    String name,
    int order) {

  enum Kind {
    MAKE,
    MAKE_FOLDER,
    WRITE,
    CUT,
    FORCE,
    RENAME,
    REMOVE,
    SAY
  }

  boolean is(Kind wanted) {
    return kind == wanted;
  }

  /** Returns the folder its path lies in; empty for the watched folder. */
  String folder() {
    int slash = path.lastIndexOf('/');
    return slash < 0 ? "" : path.substring(0, slash);
  }

  /** Returns it in words, files by their names. */
  String words() {
    return switch (kind) {
      case SAY -> "say";
      case RENAME -> "rename " + path + " to " + to;
      case MAKE_FOLDER -> "make folder " + path;
      default -> kind.name().toLowerCase(Locale.ROOT) + " " + path;
    };
  }
}
