package loadwalk.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Objects;
import java.util.Optional;
import loadwalk.json.JsonOut;
import loadwalk.json.JsonText;
import loadwalk.json.Node;

/**
 * Names the process that holds a walk, as its lock file does.
 *
 * @param pid its number
 * @param birth the mark of its start, see {@link Processes#birth}
 * @param since when it took the walk, for people
 */
record Holder(long pid, String birth, String since) {
  private static final String FORMAT = "loadwalk-lock/1";

  Holder {
    Objects.requireNonNull(birth, "birth");
    Objects.requireNonNull(since, "since");
  }

  byte[] written() {
    String text =
        JsonOut.line(
            out -> {
              out.writeStartObject();
              out.writeStringField("format", FORMAT);
              out.writeStringField("pid", Long.toString(pid));
              out.writeStringField("birth", birth);
              out.writeStringField("since", since);
              out.writeEndObject();
            });
    return (text + "\n").getBytes(UTF_8);
  }

  static Optional<Holder> read(byte[] bytes) {
    Optional<Node> node = JsonText.strict("lock").read(bytes).found();
    Optional<String> format = node.flatMap(n -> text(n, "format")).filter(FORMAT::equals);
    Optional<String> pid = node.flatMap(n -> text(n, "pid")).filter(p -> p.matches("\\d{1,18}"));
    Optional<String> birth = node.flatMap(n -> text(n, "birth"));
    Optional<String> since = node.flatMap(n -> text(n, "since"));
    if (format.isEmpty() || pid.isEmpty() || birth.isEmpty() || since.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Holder(Long.parseLong(pid.get()), birth.get(), since.get()));
  }

  /** Tells whether the process still runs; when in doubt it does. */
  boolean lives(Processes processes) {
    Optional<String> now = processes.birth(pid);
    boolean untold =
        birth.equals(Processes.UNKNOWN_BIRTH)
            || now.filter(Processes.UNKNOWN_BIRTH::equals).isPresent();
    return now.isPresent() && (untold || now.get().equals(birth));
  }

  private static Optional<String> text(Node node, String key) {
    return node.object().flatMap(object -> object.get(key)).flatMap(Node::string);
  }
}
