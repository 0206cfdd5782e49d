package loadwalk.cli;

import java.nio.file.FileSystems;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * How files and folders are made that are for their owner alone, where the system knows such
 * rights; elsewhere they are as the folder above them says.
 */
public final class OwnerOnly {
  private OwnerOnly() {}

  /** Returns how a file is made that only its owner reads. */
  public static FileAttribute<?>[] file() {
    return with("rw-------");
  }

  /** Returns how a folder is made that only its owner enters. */
  public static FileAttribute<?>[] folder() {
    return with("rwx------");
  }

  private static FileAttribute<?>[] with(String rights) {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
