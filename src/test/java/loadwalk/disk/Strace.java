package loadwalk.disk;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** The tracer these tests need. */
final class Strace {
  private Strace() {}

  static void needed() {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/strace")), "there is no strace");
  }
}
