package loadwalk.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import loadwalk.report.ledger.LedgerBuilder;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.ledger.LedgerIndex;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.UnreadableFact;

/**
 * Reads every kept walk into a ledger: those the index knows without opening them, the others on
 * every processor.
 */
public final class LedgerReading {
  /** What is folded is kept this often, so that a stop loses little. */
  private static final int KEEP_EVERY = 200;

  private static final int MANY = 100;

  private LedgerReading() {}

  /**
   * Reads all walks, several at once; a stop in between loses what was folded since the index was
   * kept last.
   *
   * @param kept the walks of a data home
   * @param progress takes a sentence that says how far the reading is
   * @param stopped asks whether to end early with what has been read
   * @throws IOException if they cannot be listed
   */
  public static LedgerBuilder of(KeptWalks kept, Consumer<String> progress, BooleanSupplier stopped)
      throws IOException {
    LedgerBuilder builder = new LedgerBuilder(LedgerIndex.read(kept.ledgerIndex()));
    List<KeptWalks.Listed> unknown = new ArrayList<>();
    for (KeptWalks.Listed walk : kept.list()) {
      if (!builder.takeKnown(walk.name(), walk.bytes(), walk.changedMillis())) {
        unknown.add(walk);
      }
    }
    try (WorkInTurn<KeptWalks.Listed, Folded> crew =
        new WorkInTurn<>(unknown, walk -> Folded.of(kept, walk))) {
      while (crew.hasNext() && !stopped.getAsBoolean()) {
        boolean sound = crew.next().isTakenBy(builder);
        int done = builder.folded();
        if (sound && done % KEEP_EVERY == 0) {
          keep(kept, builder, progress);
          progress.accept(Sentence.of("Read {} of {} walks.", done, unknown.size()));
        }
      }
    }
    if (builder.folded() > 0) {
      keep(kept, builder, progress);
    }
    return builder;
  }

  /** A journal with its entry, where it has one, and with what is wrong with it, where it is. */
  private record Folded(
      KeptWalks.Listed walk, Optional<LedgerEntry> entry, Optional<String> wrong) {
    static Folded of(KeptWalks kept, KeptWalks.Listed walk) {
      Optional<String> damaged = Optional.empty();
      try {
        KeptWalks.Journal journal = kept.read(walk.name());
        damaged = journal.damaged();
        return new Folded(
            walk, Optional.of(LedgerEntry.ofBodies(journal.bodies(), kept.rules())), damaged);
      } catch (IOException | UnreadableFact e) {
        return new Folded(walk, Optional.empty(), damaged.or(() -> Optional.of(e.getMessage())));
      }
    }

    /** Hands it over; returns whether it is sound. */
    boolean isTakenBy(LedgerBuilder builder) {
      wrong.ifPresent(why -> builder.cannotRead(walk.name(), why));
      if (wrong.isEmpty()) {
        builder.takeFolded(walk.name(), walk.bytes(), walk.changedMillis(), entry.orElseThrow());
      } else {
        entry.ifPresent(builder::takeDamaged);
      }
      return wrong.isEmpty();
    }
  }

  /** The index only saves time: a ledger that cannot keep it is as good. */
  private static void keep(KeptWalks kept, LedgerBuilder builder, Consumer<String> progress) {
    try {
      kept.keepLedgerIndex(builder.index().bytes());
    } catch (IOException e) {
      if (builder.folded() >= MANY) {
        progress.accept(Sentence.of("The ledger index cannot be kept: {}.", e.getMessage()));
      }
    }
  }
}
