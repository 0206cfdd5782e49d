package loadwalk.app.store;

import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Forces the entries of a folder to the disk, so that a new or renamed file outlasts a power cut.
 */
final class Folders {
  /** Windows has no way to force a folder; its file system keeps its own journal of names. */
  private static final boolean CAN_FORCE = File.separatorChar == '/';

  private Folders() {}

  static void force(Path folder) throws IOException {
    if (CAN_FORCE) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }
}
