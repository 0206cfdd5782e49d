package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;

/**
 * Works out what Enter will do with what stands typed, while the operator is on the way to the key.
 *
 * <p>Updates are pure, so what one gave for a program and an event holds, and a program that has
 * changed meanwhile is another program. When the key comes only the disk is left to wait for:
 * judging a reading and painting it take longer than writing it, mostly because code that rests
 * between keys is cold.
 */
public final class LookAhead {
  private static final ProgramEvent ENTER = new ProgramEvent.Pressed(Key.of(Key.Kind.ENTER));

  /** A cold load changes the brief, which is kept too; nothing leads further. */
  private static final int UPDATES_MOST = 4;

  private final ProgramUpdate loop;
  private List<Foreseen> foreseen = List.of();

  /** Looks ahead of a loop. */
  public LookAhead(ProgramUpdate loop) {
    this.loop = loop;
  }

  private record Foreseen(Program before, ProgramEvent event, ProgramNext next) {
    boolean is(Program program, ProgramEvent other) {
      return before == program && event.equals(other);
    }
  }

  /** Returns what {@link ProgramUpdate#update} does, at once where it was foreseen. */
  public ProgramNext update(Program program, ProgramEvent event) {
    for (Foreseen known : foreseen) {
      if (known.is(program, event)) {
        return known.next();
      }
    }
    return loop.update(program, event);
  }

  /** Tells whether something stands typed of which Enter is not worked out yet. */
  public boolean isDue(Program program) {
    boolean known = !foreseen.isEmpty() && foreseen.get(0).is(program, ENTER);
    return !known && isTyping(program);
  }

  /**
   * Returns the updates that Enter leads to if all that they ask to be kept is kept, oldest first;
   * none where nothing is typed, or where they are known already.
   */
  public List<ProgramNext> look(Program program) {
    if (!isDue(program)) {
      return List.of();
    }
    List<Foreseen> all = new ArrayList<>();
    Program now = program;
    Optional<ProgramEvent> event = Optional.of(ENTER);
    while (event.isPresent() && all.size() < UPDATES_MOST) {
      ProgramNext next = loop.update(now, event.get());
      all.add(new Foreseen(now, event.get(), next));
      now = next.program();
      event = answer(next);
    }
    foreseen = all;
    return all.stream().map(Foreseen::next).toList();
  }

  private static boolean isTyping(Program program) {
    return program.screen() instanceof WalkScreen screen
        && screen.prompt().isEmpty()
        && !screen.field().text().isBlank()
        && program.walk().filter(model -> !model.isStopped() && !model.isWriting()).isPresent();
  }

  /** Returns the answer to the one thing that was asked; empty where more or nothing was. */
  private static Optional<ProgramEvent> answer(ProgramNext next) {
    boolean keeps =
        next.wishes().isEmpty()
            && next.effects().size() == 1
            && next.effects().get(0) instanceof Effect.AppendJournal;
    return keeps
        ? Optional.of(
            new ProgramEvent.OfWalk(
                new Event.Kept(((Effect.AppendJournal) next.effects().get(0)).facts())))
        : Optional.empty();
  }
}
