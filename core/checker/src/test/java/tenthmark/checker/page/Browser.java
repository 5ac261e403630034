package tenthmark.checker.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A headless Chromium, driven through its DevTools protocol. */
public final class Browser implements AutoCloseable {

  /** In seconds: for a loaded machine; a quiet one answers at once. */
  private static final int PATIENCE = 180;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int TAB = 9;
  private static final String LISTENING = "DevTools listening on ";

  private final Process process;
  private final WebSocket socket;
  private final BlockingQueue<JsonNode> messages;
  private final List<String> requests = new ArrayList<>();
  private String session = "";
  private int last;

  private Browser(Process process, WebSocket socket, BlockingQueue<JsonNode> messages) {
    this.process = process;
    this.socket = socket;
    this.messages = messages;
  }

  /** Starts it with a throwaway profile. */
  public static Browser start(Path profile) throws Exception {
    Process process =
        new ProcessBuilder(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile)
            .redirectErrorStream(true)
            .start();
    String address = address(process);
    BlockingQueue<JsonNode> messages = new LinkedBlockingQueue<>();
    WebSocket socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address), new Listener(messages))
            .get(PATIENCE, TimeUnit.SECONDS);
    Browser browser = new Browser(process, socket, messages);
    String target =
        browser.call("Target.createTarget", Map.of("url", "about:blank")).at("/targetId").asText();
    browser.session =
        browser
            .call("Target.attachToTarget", Map.of("targetId", target, "flatten", true))
            .at("/sessionId")
            .asText();
    browser.call("Page.enable", Map.of());
    browser.call("Network.enable", Map.of());
    return browser;
  }

  /** Reads on in the background, so that the browser never waits to write. */
  private static String address(Process process) throws IOException {
    BufferedReader output =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = output.readLine(); line != null; line = output.readLine()) {
      if (line.startsWith(LISTENING)) {
        Thread rest = new Thread(() -> output.lines().forEach(ignored -> {}));
        rest.setDaemon(true);
        rest.start();
        return line.substring(LISTENING.length());
      }
    }
    throw new IOException("Chromium ended before it listened");
  }

  /** Opens a page in a window of this width and waits until it is loaded. */
  public void open(Path page, int width) throws Exception {
    call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
    requests.clear();
    messages.clear();
    call("Page.navigate", Map.of("url", page.toUri().toString()));
    for (JsonNode message = next(); !isNamed(message, "Page.loadEventFired"); message = next()) {
      note(message);
    }
  }

  /** What the page has asked for since it was opened, itself included. */
  public List<String> requests() {
    return requests;
  }

  /** The value of a JavaScript expression in the page. */
  public JsonNode evaluate(String expression) throws Exception {
    JsonNode result =
        call("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
    if (result.has("exceptionDetails")) {
      throw new AssertionError(result.toString());
    }
    return result.at("/result/value");
  }

  /** Presses a key as a user does. */
  public void press(String key, int code) throws Exception {
    String text = key.equals("Enter") ? "\r" : "";
    for (String type : List.of(text.isEmpty() ? "rawKeyDown" : "keyDown", "keyUp")) {
      call(
          "Input.dispatchKeyEvent",
          Map.of(
              "type", type, "key", key, "code", key, "windowsVirtualKeyCode", code, "text", text));
    }
  }

  /**
   * Presses the Tab key once for each link and control: whether the focus then is on it, drawn, and
   * in sight.
   */
  public List<Boolean> tabThrough() throws Exception {
    int stops =
        evaluate(
                "(window.stops = [...document.querySelectorAll("
                    + "'a[href], summary, [tabindex=\"0\"]')]"
                    + ".filter(e => e.tagName == 'SUMMARY' || e.checkVisibility())).length")
            .asInt();
    List<Boolean> shown = new ArrayList<>();
    for (int stop = 0; stop < stops; stop++) {
      press("Tab", TAB);
      shown.add(
          evaluate(
                  "(() => { const e = document.activeElement, r = e.getBoundingClientRect();"
                      + " return stops.indexOf(e) == "
                      + stop
                      + " && getComputedStyle(e).outlineStyle != 'none'"
                      + " && r.bottom > 0 && r.top < innerHeight; })()")
              .asBoolean());
    }
    return shown;
  }

  /** Contrast as WCAG 2.2, success criterion 1.4.3, defines it, of every text as it is drawn. */
  public JsonNode contrasts() throws Exception {
    return evaluate(
        """
            (() => {
              const numbers = colour => colour.match(/[0-9.]+/g).map(Number);
              const channel = c => (c /= 255) <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
              const light = ([r, g, b]) =>
                0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
              const behind = e => {
                for (; e; e = e.parentElement) {
                  const c = numbers(getComputedStyle(e).backgroundColor);
                  if (c.length == 3 || c[3] > 0) return c;
                }
                return [255, 255, 255];
              };
              return [...document.querySelectorAll('body *')]
                .filter(e => [...e.childNodes].some(n => n.nodeType == 3 && n.data.trim()))
                .map(e => {
                  const style = getComputedStyle(e);
                  const own = e.namespaceURI.endsWith('svg') ? style.fill : style.color;
                  const pair = [light(numbers(own)), light(behind(e))].sort((a, b) => b - a);
                  return (pair[0] + 0.05) / (pair[1] + 0.05);
                });
            })()
            """);
  }

  private JsonNode call(String method, Map<String, ?> parameters) throws Exception {
    int id = ++last;
    var message = JSON.createObjectNode().put("id", id).put("method", method);
    message.set("params", JSON.valueToTree(parameters));
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    socket.sendText(message.toString(), true).get(PATIENCE, TimeUnit.SECONDS);
    while (true) {
      JsonNode answer = next();
      if (answer.path("id").asInt() == id) {
        if (answer.has("error")) {
          throw new AssertionError(method + ": " + answer.get("error"));
        }
        return answer.get("result");
      }
      if (isNamed(answer, "Page.loadEventFired")) {
        messages.add(answer);
      }
      note(answer);
    }
  }

  private JsonNode next() throws InterruptedException {
    JsonNode message = messages.poll(PATIENCE, TimeUnit.SECONDS);
    if (message == null) {
      throw new AssertionError("Chromium does not answer");
    }
    return message;
  }

  private void note(JsonNode message) {
    if (isNamed(message, "Network.requestWillBeSent")) {
      requests.add(message.at("/params/request/url").asText());
    }
  }

  private static boolean isNamed(JsonNode message, String method) {
    return message.path("method").asText().equals(method);
  }

  @Override
  public void close() {
    socket.abort();
    process.destroy();
    if (process.onExit().completeOnTimeout(process, 10, TimeUnit.SECONDS).join().isAlive()) {
      process.destroyForcibly().onExit().join();
    }
  }

  private record Listener(BlockingQueue<JsonNode> messages, StringBuilder open)
      implements WebSocket.Listener {

    Listener(BlockingQueue<JsonNode> messages) {
      this(messages, new StringBuilder());
    }

    @Override
    public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean isLast) {
      open.append(data);
      if (isLast) {
        try {
          messages.add(JSON.readTree(open.toString()));
        } catch (IOException damaged) {
          throw new IllegalStateException(damaged);
        }
        open.setLength(0);
      }
      socket.request(1);
      return null;
    }
  }
}
