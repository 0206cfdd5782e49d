package loadwalk.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import java.util.function.Function;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReadersFuzzTest {
  private static final long SEED = Long.getLong("fuzz.seed", 6_000_002L);

  private static final String SEQUENCE =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"mine\",\"title\":\"Mine\","
          + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1.0},\"supplyVolts\":13.8,"
          + "\"steps\":[{\"do\":\"warm-up\",\"minutes\":15,\"powerFraction\":0.5},"
          + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4},{\"do\":\"open-load\"},"
          + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4,\"optional\":true},"
          + "{\"do\":\"note\",\"text\":\"read this\"},{\"do\":\"music\",\"minutes\":3},"
          + "{\"do\":\"recheck\",\"of\":[\"stereo-4#2\",\"heaviest\"],\"afterWarmMinutes\":15}]}";
  private static final String AMPLIFIER =
      "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Brightmoor\",\"model\":\"B2\","
          + "\"year\":1994,\"class\":\"AB\",\"channels\":2,"
          + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":75,\"supplyVolts\":12}],"
          + "\"minimumOhms\":{\"stereo\":0.5,\"bridged\":1},\"fuses\":[30,30],\"regulated\":null}";
  private static final String BENCH =
      "{\"format\":\"loadwalk-bench/1\",\"name\":\"North bench\","
          + "\"supplies\":[{\"volts\":13.8,\"amps\":100}],"
          + "\"leads\":[{\"label\":\"plus\",\"awg\":\"1/0\",\"metres\":1.5,\"parallel\":2},"
          + "{\"mm2\":50,\"metres\":1.5}],\"fuse\":{\"amps\":200},"
          + "\"loads\":[{\"ohms\":1,\"tolerancePercent\":1,\"watts\":300,\"count\":8}],"
          + "\"meters\":[{\"reads\":\"outputVolts\",\"percent\":0.5,\"digits\":3,"
          + "\"resolution\":0.01,\"hertz\":[45,1000]}],\"usableFraction\":0.8}";

  /** The three readers, each with a good text and a check of what it read. */
  enum Reader {
    SEQUENCE_FILE(SEQUENCE, SequenceReader::read, ReadersFuzzTest::checkSequence),
    AMPLIFIER_FILE(AMPLIFIER, BenchFiles.AMPLIFIER::read, ReadersFuzzTest::checkAmplifier),
    BENCH_FILE(BENCH, BenchFiles.BENCH::read, ReadersFuzzTest::checkBench);

    private final String good;
    private final BiFunction<byte[], String, Read<?>> read;
    private final Function<Object, String> problem;

    Reader(
        String good, BiFunction<byte[], String, Read<?>> read, Function<Object, String> problem) {
      this.good = good;
      this.read = read;
      this.problem = problem;
    }
  }

  @ParameterizedTest
  @EnumSource
  @Timeout(value = 2, unit = TimeUnit.MINUTES)
  void read_ofFiveThousandHostileFiles_givesAValueOrFaults(Reader reader) {
    run(reader, 5_000);
  }

  @ParameterizedTest
  @EnumSource
  @Tag("long")
  @Timeout(value = 60, unit = TimeUnit.MINUTES)
  void read_ofAMillionHostileFiles_givesAValueOrFaults(Reader reader) {
    run(reader, 1_000_000);
  }

  private static void run(Reader reader, int inputs) {
    Mutator mutator = new Mutator(SEED, Mutator.JSON_TOKENS);
    int good = 0;
    for (int i = 0; i < inputs; i++) {
      String text = i % 10 == 0 ? mutator.soup() : mutator.mutant(List.of(reader.good));
      byte[] bytes = mutator.bytes(text);
      String told = "seed " + SEED + ", " + reader + ", input " + i + ": " + text;
      Read<?> read = read(reader, bytes, told);
      if (read.found().isPresent()) {
        good++;
        assertEquals("", reader.problem.apply(read.found().get()), told);
      } else {
        assertFalse(read.faults().isEmpty(), told);
        read.faults().forEach(fault -> checkFault(fault, told));
      }
    }
    System.out.printf("%s: %d inputs, seed %d, %d good%n", reader, inputs, SEED, good);
    assertTrue(good > inputs / 50 && good < inputs * 9 / 10, "too one-sided: " + good);
  }

  private static Read<?> read(Reader reader, byte[] bytes, String told) {
    try {
      return reader.read.apply(bytes, "fuzz.json");
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(told, e);
    }
  }

  private static void checkFault(Fault fault, String told) {
    assertTrue(fault.line() >= 1 && fault.column() >= 1, told + " " + fault);
    assertFalse(fault.sentence().isBlank() || fault.sentence().endsWith("."), told + " " + fault);
    assertFalse(fault.text().chars().anyMatch(Character::isISOControl), told + " " + fault);
    assertTrue(fault.text().length() < 4000, told + " " + fault);
  }

  private static String checkSequence(Object value) {
    Sequence sequence = (Sequence) value;
    List<String> ids = PlannedStep.of(sequence).stream().map(PlannedStep::id).toList();
    boolean unique = ids.stream().distinct().count() == ids.size();
    Sequence again =
        SequenceReader.read(SequenceReader.FILE.text(sequence), "again").found().orElseThrow();
    boolean same =
        again.steps().equals(sequence.steps()) && again.toneHertz() == sequence.toneHertz();
    return (unique ? "" : "ids repeat ") + (same ? "" : "does not survive being written");
  }

  private static String checkAmplifier(Object value) {
    byte[] text = BenchFiles.AMPLIFIER.text((Amplifier) value).getBytes(StandardCharsets.UTF_8);
    Amplifier again = BenchFiles.AMPLIFIER.read(text, "again").found().orElseThrow();
    return again.equals(value) ? "" : "does not survive being written";
  }

  private static String checkBench(Object value) {
    byte[] text = BenchFiles.BENCH.text((Bench) value).getBytes(StandardCharsets.UTF_8);
    Bench again = BenchFiles.BENCH.read(text, "again").found().orElseThrow();
    return again.equals(value) ? "" : "does not survive being written";
  }
}
