package loadwalk.app.store;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import loadwalk.journal.ByteSum;

/** Names the program that runs by the bytes of its jar: two of one version need not be alike. */
final class ProgramSum {
  private static final String NOT_PACKED = "not packed";

  private ProgramSum() {}

  static String ofThisProgram() {
    CodeSource source = ProgramSum.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      return NOT_PACKED;
    }
    try {
      Path jar = Path.of(source.getLocation().toURI());
      return Files.isRegularFile(jar) ? ByteSum.of(Files.readAllBytes(jar)) : NOT_PACKED;
    } catch (IOException | URISyntaxException | IllegalArgumentException unknown) {
      return NOT_PACKED;
    }
  }
}
