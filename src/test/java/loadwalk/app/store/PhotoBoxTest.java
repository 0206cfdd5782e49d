package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.report.Photos;
import loadwalk.report.page.Picture;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoBoxTest {
  private static final String WALK = "2026-03-14-brightmoor";

  @TempDir Path folder;

  private Path root;
  private Path elsewhere;
  private PhotoBox box;

  @BeforeEach
  void make() throws IOException {
    root = Files.createDirectories(folder.resolve("home"));
    elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    box = new PhotoBox(new DataHome(root));
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
  void photoInTheDataHome_isCopiedClean() throws IOException {
    Files.write(root.resolve("bench.png"), Photos.png());
    Event.PhotoKept kept = kept("bench.png");
    assertEquals("sessions/" + WALK + ".photos/bench.png", kept.path());
    assertEquals("the bench", kept.caption());
    assertEquals("image/png", kept.mediaType());
    byte[] bytes = Files.readAllBytes(root.resolve(kept.path()));
    assertEquals(Picture.sha256(bytes), kept.sha256());
    assertFalse(new String(bytes, StandardCharsets.ISO_8859_1).contains(Photos.SECRET));
    assertArrayEquals(Photos.png(), Files.readAllBytes(root.resolve("bench.png")), "the source");
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
    Files.write(root.resolve("a.png"), Photos.png());
    Path other = Files.write(elsewhere.resolve("a.png"), Photos.jpeg());
    assertEquals(kept("a.png"), kept("a.png"));
    assertTrue(kept(other.toString()).path().endsWith("/a.jpg"));
    Files.createDirectories(root.resolve("sessions/" + WALK + ".photos"));
    Files.writeString(root.resolve("sessions/" + WALK + ".photos/b.png"), "something else");
    Files.write(root.resolve("b.png"), Photos.png());
    assertTrue(kept("b.png").path().endsWith("/b-2.png"));
    assertEquals(List.of("a.jpg", "a.png", "b-2.png", "b.png"), photos());
  }

  @Test
  void fileOfTheSameNameAndLength_isNotTakenForThePhoto() throws IOException {
    Files.write(root.resolve("a.png"), Photos.png());
    byte[] other = Files.readAllBytes(root.resolve(kept("a.png").path()));
    other[other.length / 2] ^= 1;
    Files.write(root.resolve("sessions/" + WALK + ".photos/a.png"), other);
    Event.PhotoKept kept = kept("a.png");
    assertTrue(kept.path().endsWith("/a-2.png"), kept.path());
    assertTrue(box.find(kept.path(), kept.sha256()).isPresent());
  }

  @Test
  void pathOutOfTheDataHome_isRefused() throws IOException {
    Files.write(elsewhere.resolve("a.png"), Photos.png());
    for (String path :
        List.of(
            "../elsewhere/a.png",
            "..\\elsewhere\\a.png",
            "sessions/../../elsewhere/a.png",
            "./a.png",
            "a\u0000.png",
            "a\u202e.png",
            "con",
            "a//b.png",
            "x".repeat(3000))) {
      assertTrue(refusal(path).endsWith("."), path);
    }
    Files.createSymbolicLink(root.resolve("link.png"), elsewhere.resolve("a.png"));
    assertEquals("The path leads out of the data home through a link.", refusal("link.png"));
    assertEquals(List.of(), photos());
  }

  @Test
  void folderOfPhotosThatLeadsOut_isRefused() throws IOException {
    Files.write(root.resolve("a.png"), Photos.png());
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
    Files.createDirectories(root.resolve("folder.png"));
    assertEquals("There is no file at that path.", refusal("folder.png"));
    Files.writeString(root.resolve("drawing.png"), "<svg onload=\"alert(1)\"/>");
    assertEquals("That file is not a complete PNG or JPEG picture.", refusal("drawing.png"));
    try (RandomAccessFile large = new RandomAccessFile(root.resolve("l.png").toFile(), "rw")) {
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
    String hash = Picture.sha256(clean);
    assertEquals(Optional.empty(), box.find("../elsewhere/a.png", hash));
    assertEquals(Optional.empty(), box.find(out.toString(), hash));
    assertEquals(Optional.empty(), box.find("", hash));
  }
}
