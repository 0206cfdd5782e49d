package loadwalk.experiment;

import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;

/**
 * Draws amplifiers of another build than {@link CircuitPopulation}: class G, four channels of which
 * two are used, heavier sag, foldback limiting, tighter fuses and supplies.
 */
final class WaveformPopulation implements Population {
  @Override
  public String name() {
    return "waveforms";
  }

  @Override
  public Specimen specimen(long seed, int number) {
    Draw draw = new Draw(seed ^ 0x5DEECE66DL, number);
    double watts = draw.logUniform(15, 600);
    boolean regulated = draw.chance(0.35);
    boolean fourChannels = draw.chance(0.3);
    int kind = draw.whole(4);
    WaveformDevice free = device(draw, watts, regulated, fourChannels, kind);
    double need = free.at(Mode.BRIDGED, 0.5, 60).supplyAmps();
    double needStereo = free.at(Mode.STEREO, 2, 60).supplyAmps();
    Bench bench = draw.bench(need * draw.logUniform(0.5, 1.8));
    String letters = kind == 0 ? "D" : kind == 1 ? "G" : "AB";
    Amplifier printed =
        draw.leaflet(
            free, letters, regulated, fourChannels ? 4 : 2, needStereo * draw.logUniform(0.5, 1.2));
    double supplyAmps = bench.usableAmps().orElseThrow() / bench.usableFraction();
    return new Specimen(
        name() + " " + number,
        printed,
        bench,
        free.withSupplyAmps(supplyAmps),
        draw.meters(0.006),
        seed * 524_287 + number);
  }

  private static WaveformDevice device(
      Draw draw, double watts, boolean regulated, boolean fourChannels, int kind) {
    double peakVolts = Math.sqrt(2 * watts * 4);
    double drop = draw.uniform(0.8, 4);
    double loaded = peakVolts + drop;
    double amps = 2 * peakVolts / 4 * 2 / Math.PI;
    double sag = regulated ? draw.uniform(0, 0.03) : draw.logUniform(0.04, 0.25);
    double stiffer = fourChannels ? 0.5 : 1;
    double channels = fourChannels ? 2 : 1;
    WaveformDevice.Rail rail =
        new WaveformDevice.Rail(
            loaded * (1 + sag),
            regulated,
            stiffer * sag * loaded / amps,
            draw.uniform(0, 0.6),
            channels * loaded * amps * draw.logUniform(1.2, 7),
            draw.uniform(0.72, 0.92),
            channels * (0.2 + watts * draw.logUniform(0.002, 0.025)),
            kind == 1 ? draw.uniform(0.4, 0.65) : 1);
    double peakAmps = peakVolts / 4 * draw.logUniform(2.2, 12);
    WaveformDevice.Output output =
        new WaveformDevice.Output(
            kind == 0,
            draw.uniform(0.8, 0.94),
            drop,
            draw.logUniform(0.01, 0.15),
            peakAmps * draw.uniform(0.5, 1),
            peakAmps,
            1 + draw.normal(0.015),
            draw.uniform(0, 0.001));
    double amps4 = 2 * watts / 0.55 / 13.8;
    WaveformDevice.Line line =
        new WaveformDevice.Line(
            13.8 + draw.normal(0.06), draw.logUniform(0.01, 0.08) * 13.8 / (3 * amps4), 1e6);
    return new WaveformDevice(line, rail, output);
  }
}
