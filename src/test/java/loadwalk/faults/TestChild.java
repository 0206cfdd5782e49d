package loadwalk.faults;

import static org.junit.platform.engine.discovery.ClassNameFilter.excludeClassNamePatterns;
import static org.junit.platform.engine.discovery.ClassNameFilter.includeClassNamePatterns;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClasspathRoots;
import static org.junit.platform.launcher.TagFilter.excludeTags;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.platform.engine.CancellationToken;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.TestSource;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherExecutionRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/**
 * Runs tests stage by stage in a virtual machine of its own until one fails, and writes a line for
 * each class that passed a test, the test that failed, or the one that went on for too long.
 *
 * <p>Arguments: where to write, the test classes, how many seconds a test may take, and the stages:
 * {@code named A B}, {@code package P}, {@code all}.
 */
final class TestChild implements TestExecutionListener {
  private final Path report;
  private final CancellationToken onFailure = CancellationToken.create();
  private final Set<String> passed = new TreeSet<>();
  private boolean failed;
  private volatile long lastSign = System.nanoTime();
  private volatile String running = "the start";

  private TestChild(Path report) {
    this.report = report;
  }

  public static void main(String[] args) {
    TestChild child = new TestChild(Path.of(args[0]));
    Path classes = Path.of(args[1]);
    child.watch(Integer.parseInt(args[2]));
    for (String stage : Arrays.asList(args).subList(3, args.length)) {
      if (!child.failed) {
        child.run(stage, classes);
      }
    }
    child.passed.forEach(name -> child.write("passed " + name));
    child.write("ended");
    System.exit(0);
  }

  /** Ends the machine when nothing starts or ends for too long. */
  private void watch(int seconds) {
    Thread watch =
        new Thread(
            () -> {
              while (System.nanoTime() - lastSign < seconds * 1_000_000_000L) {
                pause();
              }
              write("hung " + running);
              ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
              Runtime.getRuntime().halt(3);
            });
    watch.setDaemon(true);
    watch.start();
  }

  private static void pause() {
    try {
      Thread.sleep(100);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private void run(String stage, Path classes) {
    List<String> words = List.of(stage.split(" "));
    boolean named = words.get(0).equals("named");
    String names =
        words.get(0).equals("package") ? Pattern.quote(words.get(1)) + "\\..*" : "loadwalk\\..*";
    LauncherDiscoveryRequest request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(
                named
                    ? words.stream().skip(1).map(name -> selectClass(name)).toList()
                    : selectClasspathRoots(Set.of(classes)))
            .filters(includeClassNamePatterns(names), excludeTags("long"))
            // The list of faults does not fit a tree that has one of them; the tests of what is
            // shipped take long, so they are tried where they are named.
            .filters(excludeClassNamePatterns("loadwalk\\.faults\\..*", named ? "" : ".*IT"))
            .build();
    LauncherFactory.create()
        .execute(
            LauncherExecutionRequestBuilder.request(request)
                .listeners(this)
                .cancellationToken(onFailure)
                .build());
  }

  @Override
  public void executionStarted(TestIdentifier test) {
    lastSign = System.nanoTime();
    running = name(test);
  }

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    lastSign = System.nanoTime();
    switch (result.getStatus()) {
      case SUCCESSFUL -> {
        if (test.isTest()) {
          passed.add(name(test).replaceAll("#.*", ""));
        }
      }
      case FAILED -> {
        if (!failed) {
          write("failed " + name(test));
        }
        failed = true;
        onFailure.cancel();
      }
      case ABORTED -> {}
    }
  }

  /** Returns class and method of a test, {@code loadwalk.plan.LeadTest#lead_isForTheFuse}. */
  private static String name(TestIdentifier test) {
    TestSource source = test.getSource().orElse(null);
    if (source instanceof MethodSource method) {
      return method.getClassName() + "#" + method.getMethodName();
    }
    return source instanceof ClassSource type ? type.getClassName() : test.getDisplayName();
  }

  private synchronized void write(String line) {
    try {
      Files.writeString(report, line + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
