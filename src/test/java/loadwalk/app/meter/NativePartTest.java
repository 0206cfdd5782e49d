package loadwalk.app.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.HexFormat;
import loadwalk.text.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The serial library's native part for each system, as it lies in the jar. */
class NativePartTest {
  /** The first bytes name the kind of program, and at 18 an ELF file names its processor. */
  @ParameterizedTest
  @CsvSource({
    "Linux, amd64, 7f454c46, 3e00, libjSerialComm.so",
    "Linux, x86, 7f454c46, 0300, libjSerialComm.so",
    "Linux, i386, 7f454c46, 0300, libjSerialComm.so",
    "Linux, aarch64, 7f454c46, b700, libjSerialComm.so",
    "Linux, arm, 7f454c46, 2800, libjSerialComm.so",
    "Linux, ppc64le, 7f454c46, 1500, libjSerialComm.so",
    "FreeBSD, amd64, 7f454c46, 3e00, libjSerialComm.so",
    "FreeBSD, aarch64, 7f454c46, b700, libjSerialComm.so",
    "OpenBSD, amd64, 7f454c46, 3e00, libjSerialComm.so",
    "Mac OS X, x86_64, cffaedfe, '', libjSerialComm.jnilib",
    "Mac OS X, aarch64, cffaedfe, '', libjSerialComm.jnilib",
    "Windows 11, amd64, 4d5a, '', jSerialComm.dll",
    "Windows 10, x86, 4d5a, '', jSerialComm.dll",
    "Windows 11, aarch64, 4d5a, '', jSerialComm.dll"
  })
  void part_isOfTheSystemAndProcessor_underANameWithItsSum(
      String system, String processor, String begins, String machine, String name)
      throws IOException {
    NativePart part = NativePart.of(system, processor);
    String hex = HexFormat.of().formatHex(Arrays.copyOf(part.bytes(), 20));
    assertTrue(hex.startsWith(begins), hex);
    assertTrue(machine.isEmpty() || hex.endsWith(machine), hex);
    assertEquals(Sha256.of(part.bytes()).substring(0, 16) + "-" + name, part.fileName());
  }

  @Test
  void systemWithoutOne_isTold() {
    String why =
        assertThrows(IOException.class, () -> NativePart.of("Linux", "riscv64")).getMessage();
    assertEquals("there are no serial ports for Linux on riscv64", why);
  }
}
