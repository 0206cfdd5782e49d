package loadwalk.report.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Drives a headless Chromium by its DevTools protocol, and hears what it complains of. */
public final class Browser implements AutoCloseable {
  public static final String CHROMIUM = "chromium";

  private static final Pattern LISTENING = Pattern.compile("DevTools listening on (ws://\\S+)");
  private static final int WAIT_SECONDS = 60;

  private final ObjectMapper mapper = new ObjectMapper();
  private final AtomicInteger ids = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final List<String> problems = new CopyOnWriteArrayList<>();
  private final Path profile;
  private final Process process;
  private final WebSocket socket;
  private final String session;
  private volatile CompletableFuture<Void> loaded = new CompletableFuture<>();

  public Browser() throws Exception {
    profile = Files.createTempDirectory("loadwalk-browser");
    process =
        new ProcessBuilder(
                CHROMIUM,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectErrorStream(true)
            .start();
    socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(address(), new Replies())
            .get(WAIT_SECONDS, TimeUnit.SECONDS);
    String target =
        call("", "Target.createTarget", params().put("url", "about:blank"))
            .get("targetId")
            .asText();
    ObjectNode attach = params().put("targetId", target).put("flatten", true);
    session = call("", "Target.attachToTarget", attach).get("sessionId").asText();
    for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
      call(domain + ".enable", params());
    }
  }

  private URI address() throws IOException {
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      Matcher matcher = LISTENING.matcher(line);
      if (matcher.find()) {
        Thread drain = new Thread(() -> out.lines().forEach(l -> {}));
        drain.setDaemon(true);
        drain.start();
        return URI.create(matcher.group(1));
      }
    }
    throw new IOException("the browser ended before it listened");
  }

  /** Opens a file in a window of a width, with a scheme of colours and a medium. */
  public void open(Path file, int width, boolean dark, String medium) throws Exception {
    problems.clear();
    ObjectNode size = params().put("width", width).put("height", 900).put("deviceScaleFactor", 1);
    call("Emulation.setDeviceMetricsOverride", size.put("mobile", false));
    paint(dark, medium);
    loaded = new CompletableFuture<>();
    call("Page.navigate", params().put("url", file.toUri().toString()));
    loaded.get(WAIT_SECONDS, TimeUnit.SECONDS);
  }

  /** Paints the page that is open with another scheme of colours or for another medium. */
  public void paint(boolean dark, String medium) throws Exception {
    ObjectNode media = params().put("media", medium);
    media
        .putArray("features")
        .addObject()
        .put("name", "prefers-color-scheme")
        .put("value", dark ? "dark" : "light");
    call("Emulation.setEmulatedMedia", media);
  }

  /** Returns errors and warnings of the console and requests to anywhere but the file itself. */
  public List<String> problems() {
    return List.copyOf(problems);
  }

  /** Returns the value of an expression, waited for where it is a promise. */
  public JsonNode evaluate(String expression) throws Exception {
    ObjectNode asked = params().put("expression", expression);
    asked.put("returnByValue", true).put("awaitPromise", true);
    JsonNode answer = call("Runtime.evaluate", asked);
    if (answer.has("exceptionDetails")) {
      throw new IOException(answer.get("exceptionDetails").toString());
    }
    return answer.at("/result/value");
  }

  public byte[] screenshot() throws Exception {
    ObjectNode whole = params().put("captureBeyondViewport", true);
    JsonNode size = call("Page.getLayoutMetrics", params()).get("cssContentSize");
    ObjectNode clip = whole.putObject("clip").put("x", 0).put("y", 0).put("scale", 1);
    clip.put("width", size.get("width").asDouble()).put("height", size.get("height").asDouble());
    return Base64.getDecoder().decode(call("Page.captureScreenshot", whole).get("data").asText());
  }

  public byte[] pdf(double inchesWide, double inchesHigh) throws Exception {
    ObjectNode paper = params().put("paperWidth", inchesWide).put("paperHeight", inchesHigh);
    JsonNode answer = call("Page.printToPDF", paper.put("printBackground", false));
    return Base64.getDecoder().decode(answer.get("data").asText());
  }

  private ObjectNode params() {
    return mapper.createObjectNode();
  }

  private JsonNode call(String method, ObjectNode params) throws Exception {
    return call(session, method, params);
  }

  private JsonNode call(String inSession, String method, ObjectNode params) throws Exception {
    int id = ids.incrementAndGet();
    ObjectNode message = params().put("id", id).put("method", method);
    message.set("params", params);
    if (!inSession.isEmpty()) {
      message.put("sessionId", inSession);
    }
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    socket.sendText(mapper.writeValueAsString(message), true).get(WAIT_SECONDS, TimeUnit.SECONDS);
    JsonNode got = answer.get(WAIT_SECONDS, TimeUnit.SECONDS);
    if (got.has("error")) {
      throw new IOException(method + ": " + got.get("error"));
    }
    return got.get("result");
  }

  private void hear(String text) throws IOException {
    JsonNode message = mapper.readTree(text);
    if (message.has("id")) {
      waiting.remove(message.get("id").asInt()).complete(message);
      return;
    }
    JsonNode params = message.path("params");
    switch (message.path("method").asText()) {
      case "Page.loadEventFired" -> loaded.complete(null);
      case "Runtime.exceptionThrown" -> problems.add("exception: " + params);
      case "Log.entryAdded" -> problems.add("log: " + params.get("entry"));
      case "Runtime.consoleAPICalled" -> problems.add("console: " + params.get("args"));
      case "Network.requestWillBeSent" -> {
        String url = params.at("/request/url").asText();
        if (!url.startsWith("file:") && !url.startsWith("data:")) {
          problems.add("request: " + url);
        }
      }
      default -> {}
    }
  }

  @Override
  public void close() throws IOException {
    socket.abort();
    // Its helpers outlive it for a moment, and write into the profile while it is deleted.
    List<ProcessHandle> helpers = process.descendants().toList();
    process.destroy();
    gone(process.toHandle());
    helpers.forEach(ProcessHandle::destroyForcibly);
    helpers.forEach(Browser::gone);
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(profile)) {
      all.sorted(Comparator.reverseOrder()).forEach(files::add);
    }
    for (Path file : files) {
      Files.deleteIfExists(file);
    }
  }

  /** Waits until a process has ended, and ends it by force where it does not. */
  private static void gone(ProcessHandle running) {
    try {
      running.onExit().get(WAIT_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      running.destroyForcibly();
    }
  }

  /** Joins the parts of messages. */
  private final class Replies implements WebSocket.Listener {
    private final StringBuilder parts = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
      parts.append(data);
      if (last) {
        String text = parts.toString();
        parts.setLength(0);
        try {
          hear(text);
        } catch (IOException e) {
          problems.add("unreadable message: " + e.getMessage());
        }
      }
      from.request(1);
      return null;
    }
  }
}
