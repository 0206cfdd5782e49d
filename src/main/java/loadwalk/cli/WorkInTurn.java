package loadwalk.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;

/**
 * Does the same work on many items, on every processor, and returns the results in the order of the
 * items.
 *
 * <p>Only a few items are worked on ahead of the one handed back, so that memory does not grow with
 * their number and little is lost when the rest is no longer wanted.
 *
 * @param <T> an item
 * @param <R> the result of one item
 */
final class WorkInTurn<T, R> implements AutoCloseable {
  private static final int AHEAD_PER_PROCESSOR = 4;

  private final Iterator<T> waiting;
  private final Function<T, R> work;
  private final int ahead;
  private final ExecutorService crew;
  private final Deque<CompletableFuture<R>> underWay = new ArrayDeque<>();

  /**
   * Makes the threads; they do not keep the program from ending.
   *
   * @param items what is worked on
   * @param work the work, done by several threads at once
   */
  WorkInTurn(List<T> items, Function<T, R> work) {
    int processors = Runtime.getRuntime().availableProcessors();
    this.waiting = items.iterator();
    this.work = work;
    this.ahead = AHEAD_PER_PROCESSOR * processors;
    this.crew = Executors.newFixedThreadPool(processors, WorkInTurn::daemon);
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "crew");
    thread.setDaemon(true);
    return thread;
  }

  /** Tells whether an item is left. */
  boolean hasNext() {
    return waiting.hasNext() || !underWay.isEmpty();
  }

  /**
   * Returns the result of the next item; waits for it.
   *
   * @throws java.util.concurrent.CompletionException around what the work threw
   */
  R next() {
    while (underWay.size() < ahead && waiting.hasNext()) {
      T item = waiting.next();
      underWay.add(CompletableFuture.supplyAsync(() -> work.apply(item), crew));
    }
    return underWay.remove().join();
  }

  /** Gives up what is still under way. */
  @Override
  public void close() {
    crew.shutdownNow();
  }
}
