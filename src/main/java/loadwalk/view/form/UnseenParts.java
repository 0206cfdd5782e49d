package loadwalk.view.form;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;

/** Carries over what an earlier bench says and its form does not show. */
public final class UnseenParts {
  private UnseenParts() {}

  /**
   * Returns the bench as typed, with the usable share of the supplies, the labels and temperature
   * coefficients of loads that are still there, and the connections of meters that are.
   */
  public static Bench kept(Optional<Bench> before, Bench typed) {
    if (before.isEmpty()) {
      return typed;
    }
    List<LoadResistor> loads = typed.loads().stream().map(l -> load(before.get(), l)).toList();
    List<Meter> meters = typed.meters().stream().map(m -> meter(before.get(), m)).toList();
    return new Bench(
        typed.name(),
        typed.supplies(),
        typed.leads(),
        typed.fuseAmps(),
        loads,
        meters,
        before.get().usableFraction());
  }

  private static LoadResistor load(Bench before, LoadResistor typed) {
    return before.loads().stream()
        .filter(l -> l.ohms() == typed.ohms())
        .filter(l -> l.tolerancePercent() == typed.tolerancePercent())
        .filter(l -> l.watts() == typed.watts())
        .findFirst()
        .map(
            l ->
                new LoadResistor(
                    l.label(),
                    l.ohms(),
                    l.tolerancePercent(),
                    l.watts(),
                    typed.count(),
                    l.ppmPerKelvin(),
                    typed.mount()))
        .orElse(typed);
  }

  private static Meter meter(Bench before, Meter typed) {
    return before.meters().stream()
        .filter(m -> m.label().equals(typed.label()) && m.reads() == typed.reads())
        .flatMap(m -> m.connection().stream())
        .findFirst()
        .map(typed::connectedBy)
        .orElse(typed);
  }
}
