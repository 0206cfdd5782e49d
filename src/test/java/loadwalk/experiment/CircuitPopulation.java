package loadwalk.experiment;

import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.practice.Circuit;
import loadwalk.practice.Clipper;
import loadwalk.practice.OperatingPoint;
import loadwalk.practice.OutputClass;
import loadwalk.practice.PracticeAmplifier;
import loadwalk.practice.SourceLine;

/**
 * Draws amplifiers of 15 W to 1 kW a channel on the practice circuit: current limits, converter
 * droop and power limit, supply sag and limit, rails regulated and not, classes AB, B and D.
 */
final class CircuitPopulation implements Population {
  private static final List<Clipper.Shape> SHAPES =
      List.of(shape(10), shape(16), shape(30), shape(80));
  private static final double SET_VOLTS = 13.8;

  @Override
  public String name() {
    return "circuits";
  }

  @Override
  public Specimen specimen(long seed, int number) {
    Draw draw = new Draw(seed, number);
    double watts = draw.logUniform(15, 1000);
    boolean regulated = draw.chance(0.4);
    OutputClass outputClass =
        draw.chance(0.3) ? OutputClass.D : draw.chance(0.7) ? OutputClass.AB : OutputClass.B;
    PracticeAmplifier inside = amplifier(draw, watts, regulated, outputClass);
    double amps4 = 2 * watts / 0.55 / SET_VOLTS;
    double sourceOhms = draw.logUniform(0.008, 0.06) * SET_VOLTS / (3 * amps4);
    SourceLine line = new SourceLine(SET_VOLTS + draw.normal(0.04), sourceOhms, 1e6);
    Clipper.Shape shape = SHAPES.get(draw.whole(SHAPES.size()));
    Solved free = new Solved(inside, line, shape, draw.uniform(0, 0.001));
    double need = free.at(Mode.BRIDGED, 0.5, 60).supplyAmps();
    double needStereo = free.at(Mode.STEREO, 2, 60).supplyAmps();
    Bench bench = draw.bench(need * draw.logUniform(0.4, 2.5));
    Amplifier printed =
        draw.leaflet(free, outputClass.word(), regulated, 2, needStereo * draw.logUniform(0.6, 2));
    double supplyAmps = bench.usableAmps().orElseThrow() / bench.usableFraction();
    return new Specimen(
        name() + " " + number,
        printed,
        bench,
        free.withSupplyAmps(supplyAmps),
        draw.meters(0.006),
        seed * 131_071 + number);
  }

  private static PracticeAmplifier amplifier(
      Draw draw, double watts, boolean regulated, OutputClass outputClass) {
    double peakVolts = Math.sqrt(2 * watts * 4);
    double saturation = draw.uniform(0.5, 3);
    double rail = peakVolts * draw.uniform(1.01, 1.05) + saturation;
    double railAmps = 2 * peakVolts / 4 * 2 / Math.PI;
    double sag = regulated ? draw.uniform(0, 0.02) : draw.logUniform(0.02, 0.15);
    double ratio = rail * (1 + sag) * (regulated ? draw.uniform(1.15, 1.6) : 1) / SET_VOLTS;
    double idle = 0.3 + watts * draw.logUniform(0.002, 0.02);
    PracticeAmplifier.Rails rails =
        new PracticeAmplifier.Rails(
            ratio,
            regulated ? rail * (1 + sag) : 0,
            sag * rail / railAmps,
            rail * railAmps * draw.logUniform(1.3, 9),
            draw.uniform(0.75, 0.94),
            idle);
    PracticeAmplifier.Stage stage =
        new PracticeAmplifier.Stage(
            outputClass,
            saturation,
            draw.logUniform(0.005, 0.12),
            draw.uniform(0.001, 0.005),
            peakVolts / 4 * draw.logUniform(2, 14),
            outputClass.pushPull() ? 1 : draw.uniform(0.82, 0.95),
            1 + draw.normal(0.012),
            new Clipper(30));
    return new PracticeAmplifier(
        Amplifier.named("Brightmoor", "X"), rails, stage, new PracticeAmplifier.Sink(0.5, 600));
  }

  private static Clipper.Shape shape(double knee) {
    return new Clipper(knee).atThd(1);
  }

  /** The practice circuit with heat drift. */
  private record Solved(
      PracticeAmplifier amplifier, SourceLine line, Clipper.Shape shape, double driftPerKelvin)
      implements Device {
    @Override
    public Truth at(Mode mode, double ohms, double celsius) {
      return solved(mode, ohms, celsius, shape);
    }

    @Override
    public Truth atPart(Mode mode, double ohms, double celsius, double fraction) {
      double peak = Math.sqrt(2 * fraction) * shape.rms();
      return solved(mode, ohms, celsius, Clipper.Shape.sine(peak));
    }

    private Truth solved(Mode mode, double ohms, double celsius, Clipper.Shape driven) {
      Circuit circuit = new Circuit(amplifier, line, mode, ohms, celsius);
      double factor = 1 - driftPerKelvin * (celsius - 50);
      return truth(circuit.at(driven)).drifted(factor, amplifier.rails().idleAmps());
    }

    @Override
    public Truth idle() {
      return truth(new Circuit(amplifier, line, Mode.STEREO, 4, 40).at(Clipper.Shape.sine(0)));
    }

    @Override
    public Device withSupplyAmps(double amps) {
      SourceLine limited = new SourceLine(line.volts(), line.ohms(), amps);
      return new Solved(amplifier, limited, shape, driftPerKelvin);
    }

    private static Truth truth(OperatingPoint p) {
      return new Truth(
          p.outputVolts(), p.otherOutputVolts(), p.supplyVolts(), p.supplyAmps(), p.outputWatts());
    }
  }
}
