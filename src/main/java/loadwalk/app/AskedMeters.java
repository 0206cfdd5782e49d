package loadwalk.app;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loadwalk.app.meter.MetersOfWalk;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.UsedMeters;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.view.ProgramEvent;
import loadwalk.walk.fact.Fact;

/**
 * Connects the meters of a walk just opened: at once where this data home has used their addresses
 * or the operator gave the bench's file by hand, and the others only when the operator says so.
 */
final class AskedMeters {
  private final MetersOfWalk meters;
  private final UsedMeters used;
  private final Set<String> given = new HashSet<>();

  AskedMeters(MetersOfWalk meters, DataHome home) {
    this.meters = meters;
    this.used = new UsedMeters(home);
  }

  /** Takes a bench whose file the operator named: its addresses are asked for already. */
  void give(Bench bench) {
    connected(bench).forEach(meter -> given.add(address(meter)));
  }

  /** Connects what may be opened; returns the question about the rest, where there is any. */
  List<ProgramEvent> connect(Fact.Opened opened) {
    Set<String> known = used.all();
    List<Meter> all = connected(opened.bench());
    keep(all.stream().filter(meter -> given.contains(address(meter))).toList(), known);
    Set<String> mayBeOpened = new HashSet<>(known);
    mayBeOpened.addAll(given);
    meters.connect(opened, line -> mayBeOpened.contains(UsedMeters.address(line)));
    List<Meter> unasked =
        all.stream().filter(meter -> !mayBeOpened.contains(address(meter))).toList();
    return unasked.isEmpty() ? List.of() : List.of(new ProgramEvent.MetersAsked(unasked));
  }

  /** Connects every meter of the bench, and keeps that the operator has said so. */
  List<ProgramEvent> connectAll(Fact.Opened opened) {
    List<Meter> all = connected(opened.bench());
    if (all.isEmpty()) {
      return told("No meter of this bench has an address.");
    }
    boolean kept = keep(all, used.all());
    meters.connect(opened, line -> true);
    return told(
        kept
            ? "The meters are asked from now on."
            : "The meters are asked from now on. That cannot be kept in the data home; you will be"
                + " asked again.");
  }

  /** Returns whether the addresses are kept; without that the question only comes again. */
  private boolean keep(List<Meter> agreed, Set<String> known) {
    if (agreed.stream().allMatch(meter -> known.contains(address(meter)))) {
      return true;
    }
    try {
      used.add(agreed.stream().map(AskedMeters::line).toList());
      return true;
    } catch (IOException unwritten) {
      return false;
    }
  }

  private static List<Meter> connected(Bench bench) {
    return bench.meters().stream().filter(meter -> meter.connection().isPresent()).toList();
  }

  private static Connection.Line line(Meter meter) {
    return meter.connection().orElseThrow().line();
  }

  private static String address(Meter meter) {
    return UsedMeters.address(line(meter));
  }

  private static List<ProgramEvent> told(String sentence) {
    return List.of(new ProgramEvent.Told(sentence));
  }
}
