package loadwalk.plan;

import java.util.List;
import java.util.Map;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.plan.wiring.WiringLoadBank;
import loadwalk.sequence.Sequence;

/**
 * The one set of rules that walk, plan, rehearsal, replay, screens and sheet share: the data
 * tables, the wiring of loads, and the forecaster and planner that use both.
 *
 * <p>Each part is made on first use, on the calling thread, so that no table or forecast delays the
 * first frame.
 */
public final class Rules implements Forecaster {
  private final Map<String, String> ownTables;
  private volatile Data data;
  private volatile Judgement judgement;

  private Rules(Map<String, String> ownTables) {
    this.ownTables = Map.copyOf(ownTables);
  }

  /** The tables, and the wire data computed from them. */
  private record Data(Tables tables, Wire wire) {
    static Data of(Map<String, String> ownTables) {
      Tables tables = Tables.stock();
      for (Map.Entry<String, String> own : ownTables.entrySet()) {
        tables = tables.with(own.getKey(), own.getValue());
      }
      return new Data(tables, new Wire(tables));
    }
  }

  /** The forecaster and the planner. */
  private record Judgement(Forecaster forecaster, BenchPlanner planner) {
    static Judgement of(Tables tables) {
      WiringLoadBank bank = new WiringLoadBank(tables);
      StepCautions cautions = new StepCautions(tables, bank);
      Forecaster forecaster = new StandardForecaster(cautions);
      return new Judgement(forecaster, new BenchPlanner(forecaster, cautions, tables, bank));
    }
  }

  /**
   * Makes rules in which the operator's own tables take precedence over the stock tables. Own
   * tables are read immediately, because their faults are reported before anything else.
   *
   * @param ownTables the text of each own table by file name; empty for the stock tables
   * @throws IllegalArgumentException with one sentence that names file, line and column
   */
  public static Rules of(Map<String, String> ownTables) {
    Rules rules = new Rules(ownTables);
    if (!ownTables.isEmpty()) {
      rules.data = Data.of(ownTables);
    }
    return rules;
  }

  private Data data() {
    Data known = data;
    if (known != null) {
      return known;
    }
    synchronized (this) {
      if (data == null) {
        data = Data.of(Map.of());
      }
      return data;
    }
  }

  private Judgement judgement() {
    Judgement known = judgement;
    if (known != null) {
      return known;
    }
    synchronized (this) {
      if (judgement == null) {
        judgement = Judgement.of(tables());
      }
      return judgement;
    }
  }

  /** Returns the text of each of the operator's own tables by file name. */
  public Map<String, String> ownTables() {
    return ownTables;
  }

  /** Makes everything now; call it on a background thread. */
  public void prepare() {
    judgement();
  }

  /** Returns wire, fuse and resistor data. */
  public Tables tables() {
    return data().tables();
  }

  /** Returns the wire data for the leads, computed from the tables. */
  public Wire wire() {
    return data().wire();
  }

  /**
   * Plans every step of a sequence.
   *
   * @param measured what has been measured so far, oldest first
   */
  public BenchPlan plan(
      Sequence sequence, Amplifier amplifier, Bench bench, List<Observation> measured) {
    return judgement().planner().plan(sequence, amplifier, bench, measured);
  }

  @Override
  public Forecast forecast(Evidence evidence, Target target) {
    return judgement().forecaster().forecast(evidence, target);
  }

  @Override
  public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return judgement().forecaster().judge(evidence, target, entries);
  }

  @Override
  public List<Doubt> judgeSoFar(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
    return judgement().forecaster().judgeSoFar(evidence, target, entries);
  }
}
