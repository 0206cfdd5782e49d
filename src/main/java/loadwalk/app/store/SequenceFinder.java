package loadwalk.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loadwalk.cli.HomeFiles;
import loadwalk.journal.StorageFault;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;

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

  /**
   * Finds a sequence by name; the user's own goes before a stock one of the same name.
   *
   * @throws StorageFault if something has the name of an own one and cannot be read
   */
  public Optional<Read<Found>> find(String name) throws IOException {
    Optional<byte[]> own =
        FileNames.arePlain(name)
            ? HomeFiles.read(home.root(), "sequences/" + name + ENDING, LARGEST)
            : Optional.empty();
    if (own.isPresent()) {
      return Optional.of(read(name, own.get()));
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
  Offered all() {
    Set<String> names = new LinkedHashSet<>(STOCK);
    List<Sequence> sequences = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    try {
      names.addAll(ownNames());
    } catch (IOException unreadable) {
      // Not one stock sequence stands in for an own one that may have its name.
      return new Offered(sequences, List.of(inAList(unreadable)));
    }
    for (String name : names) {
      try {
        find(name).ifPresent(read -> sort(read, sequences, refused));
      } catch (IOException unreadable) {
        refused.add(inAList(unreadable));
      }
    }
    return new Offered(sequences, refused);
  }

  /** Returns a sentence without its full stop. */
  private static String inAList(IOException unreadable) {
    return DiskFaults.sentence(unreadable).replaceFirst("\\.$", "");
  }

  private static void sort(Read<Found> read, List<Sequence> sequences, List<String> refused) {
    read.found().ifPresent(found -> sequences.add(found.sequence()));
    read.faults().stream().limit(1).forEach(fault -> refused.add(fault.text()));
  }

  private Set<String> ownNames() throws IOException {
    Set<String> names = new TreeSet<>();
    for (Path file : HomeFiles.list(home.root(), "sequences")) {
      String name = file.getFileName().toString();
      if (name.endsWith(ENDING)) {
        names.add(name.substring(0, name.length() - ENDING.length()));
      }
    }
    return names;
  }

  private static Read<Found> read(String name, byte[] bytes) {
    Read<Sequence> read = SequenceReader.readNamed(bytes, name + ENDING, name);
    String text = new String(bytes, StandardCharsets.UTF_8);
    return Read.of(read.found().map(s -> new Found(s, text)), read.faults());
  }
}
