package loadwalk.view;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Key;
import loadwalk.walk.Model;

/**
 * What Ctrl-C and Ctrl-\\ do: they stop a step that runs, and leave nothing behind that is not on
 * the disk, unless pressed once more at once. Elsewhere they leave.
 *
 * @param first when one was pressed that did not leave, by a clock that only goes forward, ns
 */
public record Interrupts(OptionalLong first) {
  private static final long AGAIN_NANOS = TimeUnit.SECONDS.toNanos(2);

  /** Those of a program just started: none was pressed. */
  public static final Interrupts NONE = new Interrupts(OptionalLong.empty());

  /** Returns what the next one does; empty where it leaves. */
  public Optional<List<ProgramEvent>> at(Program program, long nanos) {
    boolean again = first.isPresent() && nanos - first.getAsLong() <= AGAIN_NANOS;
    Optional<Model> walk = program.walk();
    if (again || walk.isEmpty()) {
      return Optional.empty();
    }
    if (LastWords.runs(walk.get())) {
      return Optional.of(
          List.of(
              new ProgramEvent.Pressed(Key.of(Key.Kind.ESCAPE)),
              new ProgramEvent.KeysTold("Ctrl-C once more within two seconds leaves Loadwalk.")));
    }
    return walk.filter(Model::isWriting)
        .map(
            model ->
                List.of(
                    new ProgramEvent.KeysTold(
                        Sentence.of(
                            "The last entry is not on the disk. Ctrl-C once more within two"
                                + " seconds leaves without it."))));
  }

  /** Returns these after one that did not leave. */
  public static Interrupts after(long nanos) {
    return new Interrupts(OptionalLong.of(nanos));
  }
}
