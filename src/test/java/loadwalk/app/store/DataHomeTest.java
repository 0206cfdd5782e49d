package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import loadwalk.app.store.DataHome.Surroundings;
import loadwalk.app.store.TypedPath.Inside;
import loadwalk.app.store.TypedPath.Outside;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DataHomeTest {
  @TempDir Path folder;

  private Path chosen(Optional<Path> home, Map<String, String> environment, String system) {
    Surroundings around =
        new Surroundings(home, folder.resolve("here"), environment, system, folder.resolve("user"));
    return DataHome.choose(around).root();
  }

  @Test
  void choose_withHomeGiven_takesItBeforeAllElse() throws IOException {
    Files.createDirectories(folder.resolve("here/sequences"));
    Path given = folder.resolve("given");
    assertEquals(
        given, chosen(Optional.of(given), Map.of("XDG_DATA_HOME", folder.toString()), "Linux"));
  }

  @Test
  void choose_whereTheCurrentFolderHoldsSequences_takesIt() throws IOException {
    Files.createDirectories(folder.resolve("here/sequences"));
    assertEquals(folder.resolve("here"), chosen(Optional.empty(), Map.of(), "Linux"));
  }

  @Test
  void choose_whereSequencesIsAFile_takesTheUsersFolder() throws IOException {
    Files.createDirectories(folder.resolve("here"));
    Files.createFile(folder.resolve("here/sequences"));
    assertEquals(
        folder.resolve("user/.local/share/loadwalk"), chosen(Optional.empty(), Map.of(), "Linux"));
  }

  @Test
  void choose_byPlatform_followsItsCustom() {
    String absolute = folder.resolve("data").toString();
    Path data = folder.resolve("data/loadwalk");
    Path linux = folder.resolve("user/.local/share/loadwalk");
    Optional<Path> none = Optional.empty();
    assertEquals(data, chosen(none, Map.of("XDG_DATA_HOME", absolute), "Linux"));
    assertEquals(linux, chosen(none, Map.of("XDG_DATA_HOME", "relative"), "Linux"));
    assertEquals(linux, chosen(none, Map.of("XDG_DATA_HOME", ""), "FreeBSD"));
    assertEquals(linux, chosen(none, Map.of("XDG_DATA_HOME", "a\u0000b"), "Linux"));
    assertEquals(
        folder.resolve("user/Library/Application Support/loadwalk"),
        chosen(none, Map.of("XDG_DATA_HOME", absolute), "Mac OS X"));
    assertEquals(data, chosen(none, Map.of("APPDATA", absolute), "Windows 11"));
    assertEquals(
        folder.resolve("user/AppData/Roaming/loadwalk"), chosen(none, Map.of(), "Windows 11"));
  }

  @Test
  void choose_forAUserJavaKnowsNoFolderOf_goesByTheEnvironment() {
    Map<String, String> environment = Map.of("HOME", folder.resolve("user").toString());
    Surroundings around =
        new Surroundings(Optional.empty(), folder, environment, "Linux", Path.of("?"));
    assertEquals(folder.resolve("user/.local/share/loadwalk"), DataHome.choose(around).root());
  }

  @Test
  void inside_ofAPlainPath_isUnderTheRoot() {
    DataHome home = new DataHome(folder);
    assertEquals(
        new Inside(folder.resolve("sessions/a/scope 3.png")),
        home.inside("sessions/a/scope 3.png"));
    assertEquals(new Inside(folder.resolve("a/b")), home.inside("a\\b"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/",
        "/etc/passwd",
        "../x",
        "a/../../x",
        "a/..",
        "..\\x",
        "C:\\x",
        "\\\\host\\share",
        "a//b",
        "a/",
        "a\u0000b",
        "~/x\n",
        "a/nul",
        "a/b.",
        "file:///etc/passwd"
      })
  void inside_ofAHostilePath_isOutside(String typed) {
    assertInstanceOf(Outside.class, new DataHome(folder).inside(typed));
  }

  @Test
  void inside_ofAPathWithALongPart_isOutside() {
    assertInstanceOf(Outside.class, new DataHome(folder).inside("a/" + "x".repeat(300)));
  }

  @Test
  void inside_throughALinkOutOfTheHome_isOutside() throws IOException {
    Path root = Files.createDirectories(folder.resolve("home"));
    Path out = Files.createDirectories(folder.resolve("out"));
    Files.createFile(out.resolve("secret"));
    Files.createSymbolicLink(root.resolve("link"), out);
    Files.createSymbolicLink(root.resolve("file"), out.resolve("secret"));
    Files.createSymbolicLink(root.resolve("dangling"), folder.resolve("nowhere"));
    DataHome home = new DataHome(root);
    for (String typed : new String[] {"link", "link/secret", "link/new", "file", "dangling"}) {
      Outside outside = assertInstanceOf(Outside.class, home.inside(typed), typed);
      assertEquals("The path leads out of the data home through a link.", outside.why());
    }
  }

  @Test
  void inside_throughALinkThatStays_isInside() throws IOException {
    Path root = Files.createDirectories(folder.resolve("home"));
    Files.createDirectories(root.resolve("real"));
    Files.createSymbolicLink(root.resolve("link"), root.resolve("real"));
    assertInstanceOf(Inside.class, new DataHome(root).inside("link/new"));
  }

  @Test
  void inside_ofAHomeThatIsItselfALink_isInside() throws IOException {
    Path real = Files.createDirectories(folder.resolve("real"));
    Files.createDirectories(real.resolve("sessions"));
    Path root = Files.createSymbolicLink(folder.resolve("home"), real);
    DataHome home = new DataHome(root);
    assertInstanceOf(Inside.class, home.inside("sessions/x"));
    assertTrue(home.stays(home.sessions()));
  }
}
