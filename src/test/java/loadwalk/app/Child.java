package loadwalk.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.app.loop.BrokenChild;

/** Runs the classes under test in a process of its own, where the launcher's would not do. */
public final class Child {
  private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

  private Child() {}

  /** Returns the words of a command that runs the program. */
  public static List<String> command(Path home, String... arguments) {
    return command(Main.class, home, arguments);
  }

  /** Returns the words of a command that runs the program on an outside world that is broken. */
  public static List<String> brokenCommand(Path home, String what) {
    return command(BrokenChild.class, home, what);
  }

  private static List<String> command(Class<?> main, Path home, String... arguments) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(QUICK);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    words.addAll(Arrays.asList(arguments));
    words.addAll(List.of("--home", home.toString()));
    return words;
  }
}
