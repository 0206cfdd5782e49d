package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Estimates how far any rule could come on the simulated populations. */
class CrowdExperimentTest {
  private static final long SEED = Long.getLong("experiment.seed", 20260714);
  private static final int COUNT = Integer.getInteger("experiment.count", 1000);
  private static final int CROWD = Integer.getInteger("experiment.crowd", 20_000);

  @Test
  void knowingThePopulation_seesWhatIsPlain_andNotWhatNobodyCan() {
    Population population = new CircuitPopulation();
    Crowd crowd = new Crowd(population, SEED, 700);
    CrowdExperiment experiment =
        CrowdExperiment.run(population, crowd, SEED, 40, Arrangement.VOLTS);
    String table = experiment.table(population.name());
    assertEquals(100, experiment.doubtedPercent("decimal-point, volts"), table);
    assertTrue(experiment.doubtedPercent("peak-to-peak-for-rms, volts") > 95, table);
    assertTrue(experiment.doubtedPercent("digits-swapped, volts") < 100, table);
  }

  @Tag("long")
  @Test
  void knowingThePopulation_printsItsTable() {
    for (Population population : List.of(new CircuitPopulation(), new WaveformPopulation())) {
      Crowd crowd = new Crowd(population, SEED, CROWD);
      assertEquals(CROWD, crowd.members.size());
      for (Arrangement arrangement : List.of(Arrangement.AMPS, Arrangement.VOLTS)) {
        System.out.println(
            CrowdExperiment.run(population, crowd, SEED, COUNT, arrangement)
                .table(population.name()));
      }
    }
  }
}
