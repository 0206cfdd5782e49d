package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildTest {
  @TempDir Path folder;

  private Path jar(String name, String code) throws IOException {
    Path jar = folder.resolve(name);
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      for (String entry : new String[] {"One.class", "Two.class"}) {
        ZipEntry fixed = new ZipEntry(entry);
        fixed.setTime(0);
        out.putNextEntry(fixed);
        out.write((entry + code).getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
    return jar;
  }

  @Test
  void looseClasses_haveNoIdentity() {
    assertEquals(Optional.empty(), Build.identity());
  }

  @Test
  void sameContent_isTheSameBuild_whereverItLies() throws IOException {
    assertEquals(Build.ofJar(jar("a.jar", "x")), Build.ofJar(jar("b.jar", "x")));
  }

  @Test
  void changedClassOfTheSameLength_isAnotherBuild() throws IOException {
    Optional<String> one = Build.ofJar(jar("a.jar", "x"));
    assertNotEquals(Optional.empty(), one);
    assertNotEquals(one, Build.ofJar(jar("b.jar", "y")));
  }

  @Test
  void fileThatDoesNotEndLikeAJar_hasNoIdentity() throws IOException {
    byte[] sound = Files.readAllBytes(jar("a.jar", "x"));
    for (int length = 0; length < sound.length; length++) {
      Path cut = Files.write(folder.resolve("cut.jar"), Arrays.copyOf(sound, length));
      assertEquals(Optional.empty(), Build.ofJar(cut), "cut at " + length);
    }
    Path longer = Files.write(folder.resolve("long.jar"), Arrays.copyOf(sound, sound.length + 1));
    assertEquals(Optional.empty(), Build.ofJar(longer));
    assertEquals(Optional.empty(), Build.ofJar(folder));
  }
}
