package loadwalk.app;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Processes that live and die as a test says. */
final class FakeProcesses implements Processes {
  private final Map<Long, String> births;
  private final long own;

  FakeProcesses(long own) {
    this(own, new HashMap<>());
    births.put(own, "boot:" + own);
  }

  private FakeProcesses(long own, Map<Long, String> births) {
    this.own = own;
    this.births = births;
  }

  /** Returns the same machine seen from another process. */
  FakeProcesses as(long pid) {
    births.put(pid, "boot:" + pid);
    return new FakeProcesses(pid, births);
  }

  void dies(long pid) {
    births.remove(pid);
  }

  void isBornAgain(long pid, String birth) {
    births.put(pid, birth);
  }

  @Override
  public long own() {
    return own;
  }

  @Override
  public Optional<String> birth(long pid) {
    return Optional.ofNullable(births.get(pid));
  }
}
