package loadwalk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * Looks processes up on this machine.
 *
 * <p>Where there is {@code /proc}, the start is the tick count since boot together with the boot's
 * own number, as in proc(5), field 22 of stat: the start instant that Java offers there is computed
 * from the wall clock and moves when the clock is set.
 */
final class MachineProcesses implements Processes {
  private static final Path PROC = Path.of("/proc");
  private static final int STATE = 0;
  private static final int START_TICKS = 19;

  @Override
  public long own() {
    return ProcessHandle.current().pid();
  }

  @Override
  public Optional<String> birth(long pid) {
    Optional<ProcessHandle> process = ProcessHandle.of(pid).filter(ProcessHandle::isAlive);
    if (process.isEmpty()) {
      return Optional.empty();
    }
    try {
      String boot = Files.readString(PROC.resolve("sys/kernel/random/boot_id")).strip();
      String stat = Files.readString(PROC.resolve(pid + "/stat"));
      String[] afterName = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
      boolean dead = afterName[STATE].equals("Z") || afterName[STATE].equals("X");
      return dead ? Optional.empty() : Optional.of(boot + ":" + afterName[START_TICKS]);
    } catch (IOException noProc) {
      return Optional.of(
          process.get().info().startInstant().map(Instant::toString).orElse(UNKNOWN_BIRTH));
    }
  }
}
