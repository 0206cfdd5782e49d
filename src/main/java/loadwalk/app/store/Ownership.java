package loadwalk.app.store;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;

/**
 * Whose a file or folder is, and what others may do with it; a link is not followed.
 *
 * @param user the number of its owner
 * @param mode its kind and rights, as POSIX counts them
 * @param names how many names it has
 * @param groupOfOwner whether its group bears its owner's name and so, by custom, holds nobody else
 */
record Ownership(int user, int mode, int names, boolean groupOfOwner) {
  private static final int OTHERS_WRITE = 0002;
  private static final int GROUP_WRITES = 0020;
  private static final int NOT_THE_OWNER = 0077;
  private static final int STICKY = 01000;
  private static final int KIND = 0170000;
  private static final int FOLDER = 0040000;
  private static final int FILE = 0100000;
  private static final int ROOT = 0;

  /** Tells whether this system has owners and rights of this kind. */
  static boolean isKnown() {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("unix");
  }

  static Ownership of(Path path) throws IOException {
    Map<String, Object> read =
        Files.readAttributes(path, "unix:uid,mode,nlink,owner,group", LinkOption.NOFOLLOW_LINKS);
    return new Ownership(
        (int) read.get("uid"),
        (int) read.get("mode"),
        (int) read.get("nlink"),
        read.get("owner").toString().equals(read.get("group").toString()));
  }

  /** Returns the number of the user whom this process works for: who owns what it makes. */
  static int userOfProcess() throws IOException {
    Path made = Files.createTempFile("loadwalk", ".user");
    try {
      return of(made).user;
    } finally {
      Files.delete(made);
    }
  }

  boolean isFolder() {
    return (mode & KIND) == FOLDER;
  }

  boolean isFile() {
    return (mode & KIND) == FILE;
  }

  /** Tells whether it is this user's, and nobody else reads, writes or enters it. */
  boolean isOnlyOf(int someone) {
    return user == someone && (mode & NOT_THE_OWNER) == 0;
  }

  /**
   * Tells whether nobody but this user and root can put something else in place of what is in it.
   */
  boolean keepsItsNamesFor(int someone) {
    boolean othersWrite = (mode & OTHERS_WRITE) != 0 || (mode & GROUP_WRITES) != 0 && !groupOfOwner;
    return (user == ROOT || user == someone) && (!othersWrite || (mode & STICKY) != 0);
  }
}
