package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import loadwalk.wave.analysis.LiveMeter;
import loadwalk.wave.tone.Tone;
import loadwalk.wave.tone.WavWriter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What waves cost in time and memory, and files that would cost too much if they were believed. */
class WaveCostTest {
  private static final long HUGE = 2L << 30;
  private static final int SMALL_HEAP_MEGABYTES = 24;

  @TempDir private Path folder;

  private Path tone(double seconds) throws IOException {
    Path file = folder.resolve("tone.wav");
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      new WavWriter(24, 2, 1).write(Tone.steady(40, -6, 96_000, seconds, 0.05), out);
    }
    return file;
  }

  /** A header that promises so much sound, and a file of so many bytes without any in it. */
  private Path sparse(long bytes, int promised) throws IOException {
    Path file = folder.resolve("sparse.wav");
    ByteBuffer header = ByteBuffer.allocate(44).order(ByteOrder.LITTLE_ENDIAN);
    header.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(promised);
    header.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
    header.putShort((short) 1).putShort((short) 2).putInt(96_000).putInt(576_000);
    header.putShort((short) 6).putShort((short) 24);
    header.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(promised).flip();
    try (SeekableByteChannel channel =
        Files.newByteChannel(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      channel.write(header);
      channel.position(bytes - 1);
      channel.write(ByteBuffer.wrap(new byte[1]));
    }
    return file;
  }

  /** What a process of a small heap said, its code and its processor seconds. */
  private record Said(int code, String out, String err, double cpuSeconds) {}

  private Said wave(String... arguments) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(Child.command(folder, arguments));
    words.removeAll(List.of("--home", folder.toString()));
    words.add(1, "-Xmx" + SMALL_HEAP_MEGABYTES + "m");
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(words).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    double cpu = 0;
    while (!process.waitFor(50, TimeUnit.MILLISECONDS)) {
      cpu = process.info().totalCpuDuration().map(d -> d.toMillis() / 1e3).orElse(cpu);
    }
    return new Said(process.exitValue(), Files.readString(out), Files.readString(err), cpu);
  }

  @Test
  void longFile_isReadInASmallHeap() throws Exception {
    Said said = wave("wave", tone(120).toString(), "--json", "--limit", "1");
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("\"frequencyHertz\":40.0000"), said.out);
  }

  @Test
  void sparseFileWithALyingHeader_getsASentence_inASmallHeap() throws Exception {
    Said said = wave("wave", sparse(32L << 20, Integer.MAX_VALUE).toString(), "--json");
    assertEquals(2, said.code, said.err);
    assertTrue(said.err.contains("silent"), said.err);
    assertEquals("", said.out);
  }

  @Tag("long")
  @Test
  void twoGigabytes_getASentence_inASmallHeap() throws Exception {
    Said said = wave("wave", sparse(HUGE, -1).toString(), "--json");
    assertEquals(2, said.code, said.err);
    assertTrue(said.err.contains("silent"), said.err);
    System.out.printf(
        Locale.ROOT,
        "2 GiB of silence, heap of %d MiB: %.1f s of one core%n",
        SMALL_HEAP_MEGABYTES,
        said.cpuSeconds);
  }

  /** Twenty minutes are 690 MB; the heap stays that of two. */
  @Tag("long")
  @Test
  void twentyMinutes_areReadInASmallHeap() throws Exception {
    Said said = wave("wave", tone(1200).toString(), "--json", "--limit", "1");
    assertEquals(0, said.code, said.err);
    System.out.printf(
        Locale.ROOT,
        "20 min of 96 kHz, 24 bit, stereo, heap of %d MiB: %.1f s of one core%n",
        SMALL_HEAP_MEGABYTES,
        said.cpuSeconds);
  }

  /** One minute of 96 kHz, 24 bit, stereo: what the command's own thread takes, cold. */
  @Tag("long")
  @Test
  void oneMinute_isTimed() throws Exception {
    Path file = tone(60);
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    assertEquals(0, Main.run("wave", file.toString(), "--json"));
    long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    System.out.printf(Locale.ROOT, "60 s of 96 kHz, 24 bit, stereo: %.2f s%n", nanos / 1e9);
  }

  /** The part of one core that live analysis takes, from its processor time. */
  @Tag("long")
  @Test
  void liveAnalysis_isTimed() {
    LiveMeter meter = new LiveMeter(48_000, 40, OptionalDouble.of(Math.scalb(1.0, -15)));
    Tone tone = Tone.steady(40, -6, 48_000, 300, 0);
    double[] block = new double[2400];
    long cpu = 0;
    int readings = 0;
    for (long frame = 0; frame + block.length <= tone.frames(); frame += block.length) {
      for (int i = 0; i < block.length; i++) {
        block[i] = tone.at(frame + i);
      }
      long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      readings += meter.accept(block, block.length).isPresent() ? 1 : 0;
      cpu += ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    }
    double seconds = (double) tone.frames() / tone.samplesPerSecond();
    System.out.printf(
        Locale.ROOT, "live: %d readings, %.2f %% of one core%n", readings, cpu / 1e7 / seconds);
    assertEquals(10 * seconds, readings, 5);
  }
}
