package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import loadwalk.Needs;
import loadwalk.app.store.DataHome.Surroundings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files whose code is run: nothing that another could have put there is handed out. */
class PrivateFolderTest {
  private static final byte[] CODE = "code".getBytes(StandardCharsets.UTF_8);
  private static final int SOMEBODY = 65534;

  @TempDir Path user;

  private PrivateFolder folder;
  private Path file;

  @BeforeEach
  void make() throws IOException {
    Needs.that(Ownership.isKnown(), "files have no POSIX owners here");
    folder = at(Map.of(), "Linux");
    file = folder.file("part.so", CODE);
  }

  private PrivateFolder at(Map<String, String> environment, String system) {
    return PrivateFolder.ofUser(
        new Surroundings(Optional.empty(), user, environment, system, user.resolve("home")));
  }

  private void refused(String said) {
    String why = assertThrows(IOException.class, () -> folder.file("part.so", CODE)).getMessage();
    assertTrue(why.contains(said), why);
  }

  private static void rights(Path path, String letters) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(letters));
  }

  @Test
  void file_liesInTheCacheFolderOfThePlatform_forItsUserAlone() throws IOException {
    assertEquals(user.resolve("home/.cache/loadwalk/part.so").toRealPath(), file);
    assertArrayEquals(CODE, Files.readAllBytes(file));
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    assertEquals(
        "rwx------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())));
    Path named = user.toRealPath().resolve("named");
    assertEquals(
        named.resolve("loadwalk/part.so"),
        at(Map.of("XDG_CACHE_HOME", named.toString()), "FreeBSD").file("part.so", CODE));
    assertEquals(
        named.resolve("loadwalk/part.so"),
        at(Map.of("LOCALAPPDATA", named.toString()), "Windows 11").file("part.so", CODE));
    assertEquals(
        user.toRealPath().resolve("home/Library/Caches/loadwalk/part.so"),
        at(Map.of(), "Mac OS X").file("part.so", CODE));
  }

  @Test
  void fileThatIsThere_isHandedOutAgain_asItIs() throws IOException {
    Object before = Files.getAttribute(file, "unix:ino");
    assertEquals(file, folder.file("part.so", CODE));
    assertEquals(before, Files.getAttribute(file, "unix:ino"));
  }

  @Test
  void fileWithOtherBytes_isRefused() throws IOException {
    for (String other : new String[] {"cod", "code ", "cOde", ""}) {
      Files.writeString(file, other);
      refused("is not what Loadwalk put there");
      assertEquals(other, Files.readString(file));
    }
  }

  @Test
  void fileThatOthersMayHaveAHandIn_isRefused() throws IOException {
    for (String letters : new String[] {"rw----rw-", "rw-rw----", "rw-r-----"}) {
      rights(file, letters);
      refused("is not a file of yours alone");
    }
    rights(file, "rw-------");
    Path second = Files.createLink(user.resolve("second"), file);
    refused("is not a file of yours alone");
    Files.delete(file);
    Files.createSymbolicLink(file, second);
    refused("is not a file of yours alone");
  }

  @Test
  void whatIsNoFile_isRefused() throws Exception {
    Files.delete(file);
    assertEquals(0, new ProcessBuilder("mkfifo", "-m600", file.toString()).start().waitFor());
    refused("is not a file of yours alone");
    Files.delete(file);
    Files.createDirectory(file);
    rights(file, "rwx------");
    refused("is not a file of yours alone");
  }

  @Test
  void fileInPlaceOfTheFolder_isRefused() throws IOException {
    Files.move(file.getParent(), user.resolve("moved"));
    Files.createFile(file.getParent());
    rights(file.getParent(), "rw-------");
    refused("must be a folder that is yours alone");
  }

  @Test
  void folderThatOthersMayEnter_isRefused() throws IOException {
    for (String letters : new String[] {"rwxrwxrwx", "rwxr-xr-x", "rwx--x---"}) {
      rights(file.getParent(), letters);
      refused("must be a folder that is yours alone");
    }
  }

  @Test
  void folderThatIsALink_isRefused() throws IOException {
    Path moved = Files.move(file.getParent(), user.resolve("moved"));
    Files.createSymbolicLink(file.getParent(), moved);
    refused("must be a folder that is yours alone");
  }

  @Test
  void folderBelowOneThatOthersMayChange_isRefused_unlessNobodyMovesWhatIsNotHis()
      throws IOException {
    for (Path above : new Path[] {file.getParent().getParent(), user.resolve("home")}) {
      for (String letters : new String[] {"rwx---rwx", "rwx----wx"}) {
        rights(above, letters);
        refused("others may change the folder " + above.toRealPath());
      }
      // As /tmp is.
      Files.setAttribute(above, "unix:mode", 01777);
      assertEquals(file, folder.file("part.so", CODE));
      rights(above, "rwxr-xr-x");
    }
  }

  @Test
  void whatSomebodyElseOwns_isRefused() throws IOException {
    Needs.that(Ownership.userOfProcess() == 0, "only root gives files away");
    Files.setAttribute(file, "unix:uid", SOMEBODY);
    refused("is not a file of yours alone");
    Files.setAttribute(file, "unix:uid", 0);
    Files.setAttribute(file.getParent(), "unix:uid", SOMEBODY);
    refused("must be a folder that is yours alone");
    Files.setAttribute(file.getParent(), "unix:uid", 0);
    Files.setAttribute(user.resolve("home"), "unix:uid", SOMEBODY);
    refused("others may change the folder");
  }

  @Test
  void folderOpenToAGroup_isRefused_unlessTheGroupBearsItsOwnersName() throws IOException {
    Needs.that(Ownership.userOfProcess() == 0, "only root gives files away");
    Path above = user.resolve("home");
    rights(above, "rwxrwxr-x");
    assertEquals(file, folder.file("part.so", CODE));
    Files.setAttribute(above, "unix:gid", SOMEBODY);
    refused("others may change the folder");
  }

  @Test
  void folderThatCannotBeMade_isToldWithTheReason() throws IOException {
    Path inTheWay = Files.createFile(user.resolve("file"));
    for (Path cache : new Path[] {inTheWay, inTheWay.resolve("below")}) {
      PrivateFolder nowhere = at(Map.of("XDG_CACHE_HOME", cache.toString()), "Linux");
      String why =
          assertThrows(IOException.class, () -> nowhere.file("part.so", CODE)).getMessage();
      assertTrue(why.startsWith("the folder " + cache + " cannot be used: "), why);
    }
  }

  @Test
  void userWithoutAFolder_isToldWhatToSet() {
    Surroundings nowhere =
        new Surroundings(Optional.empty(), user, Map.of(), "Linux", Path.of("?"));
    String why =
        assertThrows(IOException.class, () -> PrivateFolder.ofUser(nowhere).file("part.so", CODE))
            .getMessage();
    assertTrue(why.contains("set XDG_CACHE_HOME"), why);
  }
}
