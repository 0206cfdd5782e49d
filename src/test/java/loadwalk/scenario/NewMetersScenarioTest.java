package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.walk.Effect;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bench taken over from an earlier walk names a meter: the screen asks before it is opened. */
class NewMetersScenarioTest {
  private static final int QUIET_MILLIS = 300;

  @TempDir Path folder;

  private ServerSocket meter;
  private BenchSide bench;

  @BeforeEach
  void openTheWalk() throws Exception {
    meter = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
    bench = BenchSide.at(folder);
    bench.program().open(asked());
    bench.tick();
  }

  @AfterEach
  void close() throws Exception {
    bench.program().die();
    meter.close();
  }

  private Effect.OpenWalk asked() {
    Meter clamp =
        new Meter("DMM of the north bench", ReadingId.SUPPLY_VOLTS, 0.5, 2, 0.01, Optional.empty())
            .connectedBy(
                new Connection(
                    new Connection.Tcp("127.0.0.1", meter.getLocalPort()), "READ?", "V", 1, 2000));
    Bench described =
        new Bench(
            "North bench",
            List.of(),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(clamp),
            Bench.DEFAULT_USABLE_FRACTION);
    return new Effect.OpenWalk(
        "stereo-only", Amplifier.named("Verrin", "V1"), described, OptionalLong.empty(), 1);
  }

  private boolean isCalled() throws Exception {
    meter.setSoTimeout(QUIET_MILLIS);
    try {
      meter.accept().close();
      return true;
    } catch (SocketTimeoutException nobody) {
      return false;
    }
  }

  @Test
  void keysTypedInPassing_openNothing_andF10GoesOnByHand() throws Exception {
    bench.sees("Open these addresses?", "127.0.0.1:" + meter.getLocalPort());
    bench.sees("DMM of the north bench (supply volts)", "Nothing was opened there yet");
    bench.press("Enter", "text:y4", "Enter", "wait:3").sees("Open these addresses?", "Press F8");
    assertEquals(false, isCalled());
    bench.press("F10").sees("brief: HEED", "These meters are left alone; type their readings.");
    bench.press("F3", "text:warm already", "Enter", "Enter", "F8").sees("No meter is connected");
    assertEquals(false, isCalled());
  }

  @Test
  void f8_opensThem_andTheHomeDoesNotAskAgain() throws Exception {
    bench.press("F8").sees("brief: HEED", "The meters are asked from now on.");
    assertTrue(isCalled());
    bench.program().die();
    bench.killedAndStartedAgain().press("Up", "Enter").seesNot("Open these addresses?");
    assertTrue(isCalled());
  }

  @Test
  void stopKey_stops_andOpensNothing() throws Exception {
    bench.press("Esc").sees("OUTPUT DOWN").press("text:a smell", "Enter").sees("PAUSED");
    assertEquals(false, isCalled());
    bench.killedAndStartedAgain().press("Up", "Enter").sees("Open these addresses?");
  }
}
