package loadwalk.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import loadwalk.app.loop.BrokenChild;

/** Runs the program in a process of its own, from the classes under test. */
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

  /** Starts the program with one locale and its streams as pipes. */
  public static Process start(String locale, Path home, String... arguments) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command(home, arguments));
    Map<String, String> environment = builder.environment();
    environment.put("LC_ALL", locale);
    environment.remove("JDK_JAVA_OPTIONS");
    environment.remove("JAVA_TOOL_OPTIONS");
    return builder.start();
  }
}
