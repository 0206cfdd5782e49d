package loadwalk.faults;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tries deliberate faults, two at a time, and says which test catches each.
 *
 * <p>Arguments: a folder for copies, a folder for what the tests print, the commit, and then names
 * of faults or areas (none: all faults) or {@code --drawn N}. The files of the tree come on
 * standard input, one a line. Exit code 1: a fault is not caught; 2: the list or a test is bad.
 */
final class FaultDriver {
  private static final int LANES = 2;

  private final FaultList faults;
  private final ExecutorService lanes = Executors.newFixedThreadPool(LANES);
  private final List<Verdict.Kind> kinds = new ArrayList<>();

  private FaultDriver(FaultList faults) {
    this.faults = faults;
  }

  public static void main(String[] args) throws Exception {
    int exit = 2;
    try {
      List<String> wanted = Arrays.asList(args).subList(3, args.length);
      FaultDriver driver = new FaultDriver(chosen(FaultList.of(Path.of("")), wanted, args[2]));
      exit = driver.run(Path.of(args[0]), Path.of(args[1])) ? 0 : 1;
    } catch (BadFault e) {
      System.err.println(e.getMessage());
    }
    System.exit(exit);
  }

  private static FaultList chosen(FaultList all, List<String> wanted, String commit) {
    if (wanted.isEmpty() || !wanted.get(0).equals("--drawn")) {
      return all.named(wanted);
    }
    FaultList drawn = all.drawn(Integer.parseInt(wanted.get(1)), commit);
    System.out.printf(
        "%d of %d faults, drawn by commit %s%n",
        drawn.faults().size(), all.faults().size(), commit);
    return drawn;
  }

  private boolean run(Path copies, Path logs) throws Exception {
    List<String> complaints =
        faults.faults().stream().flatMap(f -> f.complaints(Path.of("")).stream()).toList();
    if (!complaints.isEmpty()) {
      throw new BadFault(String.join("\n", complaints));
    }
    List<FaultTrial> trials = trials(copies, logs);
    inEachLane(lane -> requireGreen(trials.get(lane), lane));
    Queue<Fault> waiting = new ConcurrentLinkedQueue<>(faults.faults());
    inEachLane(
        lane -> {
          for (Fault next = waiting.poll(); next != null; next = waiting.poll()) {
            say(next, trials.get(lane).of(next));
          }
          return null;
        });
    System.out.print(kinds.size() + " faults");
    for (Verdict.Kind kind : Verdict.Kind.values()) {
      System.out.printf(", %d %s", kinds.stream().filter(k -> k == kind).count(), kind.words());
    }
    System.out.println();
    return kinds.stream().allMatch(Verdict.Kind::isGood);
  }

  private List<FaultTrial> trials(Path copies, Path logs) throws Exception {
    List<String> files;
    try (BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
      files = in.lines().filter(file -> Files.isRegularFile(Path.of(file))).toList();
    }
    List<Path> libraries =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(Path::of)
            .filter(Files::isRegularFile)
            .toList();
    return inEachLane(
        lane ->
            new FaultTrial(
                WorkCopy.of(Path.of(""), files, copies.resolve("" + lane), libraries), logs));
  }

  /** A test that fails without any fault would catch every fault; one that never ran, none. */
  private Void requireGreen(FaultTrial trial, int lane) throws IOException {
    List<String> all = faults.tests();
    List<String> share =
        IntStream.range(0, all.size()).filter(i -> i % LANES == lane).mapToObj(all::get).toList();
    trial
        .withoutFault(share)
        .ifPresent(
            complaint -> {
              throw new BadFault(complaint);
            });
    return null;
  }

  private synchronized void say(Fault fault, Verdict verdict) {
    kinds.add(verdict.kind());
    System.out.println(fault.name() + ": " + verdict.text());
  }

  /** Work that is done in one of the lanes. */
  private interface LaneWork<T> {
    T of(int lane) throws Exception;
  }

  private <T> List<T> inEachLane(LaneWork<T> work) throws Exception {
    List<Callable<T>> calls = new ArrayList<>();
    for (int i = 0; i < LANES; i++) {
      int lane = i;
      calls.add(() -> work.of(lane));
    }
    List<T> done = new ArrayList<>();
    for (Future<T> future : lanes.invokeAll(calls)) {
      try {
        done.add(future.get());
      } catch (ExecutionException e) {
        throw e.getCause() instanceof BadFault bad ? bad : e;
      }
    }
    return done;
  }
}
