package loadwalk.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import loadwalk.journal.ByteSum;
import loadwalk.journal.Soundness;
import loadwalk.report.ledger.Ledger;
import loadwalk.report.ledger.LedgerBuilder;
import loadwalk.report.ledger.LedgerBuilder.Taken;
import loadwalk.report.ledger.LedgerEntry;
import loadwalk.report.ledger.LedgerIndex;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.UnreadableFact;

/**
 * Reads every kept walk into a ledger, on every processor: of those whose bytes the index knows it
 * takes what is known, the others it folds.
 */
public final class LedgerReading {
  /** What is folded is kept this often, so that a stop loses little. */
  private static final int KEEP_EVERY = 200;

  private static final int MANY = 100;

  private LedgerReading() {}

  /**
   * What was read.
   *
   * @param ledger the walks, each of them once
   * @param unreadable each journal that cannot be read, or not to its end, with the reason
   * @param folded how many were folded rather than taken from the index
   */
  public record Read(Ledger ledger, List<String> unreadable, int folded) {
    /** Copies the list. */
    public Read {
      unreadable = List.copyOf(unreadable);
    }
  }

  /**
   * Reads all walks, several at once; a stop in between loses what was folded since the index was
   * kept last.
   *
   * @param kept the walks of a data home
   * @param progress takes a sentence that says how far the reading is
   * @param stopped asks whether to end early with what has been read
   * @throws IOException if they cannot be listed
   */
  public static Read of(KeptWalks kept, Consumer<String> progress, BooleanSupplier stopped)
      throws IOException {
    String maker = kept.maker();
    LedgerIndex known = LedgerIndex.read(kept.ledgerIndex(), maker);
    LedgerBuilder builder = new LedgerBuilder();
    KeptWalks.Listing there = kept.list();
    try (WorkInTurn<String, Consumer<LedgerBuilder>> crew =
        new WorkInTurn<>(there.walks(), walk -> read(kept, walk, known))) {
      int keptAt = 0;
      for (int done = 1; crew.hasNext() && !stopped.getAsBoolean(); done++) {
        crew.next().accept(builder);
        if (builder.folded() >= keptAt + KEEP_EVERY) {
          keptAt = builder.folded();
          keep(kept, builder, maker, progress);
          progress.accept(Sentence.of("Read {} of {} walks.", done, there.walks().size()));
        }
      }
    }
    if (builder.folded() > 0) {
      keep(kept, builder, maker, progress);
    }
    Ledger ledger = builder.ledger(there.leftOut(), journal -> again(kept, journal));
    return new Read(ledger, builder.unreadable(), builder.folded());
  }

  /**
   * Reads the walks that changed last, and keeps nothing: an index of these alone would lose the
   * others.
   *
   * @param most how many at most
   * @throws IOException if they cannot be listed
   */
  public static Ledger newest(KeptWalks kept, int most) throws IOException {
    List<String> walks = kept.list().walks().stream().limit(most).toList();
    LedgerBuilder builder = new LedgerBuilder();
    if (!walks.isEmpty()) {
      LedgerIndex known = LedgerIndex.read(kept.ledgerIndex(), kept.maker());
      walks.forEach(walk -> read(kept, walk, known).accept(builder));
    }
    return builder.ledger(List.of(), journal -> again(kept, journal));
  }

  /** Reads a walk; returns what the builder is to be told of it. */
  private static Consumer<LedgerBuilder> read(KeptWalks kept, String walk, LedgerIndex known) {
    Optional<String> told = Optional.empty();
    try {
      KeptWalks.Unread unread = kept.bytes(walk);
      String sum = ByteSum.of(unread.bytes());
      Optional<LedgerIndex.Kept> entry = known.of(sum, unread.end());
      if (entry.isPresent()) {
        Taken taken = new Taken(walk, sum, entry.get());
        return builder -> builder.takeKnown(taken);
      }
      KeptWalks.Journal journal = unread.read();
      told = journal.read().told();
      Taken taken = new Taken(walk, sum, folded(journal, unread.end(), kept));
      return builder -> take(builder, taken);
    } catch (IOException | UnreadableFact e) {
      String why = told.orElse(e.getMessage());
      return builder -> builder.cannotRead(walk, why);
    }
  }

  private static LedgerIndex.Kept folded(KeptWalks.Journal journal, String end, KeptWalks kept) {
    LedgerEntry read = LedgerEntry.ofBodies(journal.bodies(), kept.rules());
    LedgerEntry entry = read.with(journal.soundness(read.finished()));
    String opening = ByteSum.of(journal.bodies().get(0).getBytes(StandardCharsets.UTF_8));
    return new LedgerIndex.Kept(opening, end, entry);
  }

  private static void take(LedgerBuilder builder, Taken taken) {
    Soundness soundness = taken.kept().entry().soundness();
    if (soundness.standing().isFaulty()) {
      builder.cannotRead(taken.journal(), soundness.told());
      builder.takeDamaged(taken);
    } else {
      builder.takeFolded(taken);
    }
  }

  /** Reads a journal once more, to compare the few that begin alike. */
  private static byte[] again(KeptWalks kept, String journal) {
    try {
      return kept.bytes(journal).bytes();
    } catch (IOException gone) {
      return new byte[0];
    }
  }

  /** The index only saves time: a ledger that cannot keep it is as good. */
  private static void keep(
      KeptWalks kept, LedgerBuilder builder, String maker, Consumer<String> progress) {
    try {
      kept.keepLedgerIndex(builder.index().bytes(maker));
    } catch (IOException e) {
      if (builder.folded() >= MANY) {
        progress.accept(Sentence.of("The ledger index cannot be kept: {}.", e.getMessage()));
      }
    }
  }
}
