package loadwalk.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.cli.Shelves;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.Recovered;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.walk.FactReader;
import loadwalk.walk.Stamped;
import loadwalk.walk.UnreadableFact;

/** Takes sequences and journals from the data home. */
final class DataShelves implements Shelves {

  @Override
  public String version() {
    return CrashReport.Machine.ofThisProcess().version();
  }

  @Override
  public Optional<Read<Sequence>> sequence(Optional<Path> home, String name) {
    try {
      return new SequenceShelf(dataHome(home))
          .find(name)
          .map(read -> Read.of(read.found().map(SequenceShelf.Found::sequence), read.faults()));
    } catch (IOException e) {
      Fault fault = new Fault(name, 1, 1, "", "the sequence cannot be read: " + e.getMessage());
      return Optional.of(new Read.Bad<>(List.of(fault)));
    }
  }

  @Override
  public Journal journal(Optional<Path> home, String walk) {
    Optional<String> wrongName = WalkName.fault(walk);
    if (wrongName.isPresent()) {
      return new Journal(List.of(), wrongName, false);
    }
    SessionStore store = new SessionStore(dataHome(home), Clock.systemUTC());
    Opening opening = store.watch(new WalkName(walk), "it is replayed");
    if (opening instanceof Opening.Refused refused) {
      return new Journal(List.of(), Optional.of(refused.why()), false);
    }
    return journal(((Opening.Watching) opening).read());
  }

  private static Journal journal(Recovered read) {
    List<List<Stamped>> records = new ArrayList<>();
    try {
      for (JournalRecord record : read.records()) {
        records.add(FactReader.facts(record.body()));
      }
    } catch (UnreadableFact foreign) {
      return new Journal(records, Optional.of(foreign.getMessage() + "."), true);
    }
    return new Journal(records, read.told(), read instanceof Recovered.Damaged);
  }

  private static DataHome dataHome(Optional<Path> home) {
    return DataHome.choose(DataHome.Surroundings.ofThisProcess(home));
  }
}
