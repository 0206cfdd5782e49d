package loadwalk.journal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;

/**
 * A disk that fails on demand and forgets what was not forced.
 *
 * <p>What is written is seen at once by a reader but reaches the platter only by {@link #force}. A
 * crash loses, tears or reorders what was not forced, sector by sector. After a failed force the
 * cache is taken as clean, as operating systems do: a later force does not write it again, only the
 * length of the file goes with the next change.
 */
final class SimulatedDisk implements Storage {
  /** Thrown when the power goes; nothing after it runs. */
  static final class PowerCut extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  /** What an operation meets. */
  enum Meets {
    NOTHING,
    DISK_FULL,
    IO_ERROR,
    READ_ONLY,
    GONE,
    POWER_CUT
  }

  private record Pending(boolean cut, int at, byte[] bytes) {}

  private final Random random;
  private final List<Pending> pending = new ArrayList<>();
  private IntFunction<Meets> fate = n -> Meets.NOTHING;
  private byte[] platter = new byte[0];
  private byte[] cache = new byte[0];
  private int operations;
  private boolean closed;

  SimulatedDisk(long seed) {
    random = new Random(seed);
  }

  /** Sets what the n-th operation from now on meets, n from 1. */
  void meets(IntFunction<Meets> nextFate) {
    fate = nextFate;
    operations = 0;
  }

  int operations() {
    return operations;
  }

  byte[] platter() {
    return platter.clone();
  }

  /** Changes the file behind the writer's back. */
  void changedByAnother(byte[] bytes) {
    cache = bytes.clone();
    platter = bytes.clone();
    pending.clear();
  }

  @Override
  public byte[] readAll() throws IOException {
    Meets met = next();
    if (met == Meets.IO_ERROR || met == Meets.GONE) {
      throw fault(met);
    }
    return cache.clone();
  }

  @Override
  public long length() throws IOException {
    if (fate.apply(operations + 1) == Meets.GONE) {
      operations++;
      throw fault(Meets.GONE);
    }
    return cache.length;
  }

  @Override
  public void append(byte[] bytes) throws IOException {
    Meets met = next();
    boolean partly = met == Meets.DISK_FULL || met == Meets.IO_ERROR || met == Meets.POWER_CUT;
    int written = partly ? random.nextInt(bytes.length + 1) : bytes.length;
    if (met == Meets.NOTHING || partly) {
      change(new Pending(false, cache.length, Arrays.copyOf(bytes, written)));
    }
    finish(met);
  }

  @Override
  public void truncate(long length) throws IOException {
    Meets met = next();
    boolean partly = met == Meets.IO_ERROR || met == Meets.POWER_CUT;
    if (met == Meets.NOTHING || met == Meets.DISK_FULL || (partly && random.nextBoolean())) {
      change(new Pending(true, (int) length, new byte[0]));
    }
    finish(met == Meets.DISK_FULL ? Meets.NOTHING : met);
  }

  @Override
  public void force() throws IOException {
    Meets met = next();
    if (met == Meets.NOTHING) {
      pending.forEach(p -> platter = applied(platter, p));
      platter = pending.isEmpty() ? platter : Arrays.copyOf(platter, cache.length);
      pending.clear();
    } else if (met != Meets.POWER_CUT) {
      platter = someOf(platter);
      pending.clear();
    }
    finish(met);
  }

  @Override
  public void close() {
    closed = true;
  }

  boolean isClosed() {
    return closed;
  }

  /** Turns the power off and on: only what is on the platter is left. */
  void crash() {
    platter = someOf(platter);
    pending.clear();
    cache = platter.clone();
  }

  private Meets next() {
    operations++;
    return fate.apply(operations);
  }

  private static void finish(Meets met) throws IOException {
    if (met == Meets.POWER_CUT) {
      throw new PowerCut();
    }
    if (met != Meets.NOTHING) {
      throw fault(met);
    }
  }

  private static IOException fault(Meets met) {
    return switch (met) {
      case DISK_FULL -> new StorageFault(FaultKind.FULL, "The disk is full.", null);
      case READ_ONLY -> new StorageFault(FaultKind.READ_ONLY, "The disk is read-only.", null);
      case GONE -> new StorageFault(FaultKind.GONE, "The folder is gone.", null);
      default -> new IOException("input/output error");
    };
  }

  private void change(Pending p) {
    cache = applied(cache, p);
    pending.add(p);
  }

  private byte[] someOf(byte[] start) {
    List<Pending> pieces = new ArrayList<>();
    int mode = random.nextInt(4);
    for (Pending p : pending) {
      pieces.addAll(p.cut() ? List.of(p) : sectors(p));
    }
    if (mode == 0) {
      return start;
    }
    if (mode == 1) {
      pieces = pieces.subList(0, random.nextInt(pieces.size() + 1));
    } else {
      Collections.shuffle(pieces, random);
      pieces = pieces.subList(0, random.nextInt(pieces.size() + 1));
    }
    byte[] left = start;
    for (Pending piece : pieces) {
      left = applied(left, piece);
    }
    return left;
  }

  private List<Pending> sectors(Pending p) {
    int size = 1 << random.nextInt(10);
    List<Pending> sectors = new ArrayList<>();
    for (int from = 0; from < p.bytes().length; from += size) {
      int to = Math.min(p.bytes().length, from + size);
      sectors.add(new Pending(false, p.at() + from, Arrays.copyOfRange(p.bytes(), from, to)));
    }
    return sectors;
  }

  private static byte[] applied(byte[] start, Pending p) {
    if (p.cut()) {
      return Arrays.copyOf(start, p.at());
    }
    byte[] next = Arrays.copyOf(start, Math.max(start.length, p.at() + p.bytes().length));
    System.arraycopy(p.bytes(), 0, next, p.at(), p.bytes().length);
    return next;
  }
}
