package org.drysill.report.pages;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * A browser without a window, driven by its debugging protocol. Not ours, and not needed by users:
 * tests look at the web page with it.
 */
final class Browser implements AutoCloseable {
  /** Set where a browser must be there, so that its lack is a failure and no skipped test. */
  static final String REQUIRED = "DRYSILL_BROWSER_REQUIRED";

  private static final long PATIENCE_SECONDS = 120;

  private final Process process;
  private final WebSocket socket;
  private final BlockingQueue<Map<?, ?>> answers = new LinkedBlockingQueue<>();
  private final List<String> requests = new ArrayList<>();
  private final List<String> complaints = new ArrayList<>();
  private int asked;

  /** The program, where this machine has one. */
  static Optional<Path> installed() {
    return Stream.of("chromium", "chromium-browser")
        .map(name -> Path.of("/usr/bin", name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  Browser(Path program, Path folder) throws IOException, InterruptedException {
    process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--no-first-run",
                "--remote-debugging-port=0",
                "--user-data-dir=" + folder,
                "about:blank")
            .redirectErrorStream(true)
            .start();
    HttpClient client = HttpClient.newHttpClient();
    URI address = URI.create("http://" + address() + "/json/new?about:blank");
    HttpRequest request =
        HttpRequest.newBuilder(address).PUT(HttpRequest.BodyPublishers.noBody()).build();
    String page = client.send(request, HttpResponse.BodyHandlers.ofString()).body();
    String target = (String) parsed(page).get("webSocketDebuggerUrl");
    socket = client.newWebSocketBuilder().buildAsync(URI.create(target), new Ear()).join();
    for (String domain : List.of("Page", "Network", "Log", "Runtime")) {
      ask(domain + ".enable", "{}");
    }
  }

  /** Host and port, as the browser says them when it is ready. */
  private String address() throws IOException {
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      if (line.contains("DevTools listening on ws://")) {
        return line.replaceAll(".*ws://([^/]+)/.*", "$1");
      }
    }
    throw new IOException("the browser ended before it was ready");
  }

  /** Shows a page in a window of a width, light or dark. */
  void show(Path page, int width, String scheme) throws InterruptedException {
    ask(
        "Emulation.setDeviceMetricsOverride",
        "{\"width\":" + width + ",\"height\":900,\"deviceScaleFactor\":1,\"mobile\":false}");
    ask(
        "Emulation.setEmulatedMedia",
        "{\"features\":[{\"name\":\"prefers-color-scheme\",\"value\":\"" + scheme + "\"}]}");
    ask("Page.navigate", "{\"url\":\"" + page.toUri() + "\"}");
    for (int i = 0; i < 600 && !"complete".equals(value("document.readyState")); i++) {
      Thread.sleep(100);
    }
  }

  /** What an expression yields on the page. */
  Object value(String expression) throws InterruptedException {
    String escaped = expression.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    Map<?, ?> answer =
        ask("Runtime.evaluate", "{\"returnByValue\":true,\"expression\":\"" + escaped + "\"}");
    Map<?, ?> result = (Map<?, ?>) answer.get("result");
    if (answer.containsKey("exceptionDetails")) {
      throw new AssertionError(expression + ": " + answer);
    }
    return result.get("value");
  }

  /** A call of the protocol with its answer. */
  Map<?, ?> ask(String method, String parameters) throws InterruptedException {
    asked++;
    String call = "{\"id\":" + asked + ",\"method\":\"" + method + "\",\"params\":";
    socket.sendText(call + parameters + "}", true).join();
    for (; ; ) {
      Map<?, ?> answer = answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
      if (answer == null || answer.containsKey("error")) {
        throw new AssertionError(method + ": " + answer);
      }
      if (answer.get("id").equals(asked)) {
        return (Map<?, ?>) answer.get("result");
      }
    }
  }

  /** The addresses asked for so far; those within the page itself apart. */
  List<String> requests() {
    synchronized (requests) {
      return requests.stream().filter(r -> !r.startsWith("data:")).toList();
    }
  }

  /** Errors and warnings so far. */
  List<String> complaints() {
    synchronized (requests) {
      return List.copyOf(complaints);
    }
  }

  private static Map<?, ?> parsed(String json) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(1 << 28);
    return new Yaml(new SafeConstructor(options)).load(json);
  }

  private void heard(Map<?, ?> message) {
    if (message.containsKey("id")) {
      answers.add(message);
      return;
    }
    String method = (String) message.get("method");
    Map<?, ?> parameters = (Map<?, ?>) message.get("params");
    synchronized (requests) {
      if (method.equals("Network.requestWillBeSent")) {
        requests.add((String) ((Map<?, ?>) parameters.get("request")).get("url"));
      } else if (method.equals("Log.entryAdded") || method.equals("Runtime.exceptionThrown")) {
        complaints.add(parameters.toString());
      }
    }
  }

  @Override
  public void close() {
    socket.abort();
    process.descendants().forEach(ProcessHandle::destroy);
    process.destroy();
    process.onExit().join();
  }

  /** Puts the pieces of a message together. */
  private final class Ear implements WebSocket.Listener {
    private final StringBuilder message = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence piece, boolean last) {
      message.append(piece);
      if (last) {
        heard(parsed(message.toString()));
        message.setLength(0);
      }
      from.request(1);
      return null;
    }
  }
}
