package loadwalk.disk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a folder holds before a run; all of it is taken as safe on the disk.
 *
 * @param folders the folders in it, outer ones first
 * @param files the bytes of its files by path
 */
record Before(List<String> folders, Map<String, byte[]> files) {
  static Before of(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> paths = all.filter(path -> !path.equals(folder)).sorted().toList();
      Map<String, byte[]> files = new TreeMap<>();
      for (Path path : paths) {
        if (Files.isRegularFile(path)) {
          files.put(folder.relativize(path).toString(), Files.readAllBytes(path));
        }
      }
      return new Before(
          paths.stream()
              .filter(Files::isDirectory)
              .map(path -> folder.relativize(path).toString())
              .toList(),
          files);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
