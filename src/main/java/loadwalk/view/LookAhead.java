package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;

/**
 * Works out what Enter will do with what stands typed, while the operator is on the way to the key.
 *
 * <p>Updates are pure, so what one gave for a desk and an event holds, and a desk that has changed
 * meanwhile is another desk. When the key comes only the disk is left to wait for: judging a
 * reading and painting it take longer than writing it, mostly because code that rests between keys
 * is cold.
 */
public final class LookAhead {
  private static final DeskEvent ENTER = new DeskEvent.Pressed(Key.of(Key.Kind.ENTER));

  /** A cold load changes the brief, which is kept too; nothing leads further. */
  private static final int UPDATES_MOST = 4;

  private final DeskLoop loop;
  private List<Foreseen> foreseen = List.of();

  /** Looks ahead of a loop. */
  public LookAhead(DeskLoop loop) {
    this.loop = loop;
  }

  private record Foreseen(Desk before, DeskEvent event, DeskNext next) {
    boolean is(Desk desk, DeskEvent other) {
      return before == desk && event.equals(other);
    }
  }

  /** Returns what {@link DeskLoop#update} does, at once where it was foreseen. */
  public DeskNext update(Desk desk, DeskEvent event) {
    for (Foreseen known : foreseen) {
      if (known.is(desk, event)) {
        return known.next();
      }
    }
    return loop.update(desk, event);
  }

  /** Tells whether something stands typed of which Enter is not worked out yet. */
  public boolean isDue(Desk desk) {
    boolean known = !foreseen.isEmpty() && foreseen.get(0).is(desk, ENTER);
    return !known && isTyping(desk);
  }

  /**
   * Returns the updates that Enter leads to if all that they ask to be kept is kept, oldest first;
   * none where nothing is typed, or where they are known already.
   */
  public List<DeskNext> look(Desk desk) {
    if (!isDue(desk)) {
      return List.of();
    }
    List<Foreseen> all = new ArrayList<>();
    Desk now = desk;
    Optional<DeskEvent> event = Optional.of(ENTER);
    while (event.isPresent() && all.size() < UPDATES_MOST) {
      DeskNext next = loop.update(now, event.get());
      all.add(new Foreseen(now, event.get(), next));
      now = next.desk();
      event = answer(next);
    }
    foreseen = all;
    return all.stream().map(Foreseen::next).toList();
  }

  private static boolean isTyping(Desk desk) {
    return desk.screen() instanceof WalkScreen screen
        && screen.prompt().isEmpty()
        && !screen.field().text().isBlank()
        && desk.walk().filter(model -> !model.isStopped() && !model.isWriting()).isPresent();
  }

  /** Returns the answer to the one thing that was asked; empty where more or nothing was. */
  private static Optional<DeskEvent> answer(DeskNext next) {
    boolean keeps =
        next.wishes().isEmpty()
            && next.effects().size() == 1
            && next.effects().get(0) instanceof Effect.AppendJournal;
    return keeps
        ? Optional.of(
            new DeskEvent.OfWalk(
                new Event.Kept(((Effect.AppendJournal) next.effects().get(0)).facts())))
        : Optional.empty();
  }
}
