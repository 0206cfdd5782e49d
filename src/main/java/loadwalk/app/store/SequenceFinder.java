package loadwalk.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loadwalk.journal.FaultKind;
import loadwalk.journal.StorageFault;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Finds sequences: the user's own in the data home, the stock ones in the jar. */
public final class SequenceFinder {
  /** The stock sequences, in the order they are offered. */
  static final List<String> STOCK =
      List.of("full-walk", "stereo-only", "bridged-only", "rated-conditions", "low-ohm-recheck");

  private static final String ENDING = ".json";
  private static final int LARGEST = 1 << 20;

  private final DataHome home;

  /** Makes the finder of the sequences of a data home. */
  public SequenceFinder(DataHome home) {
    this.home = home;
  }

  /**
   * A sequence with the text it was read from.
   *
   * @param sequence the sequence
   * @param text the file's text
   */
  public record Found(Sequence sequence, String text) {}

  /** Finds a sequence by name; the user's own goes before a stock one of the same name. */
  public Optional<Read<Found>> find(String name) throws IOException {
    Optional<Path> own = home.inside("sequences/" + name + ENDING).inside();
    if (own.isPresent() && Files.isRegularFile(own.get())) {
      return Optional.of(read(name, bytes(own.get())));
    }
    try (InputStream in =
        SequenceFinder.class.getResourceAsStream("/loadwalk/sequences/" + name + ENDING)) {
      boolean stock = STOCK.contains(name) && in != null;
      return stock ? Optional.of(read(name, in.readAllBytes())) : Optional.empty();
    }
  }

  /**
   * What can be walked.
   *
   * @param sequences every sequence that can be read, stock names first
   * @param refused a sentence for each file that cannot, with what is wrong first
   */
  record Offered(List<Sequence> sequences, List<String> refused) {}

  /** Returns what can be walked, and what cannot with the reason. */
  Offered all() throws IOException {
    Set<String> names = new LinkedHashSet<>(STOCK);
    names.addAll(ownNames());
    List<Sequence> sequences = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    for (String name : names) {
      try {
        find(name).ifPresent(read -> sort(read, sequences, refused));
      } catch (IOException unreadable) {
        refused.add(Sentence.of("{}{}: the file cannot be read", Visible.line(name, 64), ENDING));
      }
    }
    return new Offered(sequences, refused);
  }

  private static void sort(Read<Found> read, List<Sequence> sequences, List<String> refused) {
    read.found().ifPresent(found -> sequences.add(found.sequence()));
    read.faults().stream().limit(1).forEach(fault -> refused.add(fault.text()));
  }

  private Set<String> ownNames() throws IOException {
    Set<String> names = new TreeSet<>();
    if (Files.isDirectory(home.sequences())) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(home.sequences(), "*" + ENDING)) {
        files.forEach(
            file -> names.add(file.getFileName().toString().replaceFirst("\\.json$", "")));
      }
    }
    return names;
  }

  private static Read<Found> read(String name, byte[] bytes) {
    Read<Sequence> read = SequenceReader.readNamed(bytes, name + ENDING, name);
    String text = new String(bytes, StandardCharsets.UTF_8);
    return Read.of(read.found().map(s -> new Found(s, text)), read.faults());
  }

  private static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      throw new StorageFault(
          FaultKind.BROKEN,
          Sentence.of(
              "{} is larger than {} MiB and was not read.",
              Visible.name(file.getFileName().toString()),
              LARGEST >> 20),
          null);
    }
    return Files.readAllBytes(file);
  }
}
