package loadwalk.disk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what strace wrote down, a line a call, and keeps what touches the watched folder. */
final class TraceReader {
  private static final String NUMBER = "(\\d+)\\s+";
  private static final String ANSWER = "\\s+= (-?\\d+|\\?)(?:<([^>]*)>)?.*";
  private static final Pattern WHOLE = Pattern.compile(NUMBER + "(\\w+)\\((.*)\\)" + ANSWER);
  private static final Pattern BEGUN =
      Pattern.compile(NUMBER + "(\\w+)\\((.*?),? *<unfinished \\.\\.\\.>");
  private static final Pattern ENDED =
      Pattern.compile(NUMBER + "<\\.\\.\\. (\\w+) resumed>,? ?(.*)\\)" + ANSWER);
  private static final Pattern DESCRIPTOR = Pattern.compile("(\\d+)<([^>]*)>.*");

  private final String root;
  private final Map<String, Integer> names = new HashMap<>();
  private final Map<String, Open> open = new HashMap<>();
  private final Map<String, String> begun = new HashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();
  private final List<Call> calls = new ArrayList<>();
  private int files;

  private static final class Open {
    private final int file;
    private long at;

    Open(int file) {
      this.file = file;
    }
  }

  TraceReader(Path watched, Before before) {
    this.root = watched.toString();
    before.files().keySet().forEach(path -> names.put(path, ++files));
  }

  List<Call> calls() {
    return calls;
  }

  void line(String line) {
    if (line.contains(" ???(") || line.contains(" ??? resumed>")) {
      // A thread that ended with the program before it asked for anything.
      return;
    }
    Matcher whole = WHOLE.matcher(line);
    Matcher start = BEGUN.matcher(line);
    Matcher end = ENDED.matcher(line);
    if (end.matches()) {
      String words = begun.remove(end.group(1)) + rest(end.group(3));
      if (!saidAlready(words, end.group(2))) {
        call(end.group(1), end.group(2), words, end.group(4), end.group(5));
      }
    } else if (start.matches()) {
      begun.put(start.group(1), start.group(3));
      if (saidAlready(start.group(3), start.group(2))) {
        // What is said can be read before the call that says it comes back.
        call(start.group(1), start.group(2), start.group(3), "0", null);
      }
    } else if (whole.matches()) {
      call(whole.group(1), whole.group(2), whole.group(3), whole.group(4), whole.group(5));
    } else if (!line.contains("+++") && !line.contains("---")) {
      throw new AssertionError(
          "the tracer wrote: " + line.substring(0, Math.min(400, line.length())));
    }
  }

  private static String rest(String words) {
    return words.isBlank() ? "" : ", " + words;
  }

  private static boolean saidAlready(String words, String name) {
    return name.equals("write") && words.startsWith("1<");
  }

  private void call(String thread, String name, String words, String answer, String answered) {
    int order = counts.merge(thread + name, 1, Integer::sum);
    boolean done = !answer.startsWith("-") && !answer.equals("?");
    String[] parts = words.split(", ");
    switch (name) {
      case "openat" -> opened(parts, done, answer, answered, order);
      case "mkdir" ->
          inside(text(parts[0]))
              .ifPresent(at -> add(Call.Kind.MAKE_FOLDER, 0, at, done, name, order));
      case "unlink" -> inside(text(parts[0])).ifPresent(at -> removed(at, done, order));
      case "rename" -> renamed(text(parts[0]), text(parts[1]), done, order);
      default -> onDescriptor(name, parts, answer, done, order);
    }
  }

  private void add(Call.Kind kind, int file, String at, boolean done, String name, int order) {
    calls.add(new Call(kind, file, at, "", 0, new byte[0], done, name, order));
  }

  private void opened(String[] parts, boolean done, String number, String answered, int order) {
    Optional<String> path = done && answered != null ? inside(decoded(answered)) : Optional.empty();
    if (path.isEmpty()) {
      return;
    }
    String at = path.get();
    String flags = parts[2];
    if (!names.containsKey(at) && flags.contains("O_CREAT")) {
      names.put(at, ++files);
      add(Call.Kind.MAKE, files, at, true, "openat", order);
    } else if (flags.contains("O_TRUNC")) {
      add(Call.Kind.CUT, names.get(at), at, true, "openat", order);
    }
    open.put(number, new Open(names.getOrDefault(at, 0)));
  }

  private void removed(String at, boolean done, int order) {
    Integer file = done ? names.remove(at) : null;
    if (file != null) {
      add(Call.Kind.REMOVE, file, at, true, "unlink", order);
    }
  }

  private void renamed(String from, String to, boolean done, int order) {
    if (inside(from).isEmpty() || inside(to).isEmpty()) {
      return;
    }
    int file = names.getOrDefault(inside(from).get(), 0);
    if (done) {
      names.remove(inside(from).get());
      names.put(inside(to).get(), file);
    }
    calls.add(
        new Call(
            Call.Kind.RENAME,
            file,
            inside(from).get(),
            inside(to).get(),
            0,
            new byte[0],
            done,
            "rename",
            order));
  }

  private void onDescriptor(String name, String[] parts, String answer, boolean done, int order) {
    Matcher descriptor = DESCRIPTOR.matcher(parts[0]);
    if (!descriptor.matches()) {
      return;
    }
    String number = descriptor.group(1);
    Optional<String> at = inside(decoded(descriptor.group(2)).replace(" (deleted)", ""));
    if (number.equals("1") && name.equals("write")) {
      calls.add(new Call(Call.Kind.SAY, 0, "", "", 0, bytes(parts[1]), done, name, order));
    } else if (at.isPresent()) {
      Open file = open.getOrDefault(number, new Open(0));
      switch (name) {
        case "fsync", "fdatasync" -> add(Call.Kind.FORCE, file.file, at.get(), done, name, order);
        case "ftruncate" ->
            written(
                Call.Kind.CUT,
                file,
                at.get(),
                Long.parseLong(parts[1].strip()),
                new byte[0],
                done,
                name,
                order);
        default -> {
          byte[] all = bytes(parts[1]);
          int count = done ? Integer.parseInt(answer) : all.length;
          long where = name.equals("pwrite64") ? Long.parseLong(parts[3].strip()) : file.at;
          written(
              Call.Kind.WRITE, file, at.get(), where, Arrays.copyOf(all, count), done, name, order);
          file.at += name.equals("write") && done ? count : 0;
        }
      }
    }
  }

  private void written(
      Call.Kind kind,
      Open file,
      String at,
      long where,
      byte[] bytes,
      boolean done,
      String name,
      int order) {
    calls.add(new Call(kind, file.file, at, "", where, bytes, done, name, order));
  }

  /** Returns a path as seen from the watched folder; empty where it lies outside. */
  private Optional<String> inside(String path) {
    if (path.equals(root)) {
      return Optional.of("");
    }
    return path.startsWith(root + "/")
        ? Optional.of(path.substring(root.length() + 1))
        : Optional.empty();
  }

  private static String text(String quoted) {
    return new String(bytes(quoted), UTF_8);
  }

  private static String decoded(String escaped) {
    return new String(bytes('"' + escaped + '"'), UTF_8);
  }

  /** Returns the bytes between quotes, each as {@code \xNN} or as it is. */
  private static byte[] bytes(String quoted) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(quoted.length() / 4);
    int end = quoted.lastIndexOf('"');
    for (int i = quoted.indexOf('"') + 1; i < end; ) {
      if (quoted.startsWith("\\x", i)) {
        bytes.write(
            16 * Character.digit(quoted.charAt(i + 2), 16)
                + Character.digit(quoted.charAt(i + 3), 16));
        i += 4;
      } else {
        bytes.write(quoted.charAt(i++));
      }
    }
    return bytes.toByteArray();
  }
}
