package loadwalk.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiFunction;
import loadwalk.text.Sentence;

/**
 * Rehearses lines on every core and prints the answers in the order of the lines.
 *
 * <p>A bounded queue holds the lines under way, so memory does not grow with the input. The printer
 * flushes whenever nothing more is under way: a program that feeds one line and waits gets its
 * answer.
 */
final class RehearsalLoop implements AutoCloseable {
  private static final int UNDER_WAY_PER_CORE = 32;

  private final BiFunction<LineReader.Line, String, Rehearsals.Answer> rehearsals;
  private final PrintWriter out;
  private final PrintWriter err;
  private final ExecutorService crew;
  private final BlockingQueue<Future<Optional<Rehearsals.Answer>>> underWay;
  private final Thread printer;
  private volatile boolean heard = true;
  private volatile int code = ExitCode.DONE;

  /**
   * Starts a loop.
   *
   * @param rehearsals answers a line of the file named; called by several threads
   */
  RehearsalLoop(
      BiFunction<LineReader.Line, String, Rehearsals.Answer> rehearsals,
      PrintWriter out,
      PrintWriter err) {
    int cores = Runtime.getRuntime().availableProcessors();
    this.rehearsals = rehearsals;
    this.out = out;
    this.err = err;
    crew = Executors.newFixedThreadPool(cores);
    underWay = new ArrayBlockingQueue<>(UNDER_WAY_PER_CORE * cores);
    printer = new Thread(this::print, "printer");
    printer.start();
  }

  /** Tells whether the output is still read. */
  boolean isHeard() {
    return heard;
  }

  /** Takes a line; waits while too many are under way. */
  void add(LineReader.Line line, String file) {
    put(crew.submit(() -> Optional.of(rehearsals.apply(line, file))));
  }

  /** Prints a complaint in its turn. */
  void complain(String text) {
    put(
        CompletableFuture.completedFuture(
            Optional.of(
                new Rehearsals.Answer(Optional.empty(), List.of(text), ExitCode.BAD_INPUT))));
  }

  /** Waits until everything is printed and returns the exit code. */
  int finish() {
    put(CompletableFuture.completedFuture(Optional.empty()));
    try {
      printer.join();
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      return ExitCode.FAULT;
    }
    return code;
  }

  private void put(Future<Optional<Rehearsals.Answer>> answer) {
    try {
      underWay.put(answer);
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      heard = false;
    }
  }

  private void print() {
    try {
      Optional<Rehearsals.Answer> answer = next();
      while (answer.isPresent()) {
        print(answer.get());
        answer = next();
      }
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
    }
    out.flush();
    err.flush();
  }

  /** Answers even a line that broke: a program that feeds lines would wait for that answer. */
  private Optional<Rehearsals.Answer> next() throws InterruptedException {
    try {
      return underWay.take().get();
    } catch (ExecutionException broken) {
      String text = Sentence.of("A fault of Loadwalk: {}", String.valueOf(broken.getCause()));
      return Optional.of(new Rehearsals.Answer(Optional.empty(), List.of(text), ExitCode.FAULT));
    }
  }

  private void print(Rehearsals.Answer answer) {
    answer.complaints().forEach(err::println);
    answer.text().ifPresent(text -> out.append(text).append('\n'));
    // A fault of Loadwalk outranks bad input, bad input outranks success.
    boolean graver = code == ExitCode.DONE || answer.code() == ExitCode.FAULT;
    code = graver ? answer.code() : code;
    if (underWay.isEmpty()) {
      heard &= !out.checkError();
      err.flush();
    }
  }

  @Override
  public void close() {
    crew.shutdownNow();
    printer.interrupt();
  }
}
