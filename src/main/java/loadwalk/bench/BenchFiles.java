package loadwalk.bench;

import java.util.List;
import java.util.stream.IntStream;
import loadwalk.json.FileShape;
import loadwalk.json.Format;
import loadwalk.json.Words;

/** The files that describe an amplifier and a bench, and the words in them. */
public final class BenchFiles {
  /** The file of an amplifier. */
  public static final FileShape<Amplifier> AMPLIFIER =
      new FileShape<>(
          new Format("amplifier", 1), "an amplifier", false, Amplifier.named("maker", "model"));

  /** The file of a bench. */
  public static final FileShape<Bench> BENCH =
      new FileShape<>(new Format("bench", 1), "a bench", false, Bench.blank());

  /** The modes by their words. */
  public static final Words<Mode> MODES = Words.of(List.of(Mode.values()), Mode::word);

  /** The readings by their keys. */
  public static final Words<ReadingId> READINGS =
      Words.of(List.of(ReadingId.values()), ReadingId::key, "is not a reading");

  /** The gauges from 4/0 to 40 as people write them: "2/0" and "00" are one. */
  static final Words<Integer> GAUGES =
      Words.ofSpellings(
          IntStream.rangeClosed(Lead.Awg.LEAST, Lead.Awg.MOST).boxed().toList(),
          Lead.Awg::spellings);

  private BenchFiles() {}
}
