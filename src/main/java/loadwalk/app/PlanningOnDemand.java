package loadwalk.app;

import java.util.function.Supplier;
import loadwalk.bench.Tables;

/** Makes the planning once, when it is first asked for, on whatever thread asks. */
final class PlanningOnDemand implements Supplier<Planning> {
  private final Supplier<Tables> tables;
  private Planning made;

  PlanningOnDemand(Supplier<Tables> tables) {
    this.tables = tables;
  }

  @Override
  public synchronized Planning get() {
    if (made == null) {
      made = Planning.of(tables.get());
    }
    return made;
  }
}
