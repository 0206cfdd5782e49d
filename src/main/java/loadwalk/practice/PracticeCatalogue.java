package loadwalk.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.practice.PracticeAmplifier.Rails;
import loadwalk.practice.PracticeAmplifier.Sink;
import loadwalk.practice.PracticeAmplifier.Stage;

/** Makes the practice amplifiers: five have a distinct character, the rest are drawn by seed. */
final class PracticeCatalogue {
  private static final double COPPER_PER_KELVIN = 0.004;
  private static final String[] MAKERS = {
    "Halvorsen & Pike", "Brightmoor", "Tessaly", "Oakline Audio", "Verrin"
  };

  private PracticeCatalogue() {}

  static PracticeAmplifier amplifier(long seed) {
    if (seed == 1) {
      return friendly();
    } else if (seed == 2) {
      return collapsing();
    } else if (seed == 3) {
      return currentLimited();
    } else if (seed == 4) {
      return switching();
    } else if (seed == 5) {
      return boastful();
    }
    return drawn(seed);
  }

  /** About 2 x 60 W, unregulated, underrated, and stable to half an ohm bridged. */
  private static PracticeAmplifier friendly() {
    Rails rails = new Rails(1.96, 0, 0.38, 700, 0.88, 1.6);
    Stage stage =
        new Stage(OutputClass.AB, 1.8, 0.04, COPPER_PER_KELVIN, 60, 1, 0.992, new Clipper(30));
    return new PracticeAmplifier(
        printed("Halvorsen & Pike", "HP 250", 1992, stage, rails, 50, 1.5, 2.5, 0.25, 50, 50),
        rails,
        stage,
        new Sink(0.3, 320));
  }

  /** A small converter that collapses below two ohms. */
  private static PracticeAmplifier collapsing() {
    Rails rails = new Rails(1.95, 0, 0.12, 260, 0.85, 1.1);
    Stage stage =
        new Stage(OutputClass.AB, 2.2, 0.08, COPPER_PER_KELVIN, 45, 1, 1.006, new Clipper(20));
    return new PracticeAmplifier(
        printed("Brightmoor", "B-70 II", 1996, stage, rails, 70, 1.4, 2.2, 2, 30),
        rails,
        stage,
        new Sink(0.7, 600));
  }

  /** Regulated rails, and output devices that limit current at one ohm. */
  private static PracticeAmplifier currentLimited() {
    Rails rails = new Rails(3.2, 27, 0.02, 500, 0.82, 2.3);
    Stage stage =
        new Stage(OutputClass.AB, 2.5, 0.06, COPPER_PER_KELVIN, 16, 1, 0.985, new Clipper(40));
    return new PracticeAmplifier(
        printed("Tessaly", "Duet 75R", 1989, stage, rails, 75, 1.8, 2, 1, 30, 30),
        rails,
        stage,
        new Sink(0.5, 900));
  }

  /** A class D amplifier with regulated rails. */
  private static PracticeAmplifier switching() {
    Rails rails = new Rails(3.0, 30, 0.03, 700, 0.9, 0.9);
    Stage stage =
        new Stage(OutputClass.D, 1.0, 0.07, COPPER_PER_KELVIN, 40, 0.93, 0.997, new Clipper(60));
    return new PracticeAmplifier(
        printed("Oakline Audio", "Spar D2", 2009, stage, rails, 100, 1.8, 2, 1, 35, 35),
        rails,
        stage,
        new Sink(1.2, 500));
  }

  /** A leaflet that claims twice the true power, and rails that sag at once. */
  private static PracticeAmplifier boastful() {
    Rails rails = new Rails(1.5, 0, 0.6, 160, 0.8, 0.7);
    Stage stage =
        new Stage(OutputClass.B, 2.0, 0.12, COPPER_PER_KELVIN, 30, 1, 0.97, new Clipper(12));
    return new PracticeAmplifier(
        printed("Verrin", "Thunder 400", 1994, stage, rails, 60, 1.7, 2.8, 2, 25),
        rails,
        stage,
        new Sink(0.9, 450));
  }

  private static PracticeAmplifier drawn(long seed) {
    Random random = Noise.generator(seed, "amplifier");
    boolean regulated = random.nextInt(3) == 0;
    OutputClass outputClass = OutputClass.values()[random.nextInt(3)];
    double watts = 25 * Math.pow(5, random.nextDouble());
    double rail = Math.sqrt(2 * watts * 4) * 1.08 + 2;
    double ratio = (regulated ? 1.35 : 1.06) * rail / 13.6;
    double sag = (regulated ? 0.002 : 0.02 + 0.03 * random.nextDouble()) * rail * rail / watts;
    double converterWatts = watts * (3.5 + 4 * random.nextDouble());
    double efficiency = 0.8 + 0.1 * random.nextDouble();
    Rails rails =
        new Rails(
            ratio,
            regulated ? rail : 0,
            sag,
            converterWatts,
            efficiency,
            0.5 + 0.01 * watts * random.nextDouble());
    Stage stage =
        new Stage(
            outputClass,
            1 + 1.5 * random.nextDouble(),
            0.03 + 0.06 * random.nextDouble(),
            COPPER_PER_KELVIN,
            Math.sqrt(watts) * (2.5 + 3 * random.nextDouble()),
            outputClass.pushPull() ? 1 : 0.9,
            1 + 0.01 * random.nextGaussian(),
            new Clipper(12 + random.nextInt(40)));
    double boast = Math.pow(10, 0.25 * (2 * random.nextDouble() - 1));
    String maker = MAKERS[random.nextInt(MAKERS.length)];
    String model = (char) ('K' + random.nextInt(8)) + " " + (5 * (1 + random.nextInt(60)));
    double printedWatts = 5 * Math.max(3, Math.rint(watts * boast / 5));
    double fuse = 5 * Math.ceil(watts * 4 / 0.55 / 13.8 / 5);
    return new PracticeAmplifier(
        printed(
            maker, model, 1985 + random.nextInt(25), stage, rails, printedWatts, 1.6, 2.4, 1, fuse),
        rails,
        stage,
        new Sink(15 / watts + 0.3, 400 + 500 * random.nextDouble()));
  }

  private static Amplifier printed(
      String maker,
      String model,
      int year,
      Stage stage,
      Rails rails,
      double watts,
      double gainAtTwoOhms,
      double gainBridged,
      double minimumStereoOhms,
      double... fuses) {
    List<Double> fuseList = new ArrayList<>();
    for (double fuse : fuses) {
      fuseList.add(fuse);
    }
    return new Amplifier(
        maker,
        model,
        Optional.empty(),
        OptionalInt.of(year),
        Optional.of(stage.outputClass().word()),
        OptionalInt.of(2),
        List.of(
            rating(Mode.STEREO, 4, watts),
            rating(Mode.STEREO, 2, Math.rint(watts * gainAtTwoOhms)),
            rating(Mode.BRIDGED, 4, Math.rint(watts * gainBridged))),
        OptionalDouble.of(minimumStereoOhms),
        OptionalDouble.of(2 * minimumStereoOhms),
        fuseList,
        Optional.of(rails.regulated()));
  }

  private static Rating rating(Mode mode, double ohms, double watts) {
    return new Rating(mode, ohms, watts, OptionalDouble.of(13.8), OptionalDouble.of(1));
  }
}
