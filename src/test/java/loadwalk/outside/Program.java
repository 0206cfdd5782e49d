package loadwalk.outside;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * How the launcher is started.
 *
 * @param launcher its path
 * @param folder the working folder
 * @param ahead the words of a command that runs it, such as {@code prlimit}
 * @param settings what the environment is to hold; an empty text takes a variable out
 */
record Program(Path launcher, Path folder, List<String> ahead, Map<String, String> settings) {
  private static final long PATIENCE_SECONDS = 120;
  private static final long REST_MILLIS = 20_000;

  /** Returns the launcher in target, or in the folder that the property {@code shipped} names. */
  static Program shipped(Path folder) {
    Path launcher = Path.of(System.getProperty("shipped", "target"), "loadwalk").toAbsolutePath();
    return new Program(launcher, folder, List.of(), Map.of());
  }

  /** Returns the same with words ahead of it. */
  Program behind(String... words) {
    return new Program(launcher, folder, List.of(words), settings);
  }

  /** Returns the same with one more setting of the environment. */
  Program with(String name, String value) {
    Map<String, String> more = new HashMap<>(settings);
    more.put(name, value);
    return new Program(launcher, folder, ahead, Map.copyOf(more));
  }

  /** Starts it with its streams as pipes. */
  Running start(String... arguments) throws IOException {
    List<String> words = new ArrayList<>(ahead);
    words.add(launcher.toString());
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
    Map<String, String> environment = builder.environment();
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    environment.put("LC_ALL", "C.UTF-8");
    environment.keySet().removeAll(List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS"));
    settings.forEach(
        (name, value) -> {
          environment.put(name, value);
          environment.remove(name, "");
        });
    return new Running(builder.start());
  }

  /** Runs it to its end on what is typed. */
  Ran run(String typed, String... arguments) throws IOException, InterruptedException {
    Running running = start(arguments);
    running.type(typed);
    return running.end();
  }

  /** One that runs; its output is taken up as it comes. */
  static final class Running {
    private final Process process;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Thread outTaker;
    private final Thread errTaker;

    private Running(Process process) {
      this.process = process;
      this.outTaker = taker(process.getInputStream(), out);
      this.errTaker = taker(process.getErrorStream(), err);
    }

    private static Thread taker(InputStream from, ByteArrayOutputStream to) {
      Thread thread =
          new Thread(
              () -> {
                try {
                  byte[] some = new byte[8192];
                  for (int n = from.read(some); n >= 0; n = from.read(some)) {
                    to.write(some, 0, n);
                  }
                } catch (IOException ended) {
                  // The process is gone; what it said before is there.
                }
              });
      thread.setDaemon(true);
      thread.start();
      return thread;
    }

    long pid() {
      return process.pid();
    }

    /** Types lines; a program that no longer listens is no fault here. */
    Running type(String lines) {
      try {
        OutputStream in = process.getOutputStream();
        in.write(lines.getBytes(UTF_8));
        in.flush();
      } catch (IOException gone) {
        // Its exit code and its words tell.
      }
      return this;
    }

    /** Waits until it has said a text. */
    Running hears(String text) throws InterruptedException {
      if (!hearsBeforeItsEnd(text)) {
        throw new AssertionError("«" + text + "» was never said:\n" + said());
      }
      return this;
    }

    /** Waits until it has said a text or has ended, and tells whether it was said. */
    boolean hearsBeforeItsEnd(String text) throws InterruptedException {
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
      while (!said().contains(text) && process.isAlive()) {
        if (System.nanoTime() > end) {
          kill();
          throw new AssertionError("«" + text + "» is still not said:\n" + said());
        }
        Thread.sleep(2);
      }
      if (!process.isAlive()) {
        takeUp();
      }
      return said().contains(text);
    }

    /** Takes up what is left of the output; what the program has started may hold it open. */
    private void takeUp() throws InterruptedException {
      outTaker.join(REST_MILLIS);
      errTaker.join(REST_MILLIS);
    }

    String said() {
      return out.toString(UTF_8) + err.toString(UTF_8);
    }

    boolean isAlive() {
      return process.isAlive();
    }

    /** Kills it and what it has started; what it has said before is still read. */
    void kill() {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.toHandle().destroyForcibly();
    }

    /** Closes what is typed and waits for the end. */
    Ran end() throws InterruptedException {
      try {
        process.getOutputStream().close();
      } catch (IOException gone) {
        // It ended before.
      }
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        kill();
        throw new AssertionError("the program did not end:\n" + said());
      }
      takeUp();
      // The virtual machine names the options it is given; that is not the program speaking.
      String complaints = err.toString(UTF_8).replaceAll("(?m)^Picked up JAVA_TOOL.*\\n", "");
      return new Ran(process.exitValue(), out.toString(UTF_8), complaints);
    }
  }
}
