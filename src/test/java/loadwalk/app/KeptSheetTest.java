package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptSheetTest {
  private static final byte[] JOURNAL = bytes("{\"seq\":1}\n{\"seq\":2}\n");
  private static final byte[] TEXT = bytes("A sheet\n\n4 Ω  64 W\n");

  @TempDir Path folder;

  private Path file;
  private KeptSheet sheet;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @BeforeEach
  void keep() {
    file = folder.resolve(".one.sheet");
    sheet = new KeptSheet(file, "this build");
    sheet.keep(JOURNAL, TEXT);
  }

  @Test
  void sameJournalAndMaker_giveTheTextBack() {
    assertArrayEquals(TEXT, sheet.text(JOURNAL).orElseThrow());
    assertArrayEquals(TEXT, new KeptSheet(file, "this build").text(JOURNAL).orElseThrow());
  }

  @Test
  void emptyText_isATextToo() {
    sheet.keep(JOURNAL, new byte[0]);
    assertEquals(0, sheet.text(JOURNAL).orElseThrow().length);
  }

  @Test
  void anotherMaker_isNotGivenIt() {
    assertEquals(Optional.empty(), new KeptSheet(file, "that build").text(JOURNAL));
  }

  @Test
  void journalChangedInAnyByte_isNotGivenIt() {
    for (int at = 0; at < JOURNAL.length; at++) {
      byte[] changed = JOURNAL.clone();
      changed[at] ^= 1;
      assertEquals(Optional.empty(), sheet.text(changed), "byte " + at);
      assertEquals(Optional.empty(), sheet.text(Arrays.copyOf(JOURNAL, at)), "cut at " + at);
    }
    assertEquals(Optional.empty(), sheet.text(Arrays.copyOf(JOURNAL, JOURNAL.length + 1)));
  }

  @Test
  void copySpoiledInAnyByteOrCutAnywhere_countsAsNothing() throws IOException {
    byte[] sound = Files.readAllBytes(file);
    for (int at = 0; at < sound.length; at++) {
      for (int flip : new int[] {1, 0x20, 0x80, 0xff}) {
        byte[] spoiled = sound.clone();
        spoiled[at] ^= (byte) flip;
        Files.write(file, spoiled);
        assertEquals(Optional.empty(), sheet.text(JOURNAL), "byte " + at);
      }
      Files.write(file, Arrays.copyOf(sound, at));
      assertEquals(Optional.empty(), sheet.text(JOURNAL), "cut at " + at);
    }
    Files.write(file, Arrays.copyOf(sound, sound.length + 1));
    assertEquals(Optional.empty(), sheet.text(JOURNAL));
  }

  @Test
  void copyThatIsFarTooLarge_countsAsNothing_evenWhereItsSumsAreRight() {
    sheet.keep(JOURNAL, new byte[9 << 20]);
    assertEquals(Optional.empty(), sheet.text(JOURNAL));
  }

  @Test
  void link_isNotFollowed() throws IOException {
    Path elsewhere = Files.move(file, folder.resolve("elsewhere"));
    Files.createSymbolicLink(file, elsewhere);
    assertEquals(Optional.empty(), sheet.text(JOURNAL));
    byte[] before = Files.readAllBytes(elsewhere);
    sheet.keep(JOURNAL, bytes("other\n"));
    assertArrayEquals(before, Files.readAllBytes(elsewhere));
    assertFalse(Files.isSymbolicLink(file));
  }

  @Test
  void folderThatIsNotThere_isBorneInSilence() {
    KeptSheet nowhere = new KeptSheet(folder.resolve("none").resolve(".one.sheet"), "this build");
    nowhere.keep(JOURNAL, TEXT);
    assertEquals(Optional.empty(), nowhere.text(JOURNAL));
  }
}
