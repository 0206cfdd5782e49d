package loadwalk.disk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * A disk on which only what was forced is sure, replayed from what a program asked of the system.
 *
 * <p>Bytes of a file are sure once the file was forced after them; names in a folder once the
 * folder was forced after them. All else may be there or not after a power cut: bytes in part, in
 * any order, or as zeros where only the length arrived; names in the order they were made or in
 * another. What a failed force was to bring stays unsure for ever, as systems take it for written.
 */
final class Platter {
  private final Before before;
  private final Map<Integer, String> firstNames = new HashMap<>();
  private final Map<Integer, List<Change>> contents = new HashMap<>();
  private final List<Named> names = new ArrayList<>();

  private enum Standing {
    PENDING,
    SURE,
    NEVER_SURE
  }

  private static final class Change {
    private final Call call;
    private Standing standing = Standing.PENDING;

    Change(Call call) {
      this.call = call;
    }
  }

  private static final class Named {
    private final Call call;
    private boolean sure;

    Named(Call call) {
      this.call = call;
    }
  }

  /**
   * What a power cut leaves.
   *
   * @param folders the folders, outer ones first
   * @param files the bytes of each file by path
   */
  record Image(List<String> folders, Map<String, byte[]> files) {}

  /** How unsure bytes and names meet a power cut. */
  enum Cut {
    ALL_LOST,
    ALL_THERE,
    NAMES_EARLY,
    NAMES_LATE,
    TORN_AT_A_BYTE,
    TORN_IN_SECTORS,
    ZEROS
  }

  Platter(Before before) {
    this.before = before;
    int file = 0;
    for (String path : before.files().keySet()) {
      firstNames.put(++file, path);
    }
  }

  void take(Call call) {
    switch (call.kind()) {
      case WRITE, CUT -> {
        if (call.done()) {
          contents.computeIfAbsent(call.file(), f -> new ArrayList<>()).add(new Change(call));
        }
      }
      case MAKE, MAKE_FOLDER, RENAME, REMOVE -> {
        if (call.done()) {
          names.add(new Named(call));
        }
      }
      case FORCE -> forced(call);
      default -> {}
    }
  }

  private void forced(Call call) {
    if (call.file() == 0) {
      names.stream()
          .filter(named -> call.done() && named.call.folder().equals(call.path()))
          .forEach(named -> named.sure = true);
      return;
    }
    for (Change change : contents.getOrDefault(call.file(), List.of())) {
      if (change.standing == Standing.PENDING) {
        change.standing = call.done() ? Standing.SURE : Standing.NEVER_SURE;
      }
    }
  }

  /** Returns what one power cut leaves. */
  Image image(Cut cut, Random random) {
    Set<String> folders = new HashSet<>(before.folders());
    Map<String, Integer> tree = new TreeMap<>();
    firstNames.forEach((file, path) -> tree.put(path, file));
    boolean inOrder = random.nextBoolean();
    Set<String> ended = new HashSet<>();
    for (Named named : names) {
      boolean lucky =
          switch (cut) {
            case ALL_LOST, NAMES_LATE -> false;
            case ALL_THERE, NAMES_EARLY -> true;
            default -> random.nextBoolean() && !ended.contains(named.call.folder());
          };
      if (named.sure || lucky) {
        enter(named.call, folders, tree);
      } else if (inOrder) {
        ended.add(named.call.folder());
      }
    }
    Map<String, byte[]> files = new TreeMap<>();
    tree.forEach(
        (path, file) -> {
          if (reachable(path, folders)) {
            files.put(path, content(file, cut, random));
          }
        });
    return new Image(
        folders.stream().filter(folder -> reachable(folder, folders)).sorted().toList(), files);
  }

  private static boolean reachable(String path, Set<String> folders) {
    for (int slash = path.indexOf('/'); slash > 0; slash = path.indexOf('/', slash + 1)) {
      if (!folders.contains(path.substring(0, slash))) {
        return false;
      }
    }
    return true;
  }

  private static void enter(Call call, Set<String> folders, Map<String, Integer> tree) {
    switch (call.kind()) {
      case MAKE -> tree.put(call.path(), call.file());
      case MAKE_FOLDER -> folders.add(call.path());
      case REMOVE -> tree.remove(call.path(), call.file());
      default -> {
        tree.remove(call.path(), call.file());
        tree.put(call.to(), call.file());
      }
    }
  }

  private byte[] content(int file, Cut cut, Random random) {
    byte[] bytes = before.files().getOrDefault(firstNames.getOrDefault(file, ""), new byte[0]);
    List<Call> unsure = new ArrayList<>();
    for (Change change : contents.getOrDefault(file, List.of())) {
      if (change.standing == Standing.SURE) {
        bytes = changed(bytes, change.call);
      } else if (change.standing == Standing.NEVER_SURE) {
        boolean there = cut == Cut.ALL_THERE || random.nextBoolean();
        bytes = there ? changed(bytes, change.call) : bytes;
      } else {
        unsure.add(change.call);
      }
    }
    return switch (cut) {
      case ALL_LOST, NAMES_EARLY -> bytes;
      case ALL_THERE, NAMES_LATE -> changed(bytes, unsure);
      case TORN_AT_A_BYTE -> torn(bytes, unsure, random);
      case TORN_IN_SECTORS -> inSectors(bytes, unsure, random);
      case ZEROS -> zeros(bytes, unsure, random);
    };
  }

  private static byte[] changed(byte[] bytes, List<Call> calls) {
    byte[] now = bytes;
    for (Call call : calls) {
      now = changed(now, call);
    }
    return now;
  }

  private static byte[] changed(byte[] bytes, Call call) {
    int at = (int) call.offset();
    if (call.is(Call.Kind.CUT)) {
      return Arrays.copyOf(bytes, at);
    }
    byte[] now = Arrays.copyOf(bytes, Math.max(bytes.length, at + call.bytes().length));
    System.arraycopy(call.bytes(), 0, now, at, call.bytes().length);
    return now;
  }

  /** The last that arrives, arrives in part. */
  private static byte[] torn(byte[] bytes, List<Call> calls, Random random) {
    if (calls.isEmpty()) {
      return bytes;
    }
    int last = random.nextInt(calls.size());
    byte[] now = changed(bytes, calls.subList(0, last));
    Call call = calls.get(last);
    int length = random.nextInt(call.bytes().length + 1);
    return changed(now, piece(call, 0, length));
  }

  private static Call piece(Call call, int from, int to) {
    return new Call(
        call.kind(),
        call.file(),
        call.path(),
        "",
        call.offset() + from,
        Arrays.copyOfRange(call.bytes(), from, to),
        true,
        call.name(),
        call.order());
  }

  /** Sectors of the disk arrive in any order, and not all of them. */
  private static byte[] inSectors(byte[] bytes, List<Call> calls, Random random) {
    int sector = random.nextBoolean() ? 512 : 1 << random.nextInt(9);
    List<Call> pieces = new ArrayList<>();
    for (Call call : calls) {
      int from = 0;
      while (from < call.bytes().length) {
        int to = (int) ((call.offset() + from) / sector + 1) * sector - (int) call.offset();
        pieces.add(piece(call, from, Math.min(call.bytes().length, to)));
        from = Math.min(call.bytes().length, to);
      }
      if (call.is(Call.Kind.CUT)) {
        pieces.add(call);
      }
    }
    Collections.shuffle(pieces, random);
    return changed(bytes, pieces.subList(0, random.nextInt(pieces.size() + 1)));
  }

  /** The length arrives before the bytes, some of which do. */
  private static byte[] zeros(byte[] bytes, List<Call> calls, Random random) {
    int length = changed(bytes, calls).length;
    byte[] now = inSectors(bytes, calls, random);
    return Arrays.copyOf(now, Math.max(length, Math.min(now.length, bytes.length)));
  }
}
