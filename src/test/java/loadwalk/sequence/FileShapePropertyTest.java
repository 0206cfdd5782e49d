package loadwalk.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Mode;
import loadwalk.json.Fault;
import loadwalk.json.FileShape;
import loadwalk.json.Shaped;
import loadwalk.practice.PracticeRig;
import org.junit.jupiter.api.Test;

/** What a shape writes it reads back the same, and what it reads is held to every limit. */
class FileShapePropertyTest {
  private static final long SEEDS = 300;
  private static final Pattern NUMBER = Pattern.compile("(?<=[:\\[,])-?[0-9.]+(?=[,}\\]])");

  private static final String AMPLIFIER =
      "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Brightmoor\",\"model\":\"B2\","
          + "\"year\":1994,\"channels\":2,\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,"
          + "\"watts\":75,\"supplyVolts\":12,\"thdPercent\":0.1}],"
          + "\"minimumOhms\":{\"stereo\":0.5,\"bridged\":1},\"fuses\":[30,40]}";
  private static final String BENCH =
      "{\"format\":\"loadwalk-bench/1\",\"supplies\":[{\"volts\":13.8,\"amps\":100}],"
          + "\"leads\":[{\"awg\":4,\"metres\":1.5,\"parallel\":2},{\"mm2\":50,\"metres\":1.5}],"
          + "\"fuse\":{\"amps\":200},\"loads\":[{\"ohms\":1,\"tolerancePercent\":1,"
          + "\"watts\":300,\"count\":8,\"ppmPerKelvin\":50}],"
          + "\"meters\":[{\"reads\":\"outputVolts\",\"percent\":0.5,\"digits\":3,"
          + "\"resolution\":0.01,\"hertz\":[45,1000],\"connection\":{\"serial\":\"COM1\","
          + "\"baud\":9600,\"query\":\"READ?\",\"scale\":2,\"timeoutMillis\":500}}],"
          + "\"usableFraction\":0.8}";
  private static final String SEQUENCE =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"mine\",\"title\":\"Mine\","
          + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1.0},\"supplyVolts\":13.8,"
          + "\"steps\":[{\"do\":\"warm-up\",\"minutes\":15,\"powerFraction\":0.5,"
          + "\"steadyCelsiusPerMinute\":1},{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4},"
          + "{\"do\":\"music\",\"minutes\":3},"
          + "{\"do\":\"recheck\",\"of\":[\"heaviest\"],\"afterWarmMinutes\":15}]}";

  @Test
  void amplifierAndBench_ofEveryPracticeRig_areReadAsTheyWereWritten() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      PracticeRig rig = PracticeRig.ofSeed(seed);
      Amplifier amplifier = rig.amplifier().printed();
      Bench bench = rig.bench().described();
      assertEquals(amplifier, again(BenchFiles.AMPLIFIER, amplifier), "seed " + seed);
      assertEquals(bench, again(BenchFiles.BENCH, bench), "seed " + seed);
    }
  }

  @Test
  void sequence_ofEveryKindOfStep_isReadAsItWasWritten() {
    Set<String> met = new TreeSet<>();
    for (long seed = 1; seed <= SEEDS; seed++) {
      Sequence sequence = anySequence(new Random(seed));
      assertEquals(sequence, again(SequenceReader.FILE, sequence), "seed " + seed);
      sequence.steps().forEach(step -> met.add(step.verb()));
    }
    assertEquals(StepReader.KINDS.all().keySet(), met);
  }

  /** Returns a sequence of up to 20 steps that may stand where they do. */
  private static Sequence anySequence(Random random) {
    List<String> measured = new ArrayList<>();
    Map<String, Integer> counts = new HashMap<>();
    List<Step> steps = new ArrayList<>();
    for (int left = 1 + random.nextInt(20); left > 0; left--) {
      Step step = anyStep(random, measured);
      steps.add(step);
      if (step.load().isPresent()) {
        measured.add(PlannedStep.numbered(step.baseId(), counts));
      }
    }
    return new Sequence(
        "walk-" + random.nextInt(1000),
        anyText(random),
        between(random, 1, 100_000),
        between(random, 0.001, 50),
        between(random, 1, 100),
        steps,
        "");
  }

  private static Step anyStep(Random random, List<String> measured) {
    double minutes = between(random, StepReader.LEAST_MINUTES, StepReader.MOST_MINUTES);
    switch (random.nextInt(measured.isEmpty() ? 5 : 7)) {
      case 0:
        return new WarmUp(minutes, between(random, 0.01, 1), between(random, 0.01, 100));
      case 1:
        return new Idle();
      case 2:
        return new Music(minutes);
      case 3:
        return new Note(anyText(random) + "\n\t" + anyText(random));
      case 4:
        Mode mode = Mode.values()[random.nextInt(Mode.values().length)];
        return new Measure(mode, between(random, 0.05, 1000), random.nextBoolean());
      case 5:
        return new OpenLoad();
      default:
        String of = measured.get(random.nextInt(measured.size()));
        return new Recheck(
            random.nextBoolean() ? List.of(of) : List.of(Recheck.HEAVIEST, of),
            random.nextBoolean() ? minutes : 0);
    }
  }

  private static double between(Random random, double least, double most) {
    double value = least + random.nextDouble() * (most - least);
    return random.nextBoolean() ? value : Math.max(least, Math.rint(value));
  }

  private static String anyText(Random random) {
    String letters = "aZ 0\"\\/{}«»Ω°é漢😀'<&>";
    int[] points = letters.codePoints().toArray();
    StringBuilder out = new StringBuilder("x");
    for (int left = random.nextInt(30); left > 0; left--) {
      out.appendCodePoint(points[random.nextInt(points.length)]);
    }
    return out.toString();
  }

  private static <T extends Shaped<T>> T again(FileShape<T> file, T value) {
    return file.read(bytes(file.text(value)), "again").found().orElseThrow();
  }

  @Test
  void everyNumber_beyondItsLimits_isRefusedAtItsPlace() {
    assertEquals(10, refused(BenchFiles.AMPLIFIER, AMPLIFIER));
    assertEquals(22, refused(BenchFiles.BENCH, BENCH));
    assertEquals(9, refused(SequenceReader.FILE, SEQUENCE));
  }

  /** Puts a number that nothing allows in the place of each, one at a time. */
  private static int refused(FileShape<?> file, String good) {
    assertEquals(List.of(), file.read(bytes(good), "f").faults());
    Matcher number = NUMBER.matcher(good);
    int count = 0;
    while (number.find()) {
      count++;
      String bad = good.substring(0, number.start()) + "-1e12" + good.substring(number.end());
      Fault first = file.read(bytes(bad), "f").faults().get(0);
      assertEquals(number.start() + 1, first.column(), bad);
      assertTrue(first.sentence().contains("must be between"), first::text);
    }
    return count;
  }

  @Test
  void everyKindOfStep_hasAWord() {
    assertEquals(
        Arrays.stream(Step.class.getPermittedSubclasses()).collect(Collectors.toSet()),
        StepReader.KINDS.all().values().stream().map(Step::getClass).collect(Collectors.toSet()));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
