package loadwalk.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import loadwalk.cli.Folders;
import loadwalk.report.page.Picture;
import loadwalk.text.Sentence;
import loadwalk.text.Sha256;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;

/**
 * Keeps photos beside the journals, each in a folder of its walk, without what the camera wrote
 * into them; what was typed only says where to copy from.
 */
public final class PhotoBox {
  private static final int STEM_LETTERS = 60;
  private static final int SAME_NAME_MOST = 999;

  private final DataHome home;
  private final Path current;

  /** Makes the box of the photos of a data home, for what is typed in the current folder. */
  public PhotoBox(DataHome home) {
    this(home, Path.of(""));
  }

  PhotoBox(DataHome home, Path current) {
    this.home = home;
    this.current = current;
  }

  /** Copies a photo in and tells where it is kept, or why it is not. */
  public Event keep(Effect.KeepPhoto asked) {
    try {
      // As in a shell: what is not absolute starts in the current folder.
      Path source = current.resolve(asked.path());
      Optional<byte[]> bytes = read(source);
      if (bytes.isEmpty()) {
        return new Event.PhotoRefused("There is no file at that path.");
      }
      if (bytes.get().length > Picture.MOST_BYTES) {
        return new Event.PhotoRefused(
            Sentence.of("That file is larger than {} MiB.", Picture.MOST_BYTES >> 20));
      }
      Optional<Picture> picture = Picture.of(bytes.get());
      return picture.isEmpty()
          ? new Event.PhotoRefused(
              Sentence.of(
                  "That file is not a complete PNG or JPEG picture of at most {} million points.",
                  Picture.MOST_MILLION_POINTS))
          : kept(new WalkName(asked.walk()), source, picture.get(), asked.caption());
    } catch (InvalidPathException e) {
      return new Event.PhotoRefused("This computer cannot use that path.");
    } catch (IOException e) {
      return new Event.PhotoRefused(DiskFaults.sentence(e));
    }
  }

  /** Reads a regular file, at most one byte more than is taken; empty where there is none. */
  private static Optional<byte[]> read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(in.readNBytes((int) Picture.MOST_BYTES + 1));
    }
  }

  private Event kept(WalkName walk, Path source, Picture picture, String caption)
      throws IOException {
    Path folder = home.sessions().resolve(walk.photoFolder());
    if (!home.stays(folder)) {
      return new Event.PhotoRefused(
          "The folder of photos is a link that leads out of the data home.");
    }
    Folders.make(folder);
    byte[] bytes = picture.bytes();
    String stem = stem(source);
    for (int number = 1; number <= SAME_NAME_MOST; number++) {
      String name = (number == 1 ? stem : stem + "-" + number) + picture.ending();
      if (isThere(folder.resolve(name), bytes)) {
        String path = "sessions/" + walk.photoFolder() + "/" + name;
        return new Event.PhotoKept(path, caption, Sha256.of(bytes), picture.mediaType());
      }
    }
    return new Event.PhotoRefused(
        Sentence.of("This walk already has {} photos of that name.", SAME_NAME_MOST));
  }

  /** Makes the file; tells whether it holds these bytes now, as it may have before. */
  private static boolean isThere(Path file, byte[] bytes) throws IOException {
    try {
      AtomicFile.writeNew(file, bytes);
      return true;
    } catch (FileAlreadyExistsException taken) {
      return holds(file, bytes);
    } catch (IOException e) {
      throw DiskFaults.of(file, e);
    }
  }

  private static boolean holds(Path file, byte[] bytes) throws IOException {
    boolean same =
        Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
            && Files.size(file) == bytes.length
            && Arrays.equals(Files.readAllBytes(file), bytes);
    if (same) {
      AtomicFile.settle(file);
    }
    return same;
  }

  private static String stem(Path source) {
    String name = source.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String plain =
        (dot > 0 ? name.substring(0, dot) : name)
            .replaceAll("[^A-Za-z0-9_]+", "-")
            .replaceAll("^-+|-+$", "");
    String cut = plain.substring(0, Math.min(STEM_LETTERS, plain.length()));
    return cut.isEmpty() || FileNames.fault(cut).isPresent() ? "photo" : cut;
  }

  /**
   * Returns a photo that a journal names; empty where the path leads elsewhere, nothing can be read
   * there or it is not what was attached.
   */
  Optional<Picture> find(String path, String sha256) {
    try {
      Optional<Path> inside = home.inside(path).inside();
      return inside.isPresent()
          ? read(inside.get()).filter(bytes -> Sha256.of(bytes).equals(sha256)).flatMap(Picture::of)
          : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }
}
