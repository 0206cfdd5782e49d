package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FileNamesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        ".",
        "..",
        "../x",
        "..\\x",
        "/etc/passwd",
        "a/b",
        "C:",
        "C:\\x",
        "\\\\host\\x",
        "nul\u0000",
        "a\u0000b",
        "a\nb",
        "a\u001b[2J",
        "a\u007f",
        "a\u0085b",
        "a\u202eb",
        "a\ud800",
        "a\u2028b",
        "dots.",
        "dots...",
        "space ",
        " space",
        "con",
        "CON",
        "Con.txt",
        "nul",
        "NUL.x",
        "aux",
        "prn",
        "com1",
        "COM9.tar.gz",
        "lpt1",
        "lpt¹",
        "conin$",
        "a|b",
        "a?b",
        "a*b",
        "a<b",
        "a>b",
        "a\"b",
        "a:stream"
      })
  void fault_ofAHostileName_isSaid(String name) {
    assertTrue(FileNames.fault(name).isPresent());
    assertTrue(WalkName.fault(name).isPresent());
    assertThrows(IllegalArgumentException.class, () -> new WalkName(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "scope 3.png", "Ω-µ é.txt", ".hidden", "a..b", "console", "com10"})
  void fault_ofAPlainName_isNone(String name) {
    assertEquals(Optional.empty(), FileNames.fault(name));
  }

  @Test
  void fault_ofALongName_isSaid() {
    assertEquals(Optional.empty(), FileNames.fault("x".repeat(200)));
    assertTrue(FileNames.fault("x".repeat(201)).isPresent());
    assertEquals(Optional.empty(), WalkName.fault("x".repeat(100)));
    assertTrue(WalkName.fault("x".repeat(101)).isPresent());
    assertTrue(WalkName.fault("x".repeat(300)).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-rf", "_x", ".x", "a b", "é", "a~b", "a%2e%2e"})
  void walkName_ofWhatOtherProgramsReadMoreInto_isRefused(String name) {
    assertTrue(WalkName.fault(name).isPresent());
  }

  @Test
  void walkName_givesItsFiles() {
    WalkName name = new WalkName("a.1-b_2");
    assertEquals("a.1-b_2.jsonl", name.journalFile());
    assertEquals(".a.1-b_2.lock", name.lockFile());
    assertEquals("a.1-b_2.torn-3", name.tornFile(3));
  }
}
