package loadwalk.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Lays images of a disk out as files, each in place of the one before; in memory where there is
 * room for files, as opening each forces its files.
 */
record Disks(Path folder) implements AutoCloseable {
  private static final Path MEMORY = Path.of("/dev/shm");

  static Disks make(Path otherwise) throws IOException {
    return new Disks(
        Files.isWritable(MEMORY)
            ? Files.createTempDirectory(MEMORY, "images")
            : Files.createDirectories(otherwise.resolve("images")));
  }

  @Override
  public void close() throws IOException {
    clear();
  }

  void lay(Platter.Image image) throws IOException {
    clear();
    for (String path : image.folders()) {
      Files.createDirectories(folder.resolve(path));
    }
    for (Map.Entry<String, byte[]> file : image.files().entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue());
    }
  }

  private void clear() throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> inner = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : inner) {
        Files.delete(path);
      }
    }
  }
}
