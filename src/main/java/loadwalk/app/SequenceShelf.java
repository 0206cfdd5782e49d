package loadwalk.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;

/** Finds sequences: the user's own in the data home, the stock ones in the jar. */
final class SequenceShelf {
  /** The stock sequences, in the order they are offered. */
  static final List<String> STOCK =
      List.of("full-walk", "stereo-only", "bridged-only", "rated-conditions", "low-ohm-recheck");

  private static final String ENDING = ".json";
  private static final int LARGEST = 1 << 20;

  private final DataHome home;

  SequenceShelf(DataHome home) {
    this.home = home;
  }

  /**
   * A sequence with the text it was read from.
   *
   * @param sequence the sequence
   * @param text the file's text
   */
  record Found(Sequence sequence, String text) {}

  /** Finds a sequence by name; the user's own goes before a stock one of the same name. */
  Optional<Read<Found>> find(String name) throws IOException {
    Located located = home.inside("sequences/" + name + ENDING);
    if (located instanceof Located.Inside inside && Files.isRegularFile(inside.path())) {
      return Optional.of(read(name + ENDING, bytes(inside.path())));
    }
    try (InputStream in =
        SequenceShelf.class.getResourceAsStream("/loadwalk/sequences/" + name + ENDING)) {
      boolean stock = STOCK.contains(name) && in != null;
      return stock ? Optional.of(read(name + ENDING, in.readAllBytes())) : Optional.empty();
    }
  }

  /** Returns every sequence that can be read, stock names first. */
  List<Sequence> all() throws IOException {
    Map<String, Sequence> own = new TreeMap<>();
    List<Sequence> all = new ArrayList<>();
    for (String name : STOCK) {
      find(name).flatMap(Read::found).ifPresent(f -> all.add(f.sequence()));
    }
    if (Files.isDirectory(home.sequences())) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(home.sequences(), "*" + ENDING)) {
        for (Path file : files) {
          String name = file.getFileName().toString().replaceFirst("\\.json$", "");
          if (!STOCK.contains(name)) {
            find(name).flatMap(Read::found).ifPresent(f -> own.put(name, f.sequence()));
          }
        }
      }
    }
    all.addAll(own.values());
    return all;
  }

  private static Read<Found> read(String file, byte[] bytes) {
    Read<Sequence> read = SequenceReader.read(bytes, file);
    String text = new String(bytes, StandardCharsets.UTF_8);
    return Read.of(read.found().map(s -> new Found(s, text)), read.faults());
  }

  private static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      throw new IOException(file.getFileName() + " is larger than any sequence");
    }
    return Files.readAllBytes(file);
  }
}
