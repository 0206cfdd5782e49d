package loadwalk.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.DiskFaults;
import loadwalk.app.store.SequenceFinder;
import loadwalk.cli.KeptSequences;
import loadwalk.cli.OwnTables;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.sequence.Sequence;

/** Takes sequences from the data home and from the jar. */
public final class KeptSequencesOnDisk implements KeptSequences {

  @Override
  public String version() {
    return CrashReport.Machine.ofThisProcess().version();
  }

  @Override
  public Rules rules(Optional<Path> home) {
    return OwnTables.rules(dataHome(home).root());
  }

  @Override
  public Optional<Read<Sequence>> named(Optional<Path> home, String name) {
    try {
      return new SequenceFinder(dataHome(home))
          .find(name)
          .map(read -> Read.of(read.found().map(SequenceFinder.Found::sequence), read.faults()));
    } catch (IOException e) {
      Fault fault = new Fault(name, 1, 1, "", DiskFaults.sentence(e));
      return Optional.of(new Read.Bad<>(List.of(fault)));
    }
  }

  private static DataHome dataHome(Optional<Path> home) {
    return DataHome.choose(DataHome.Surroundings.ofThisProcess(home));
  }
}
