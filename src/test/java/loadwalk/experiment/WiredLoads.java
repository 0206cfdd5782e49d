package loadwalk.experiment;

import java.util.Comparator;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Hold;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.forecast.LoadBank;

/**
 * Loads wired in the one way that these benches allow: equal resistors side by side, as few as make
 * the ohms. So the truth and the program speak of the same resistor, and no search is waited for.
 */
final class WiredLoads implements LoadBank {
  private static final double ROUNDING = 1e-6;

  private final ResistorDerating derating = new ResistorDerating(Tables.stock());

  /** Equal resistors side by side. */
  private record Block(LoadResistor kind, int count) {}

  @Override
  public Optional<Hottest> hottest(
      Bench bench, Mode mode, double ohms, double loadWatts, Hold hold) {
    return block(bench, mode, ohms)
        .map(
            block ->
                new Hottest(
                    block.kind.label(),
                    loadWatts / block.count,
                    block.kind.watts(),
                    derating.mostWatts(block.kind, hold)));
  }

  /** Returns a resistor of the load as it truly gets hot; empty where the stock has none. */
  static Optional<HotResistor> truly(Bench bench, Mode mode, double ohms, double loadWatts) {
    return block(bench, mode, ohms)
        .map(
            block ->
                new HotResistor(loadWatts / block.count, block.kind.watts(), block.kind.mount()));
  }

  private static Optional<Block> block(Bench bench, Mode mode, double ohms) {
    int loads = mode == Mode.STEREO ? 2 : 1;
    return bench.loads().stream()
        .map(kind -> new Block(kind, (int) Math.rint(kind.ohms() / ohms)))
        .filter(block -> Math.abs(block.count * ohms - block.kind.ohms()) < ROUNDING)
        .filter(block -> block.count > 0 && block.count * loads <= block.kind.count())
        .min(Comparator.comparingInt(Block::count));
  }
}
