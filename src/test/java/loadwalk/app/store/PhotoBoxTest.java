package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import loadwalk.Needs;
import loadwalk.report.Photos;
import loadwalk.report.page.Picture;
import loadwalk.text.Sha256;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoBoxTest {
  private static final String NO_PICTURE =
      "That file is not a complete PNG or JPEG picture of at most 250 million points.";
  private static final String WALK = "2026-03-14-brightmoor";

  @TempDir Path folder;

  private Path root;
  private Path here;
  private Path elsewhere;
  private PhotoBox box;

  @BeforeEach
  void make() throws IOException {
    root = Files.createDirectories(folder.resolve("home"));
    here = Files.createDirectories(folder.resolve("here"));
    elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    box = new PhotoBox(new DataHome(root), here);
  }

  private Event keep(String path) {
    return box.keep(new Effect.KeepPhoto(WALK, path, "the bench"));
  }

  private String refusal(String path) {
    return assertInstanceOf(Event.PhotoRefused.class, keep(path), path).why();
  }

  private Event.PhotoKept kept(String path) {
    Event answer = keep(path);
    return assertInstanceOf(Event.PhotoKept.class, answer, answer::toString);
  }

  private List<String> photos() throws IOException {
    Path at = root.resolve("sessions/" + WALK + ".photos");
    if (!Files.exists(at)) {
      return List.of();
    }
    try (var files = Files.list(at)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void photoInTheCurrentFolder_isCopiedClean() throws IOException {
    Files.write(here.resolve("bench.png"), Photos.png());
    Event.PhotoKept kept = kept("bench.png");
    assertEquals("sessions/" + WALK + ".photos/bench.png", kept.path());
    assertEquals("the bench", kept.caption());
    assertEquals("image/png", kept.mediaType());
    byte[] bytes = Files.readAllBytes(root.resolve(kept.path()));
    assertEquals(Sha256.of(bytes), kept.sha256());
    assertFalse(new String(bytes, StandardCharsets.ISO_8859_1).contains(Photos.SECRET));
    assertArrayEquals(Photos.png(), Files.readAllBytes(here.resolve("bench.png")), "the source");
  }

  @Test
  void absolutePath_isCopiedIn_andFoundAgain() throws IOException {
    Path source = Files.write(elsewhere.resolve("IMG 0001 (ü).JPG"), Photos.jpeg());
    Event.PhotoKept kept = kept(source.toString());
    assertEquals("sessions/" + WALK + ".photos/IMG-0001.jpg", kept.path());
    assertTrue(box.find(kept.path(), kept.sha256()).isPresent());
    assertEquals(Optional.empty(), box.find(kept.path(), "0".repeat(64)), "another hash");
    Files.delete(root.resolve(kept.path()));
    assertEquals(Optional.empty(), box.find(kept.path(), kept.sha256()), "gone");
  }

  @Test
  void samePhotoTwice_isKeptOnce_anotherOfItsNameBesideIt() throws IOException {
    Files.write(here.resolve("a.png"), Photos.png());
    Path other = Files.write(elsewhere.resolve("a.png"), Photos.jpeg());
    assertEquals(kept("a.png"), kept("a.png"));
    assertTrue(kept(other.toString()).path().endsWith("/a.jpg"));
    Files.createDirectories(root.resolve("sessions/" + WALK + ".photos"));
    Files.writeString(root.resolve("sessions/" + WALK + ".photos/b.png"), "something else");
    Files.write(here.resolve("b.png"), Photos.png());
    assertTrue(kept("b.png").path().endsWith("/b-2.png"));
    assertEquals(List.of("a.jpg", "a.png", "b-2.png", "b.png"), photos());
  }

  @Test
  void fileOfTheSameNameAndLength_isNotTakenForThePhoto() throws IOException {
    Files.write(here.resolve("a.png"), Photos.png());
    byte[] other = Files.readAllBytes(root.resolve(kept("a.png").path()));
    other[other.length / 2] ^= 1;
    Files.write(root.resolve("sessions/" + WALK + ".photos/a.png"), other);
    Event.PhotoKept kept = kept("a.png");
    assertTrue(kept.path().endsWith("/a-2.png"), kept.path());
    assertTrue(box.find(kept.path(), kept.sha256()).isPresent());
  }

  @Test
  void relativePath_startsInTheCurrentFolder_andMayLeaveIt() throws IOException {
    Files.write(elsewhere.resolve("a.png"), Photos.png());
    Files.write(root.resolve("in-the-home.png"), Photos.png());
    Files.createSymbolicLink(here.resolve("link.png"), elsewhere.resolve("a.png"));
    assertEquals("There is no file at that path.", refusal("in-the-home.png"));
    kept("../elsewhere/a.png");
    kept("./link.png");
    kept("../home/in-the-home.png");
    assertEquals(List.of("a.png", "in-the-home.png", "link.png"), photos());
  }

  @Test
  void pathThatIsNone_isRefused() {
    for (String path : List.of("", "a\u0000.png", "con", "x".repeat(3000))) {
      assertTrue(refusal(path).endsWith("."), path);
    }
  }

  @Test
  void pipeOrDevice_isRefusedAtOnce() throws Exception {
    Needs.tool("mkfifo");
    Path pipe = here.resolve("pipe.png");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    for (String path : List.of("pipe.png", "/dev/zero")) {
      assertEquals(
          "There is no file at that path.",
          assertTimeoutPreemptively(Duration.ofSeconds(5), () -> refusal(path)));
    }
  }

  @Test
  void pictureOfASizeThatCannotBe_isRefused() throws IOException {
    int[][] sizes = {{0, 0}, {0, 40}, {40, 0}, {30_000, 30_000}, {4000, 3000}};
    for (int[] size : sizes) {
      Files.write(here.resolve("p.png"), Photos.stating(size[0], size[1], 1000));
      assertEquals(NO_PICTURE, refusal("p.png"), size[0] + " x " + size[1]);
      byte[] photo = Photos.jpeg(size[0], size[1]);
      Files.write(here.resolve("p.jpg"), photo);
      boolean canBe = size[0] == 4000;
      assertEquals(canBe, keep("p.jpg") instanceof Event.PhotoKept, size[0] + " x " + size[1]);
    }
    Files.write(here.resolve("whole.png"), Photos.stating(4000, 3000, 1500));
    kept("whole.png");
  }

  @Test
  void folderOfPhotosThatLeadsOut_isRefused() throws IOException {
    Files.write(here.resolve("a.png"), Photos.png());
    Files.createDirectories(root.resolve("sessions"));
    Files.createSymbolicLink(root.resolve("sessions/" + WALK + ".photos"), elsewhere);
    assertTrue(refusal("a.png").contains("leads out of the data home"));
    try (var files = Files.list(elsewhere)) {
      assertEquals(0, files.count());
    }
  }

  @Test
  void whatIsNoPhoto_isRefusedWithASentence() throws IOException {
    assertEquals("There is no file at that path.", refusal("none.png"));
    Files.createDirectories(here.resolve("folder.png"));
    assertEquals("There is no file at that path.", refusal("folder.png"));
    Files.writeString(here.resolve("drawing.png"), "<svg onload=\"alert(1)\"/>");
    assertEquals(NO_PICTURE, refusal("drawing.png"));
    try (RandomAccessFile large = new RandomAccessFile(here.resolve("l.png").toFile(), "rw")) {
      large.setLength(Picture.MOST_BYTES + 1);
    }
    assertEquals("That file is larger than 20 MiB.", refusal("l.png"));
    assertEquals(List.of(), photos());
  }

  @Test
  void nameOfTheSource_neverSteersTheCopy() throws IOException {
    for (String name : List.of("nul.png", "-rf.png", "..png", "…‮.png", "a;b&c.png")) {
      Path source = elsewhere.resolve(name);
      Files.write(source, Photos.png());
      assertTrue(
          kept(source.toString()).path().matches("sessions/[a-z0-9-]+\\.photos/\\w[\\w-]*\\.png"));
    }
  }

  @Test
  void pathInAJournal_isFollowedNowhereElse() throws IOException {
    byte[] clean = Picture.of(Photos.png()).orElseThrow().bytes();
    Path out = Files.write(elsewhere.resolve("a.png"), clean);
    String hash = Sha256.of(clean);
    assertEquals(Optional.empty(), box.find("../elsewhere/a.png", hash));
    assertEquals(Optional.empty(), box.find(out.toString(), hash));
    assertEquals(Optional.empty(), box.find("", hash));
  }
}
