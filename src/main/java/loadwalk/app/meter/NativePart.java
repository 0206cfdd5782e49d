package loadwalk.app.meter;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Map;
import loadwalk.text.Sentence;
import loadwalk.text.Sha256;

/**
 * The native part of the serial library for one system, as it lies in our own jar.
 *
 * @param fileName the name it is kept under, with the start of its sum in it
 * @param bytes all of it
 */
record NativePart(String fileName, byte[] bytes) {
  private static final int SHOWN_OF_SUM = 16;

  /** Where each lies, by the names that Java has for systems and processors. */
  private static final Map<String, String> PLACES =
      Map.ofEntries(
          Map.entry("linux amd64", "Linux/x86_64/libjSerialComm.so"),
          Map.entry("linux x86", "Linux/x86/libjSerialComm.so"),
          Map.entry("linux i386", "Linux/x86/libjSerialComm.so"),
          Map.entry("linux aarch64", "Linux/armv8_64/libjSerialComm.so"),
          Map.entry("linux arm", "Linux/armv6hf/libjSerialComm.so"),
          Map.entry("linux ppc64le", "Linux/ppc64le/libjSerialComm.so"),
          Map.entry("mac x86_64", "OSX/x86_64/libjSerialComm.jnilib"),
          Map.entry("mac aarch64", "OSX/aarch64/libjSerialComm.jnilib"),
          Map.entry("windows amd64", "Windows/x86_64/jSerialComm.dll"),
          Map.entry("windows x86", "Windows/x86/jSerialComm.dll"),
          Map.entry("windows aarch64", "Windows/aarch64/jSerialComm.dll"),
          Map.entry("freebsd amd64", "FreeBSD/x86_64/libjSerialComm.so"),
          Map.entry("freebsd aarch64", "FreeBSD/arm64/libjSerialComm.so"),
          Map.entry("openbsd amd64", "OpenBSD/amd64/libjSerialComm.so"));

  static NativePart ofThisMachine() throws IOException {
    return of(System.getProperty("os.name", ""), System.getProperty("os.arch", ""));
  }

  /**
   * Returns the part for a system.
   *
   * @throws IOException with a clause if there is none
   */
  static NativePart of(String system, String processor) throws IOException {
    String first = system.toLowerCase(Locale.ROOT).split(" ")[0];
    String place = PLACES.get(first + " " + processor);
    if (place == null) {
      throw new IOException(
          Sentence.of("there are no serial ports for {} on {}", system, processor));
    }
    try (InputStream in = NativePart.class.getResourceAsStream("/" + place)) {
      if (in == null) {
        throw new IOException(Sentence.of("the program lacks its part {}", place));
      }
      byte[] bytes = in.readAllBytes();
      String name = place.substring(place.lastIndexOf('/') + 1);
      return new NativePart(Sha256.of(bytes).substring(0, SHOWN_OF_SUM) + "-" + name, bytes);
    }
  }
}
