package loadwalk.app.sound;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import loadwalk.app.loop.HastyClocks;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.WavReader;

/** Sound inputs that play files, or do worse. */
public final class Inputs {
  /** A machine without a sound input. */
  public static final LiveInput NONE =
      () -> {
        throw new CaptureException("This computer has no sound input. Type the readings.");
      };

  private Inputs() {}

  /** Plays a file in real time, or so many times as fast. */
  public static LiveInput playing(Path file, int times) {
    return () -> {
      try {
        WavReader reader = WavReader.open(new BufferedInputStream(Files.newInputStream(file)));
        return new RealTimeSource(reader, new HastyClocks(times));
      } catch (IOException e) {
        throw new CaptureException("The fake input has no file: " + e.getMessage());
      }
    };
  }

  /** Lets the latch go once the listener has closed an input, which is the last it does. */
  public static LiveInput telling(LiveInput input, CountDownLatch closed) {
    return () -> new Telling(input.open(), closed);
  }

  /** Never answers, as a sound server that hangs does, until the latch is let go. */
  public static LiveInput hanging(CountDownLatch latch) {
    return () -> {
      try {
        latch.await();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      throw new CaptureException("The sound input hung.");
    };
  }

  /** An input that tells when it is closed. */
  private record Telling(LiveInput.Opened opened, CountDownLatch closed)
      implements LiveInput.Opened {
    @Override
    public double samplesPerSecond() {
      return opened.samplesPerSecond();
    }

    @Override
    public int channels() {
      return opened.channels();
    }

    @Override
    public OptionalDouble step() {
      return opened.step();
    }

    @Override
    public int read(double[][] block) throws IOException, CaptureException {
      return opened.read(block);
    }

    @Override
    public void close() {
      opened.close();
      closed.countDown();
    }
  }
}
