package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MachineProcessesTest {
  private final Processes machine = new MachineProcesses();

  @Test
  void birth_ofThisProcess_isTheSameEachTime() {
    Optional<String> birth = machine.birth(machine.own());
    assertTrue(birth.isPresent());
    assertEquals(birth, new MachineProcesses().birth(ProcessHandle.current().pid()));
  }

  @Test
  void birth_ofAnotherProcess_differsAndEndsWithIt() throws Exception {
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                WaitingChild.class.getName())
            .start();
    try {
      Holder holder =
          new Holder(child.pid(), machine.birth(child.pid()).orElseThrow(), "2026-03-01T10:00:00Z");
      assertNotEquals(machine.birth(machine.own()), Optional.of(holder.birth()));
      assertTrue(holder.lives(machine));
      child.destroyForcibly().waitFor();
      assertEquals(Optional.empty(), machine.birth(child.pid()));
      assertFalse(holder.lives(machine));
    } finally {
      child.destroyForcibly();
    }
  }

  @Test
  void birth_ofNoProcess_isEmpty() {
    assertEquals(Optional.empty(), machine.birth(Long.MAX_VALUE));
  }

  /** Waits for the end of its input. */
  static final class WaitingChild {
    public static void main(String[] arguments) throws Exception {
      while (System.in.read() >= 0) {
        continue;
      }
    }
  }
}
