package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import loadwalk.Needs;
import loadwalk.shipped.Shipped;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Counts the classes on the way to the first frame, which decide how long it takes. */
class FirstFrameIT {
  /** Loaded by what is begun once the first frame is on the screen. */
  private static final String AFTERWARDS = "loadwalk.view.ProgramEvent$LibraryRead";

  /** 1195 on Java 17, 1320 on Java 25, their own some 450 and 750 among them. */
  private static final int CLASSES = 1600;

  /** Loadwalk's and Lanterna's among them, 163. */
  private static final int OWN = 240;

  @TempDir Path folder;

  @Test
  void homeScreen_needsNoParserNoCommandLineAndNoForecast() throws Exception {
    Needs.tool("tmux");
    Pane pane = Pane.open(folder);
    try {
      pane.line("sh " + script()).sees("New walk");
      List<String> loaded = loaded();
      long own = loaded.stream().filter(FirstFrameIT::isOwn).count();
      assertTrue(own > 50 && own < OWN, own + " classes of Loadwalk and Lanterna");
      assertTrue(loaded.size() < CLASSES, loaded.size() + " classes");
      assertEquals(List.of(), loaded.stream().filter(FirstFrameIT::isForLater).toList());
      pane.keys("F10");
    } finally {
      pane.close();
    }
  }

  private static boolean isOwn(String name) {
    return name.startsWith("loadwalk.") || name.startsWith("com.googlecode.lanterna.");
  }

  private static boolean isForLater(String name) {
    return name.matches("(com\\.fasterxml|picocli|org\\.hipparchus)\\..*")
        || name.matches("loadwalk\\.(result|practice|chart|report|plain|sequence|json)\\..*");
  }

  /** Without arguments, as most starts are; {@code --home} would bring the command line in. */
  private Path script() throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String line =
        "cd '%s' && clear && XDG_DATA_HOME='%s' exec '%s' -XX:+UseSerialGC -XX:TieredStopAtLevel=1"
            + " -Xlog:class+load:file=classes:tags -jar '%s'";
    return Files.writeString(
        folder.resolve("first"), String.format(line, folder, folder, java, Shipped.jar()));
  }

  private List<String> loaded() throws IOException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (System.nanoTime() < end) {
      List<String> names =
          Files.readAllLines(folder.resolve("classes")).stream()
              .map(line -> line.replaceFirst("^\\[[^]]*\\]\\s*", "").replaceFirst(" .*", ""))
              .toList();
      if (names.contains(AFTERWARDS)) {
        return names.subList(0, names.indexOf(AFTERWARDS));
      }
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(50));
    }
    throw new AssertionError(AFTERWARDS + " was never loaded");
  }
}
