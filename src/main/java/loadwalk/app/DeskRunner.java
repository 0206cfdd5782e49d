package loadwalk.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import loadwalk.view.Desk;
import loadwalk.view.DeskEvent;
import loadwalk.view.DeskLoop;
import loadwalk.view.DeskNext;
import loadwalk.view.LookAhead;
import loadwalk.view.Wish;

/** Runs the desk: one event in, all that follows from it done, on the caller's thread alone. */
final class DeskRunner {
  private final LookAhead loop;
  private final Outside outside;
  private Desk desk;

  DeskRunner(DeskLoop loop, Outside outside, Desk desk) {
    this.loop = new LookAhead(loop);
    this.outside = outside;
    this.desk = desk;
  }

  Desk desk() {
    return desk;
  }

  /** Takes the notice down and returns it, so that it is told once. */
  Optional<String> takeNotice() {
    Optional<String> notice = desk.notice();
    desk = desk.silent();
    return notice;
  }

  boolean isLeaving() {
    return outside.isLeaving();
  }

  /** Grants a wish that comes from no screen. */
  void grant(Wish wish) {
    outside.grant(wish, desk).forEach(this::accept);
  }

  /** Takes one event and does everything that follows from it. */
  void accept(DeskEvent event) {
    settle(new ArrayDeque<>(List.of(event)));
  }

  /** Takes what has become known outside without an event, such as what a meter said. */
  void look() {
    settle(new ArrayDeque<>(outside.after(desk)));
  }

  /** Tells whether there is something to work out ahead. */
  boolean canLookAhead() {
    return loop.isDue(desk);
  }

  /**
   * Works out what Enter would do to what is typed, so that little is left when it comes.
   *
   * @return the desk it would lead to, where that was not known yet
   */
  Optional<Desk> lookAhead() {
    List<DeskNext> updates = loop.look(desk);
    if (updates.isEmpty()) {
      return Optional.empty();
    }
    outside.prepare(updates.stream().flatMap(next -> next.effects().stream()).toList());
    return Optional.of(updates.get(updates.size() - 1).desk());
  }

  private void settle(Deque<DeskEvent> waiting) {
    while (!waiting.isEmpty()) {
      DeskNext next = loop.update(desk, waiting.poll());
      desk = next.desk();
      next.effects().forEach(effect -> waiting.addAll(outside.perform(effect)));
      next.wishes().forEach(wish -> waiting.addAll(outside.grant(wish, desk)));
      if (waiting.isEmpty()) {
        waiting.addAll(outside.after(desk));
      }
    }
  }
}
