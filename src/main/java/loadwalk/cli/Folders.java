package loadwalk.cli;

import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Makes folders, and forces their entries to the disk, so that these outlast a power cut. */
public final class Folders {
  /** Windows has no way to force a folder; its file system keeps its own journal of names. */
  private static final boolean CAN_FORCE = File.separatorChar == '/';

  private Folders() {}

  /**
   * Makes a folder, and those above it that are not there; each is for its owner alone, and
   * outlasts a power cut.
   */
  public static void make(Path named) throws IOException {
    Path folder = named.toAbsolutePath();
    if (Files.isDirectory(folder)) {
      return;
    }
    make(folder.getParent());
    try {
      Files.createDirectory(folder, OwnerOnly.folder());
    } catch (FileAlreadyExistsException inTheWay) {
      if (!Files.isDirectory(folder)) {
        throw inTheWay;
      }
    }
    force(folder.getParent());
  }

  /** Forces the names in a folder to the disk: of files new, renamed or removed there. */
  public static void force(Path folder) throws IOException {
    if (CAN_FORCE) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }
}
