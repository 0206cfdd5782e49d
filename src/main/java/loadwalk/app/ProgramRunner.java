package loadwalk.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramNext;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.Wish;

/** Runs the program: one event in, all that follows from it done, on the caller's thread alone. */
final class ProgramRunner {
  private final ProgramUpdate loop;
  private final EffectRunner outside;
  private Program program;

  ProgramRunner(ProgramUpdate loop, EffectRunner outside, Program program) {
    this.loop = loop;
    this.outside = outside;
    this.program = program;
  }

  Program program() {
    return program;
  }

  /** Takes the notice down and returns it, so that it is told once. */
  Optional<String> takeNotice() {
    Optional<String> notice = program.notice();
    program = program.silent();
    return notice;
  }

  boolean isLeaving() {
    return outside.isLeaving();
  }

  /** Grants a wish that comes from no screen. */
  void grant(Wish wish) {
    outside.grant(wish, program).forEach(this::accept);
  }

  /** Takes one event and does everything that follows from it. */
  void accept(ProgramEvent event) {
    settle(new ArrayDeque<>(List.of(event)));
  }

  /** Takes what has become known outside without an event, such as what a meter said. */
  void look() {
    settle(new ArrayDeque<>(outside.after(program)));
  }

  private void settle(Deque<ProgramEvent> waiting) {
    while (!waiting.isEmpty()) {
      ProgramNext next = loop.update(program, waiting.poll());
      program = next.program();
      next.effects().forEach(effect -> waiting.addAll(outside.perform(effect)));
      next.wishes().forEach(wish -> waiting.addAll(outside.grant(wish, program)));
      if (waiting.isEmpty()) {
        waiting.addAll(outside.after(program));
      }
    }
  }
}
