package fairgrain.program;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
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
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A real browser without a window, asked over its own protocol. It has one page. */
final class Browser implements AutoCloseable {
    private static final JsonMapper JSON = JsonMapper.shared();
    private static final int PATIENCE = 30; // s
    private static final double INCH = 25.4; // mm
    private static final String READY = "DevTools listening on ";

    private final Process process;
    private final Path profile;
    private final WebSocket socket;
    private final AtomicInteger numbers = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final String page;
    private volatile CompletableFuture<Void> loaded = new CompletableFuture<>();

    private Browser(Process process, Path profile, URI address) throws Exception {
        this.process = process;
        this.profile = profile;
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, new Listener())
                .get(PATIENCE, TimeUnit.SECONDS);
        String target = send("", "Target.createTarget", Map.of("url", "about:blank"))
                .get("targetId")
                .asString();
        page = send("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .get("sessionId")
                .asString();
        for (String domain : List.of("Page", "Runtime", "Log", "DOM", "Accessibility")) {
            ask(domain + ".enable", Map.of());
        }
    }

    /** Where a browser stands on this machine; empty if there is none. */
    static Optional<Path> found() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    static Browser start(Path program) throws Exception {
        Path profile = Files.createTempDirectory("page-test");
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless=new",
                        "--no-sandbox", // the pages are our own, and a container may forbid the sandbox
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-extensions",
                        "--hide-scrollbars",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectErrorStream(true)
                .start();
        BufferedReader says =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = says.readLine();
        while (line != null && !line.startsWith(READY)) {
            line = says.readLine();
        }
        if (line == null) {
            throw new IllegalStateException("the browser ended before it could be asked");
        }
        Thread reader = new Thread(() -> says.lines().forEach(said -> {}), "browser output");
        reader.setDaemon(true);
        reader.start();
        return new Browser(
                process, profile, URI.create(line.substring(READY.length()).strip()));
    }

    /** Opens a page and waits until all of it is there; what it complained of before is forgotten. */
    void open(Path file) throws Exception {
        complaints.clear();
        loaded = new CompletableFuture<>();
        ask("Page.navigate", Map.of("url", file.toUri().toString()));
        loaded.get(PATIENCE, TimeUnit.SECONDS);
    }

    /** Errors and warnings since the page was opened. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** As on a screen of that size, in CSS pixels. */
    void screen(int width, int height) throws Exception {
        ask("Emulation.setEmulatedMedia", Map.of("media", "screen"));
        size(width, height);
    }

    /** As laid out for paper between its margins, but not yet on pages. */
    void paper(double widthMm) throws Exception {
        ask("Emulation.setEmulatedMedia", Map.of("media", "print"));
        size((int) Math.floor(widthMm / INCH * 96), 1000);
    }

    private void size(int width, int height) throws Exception {
        ask(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
    }

    /** The value of an expression of the page's own language. */
    JsonNode value(String expression) throws Exception {
        JsonNode answer = ask("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(answer.get("exceptionDetails").toString());
        }
        return answer.get("result").get("value");
    }

    /** What whoever cannot see the page is told, node by node. */
    JsonNode spoken() throws Exception {
        return ask("Accessibility.getFullAXTree", Map.of()).get("nodes");
    }

    /** The page on paper of that size, with the margins that it asks for. */
    byte[] pdf(double widthMm, double heightMm) throws Exception {
        ask("Emulation.setEmulatedMedia", Map.of("media", ""));
        JsonNode answer = ask("Page.printToPDF", Map.of("paperWidth", widthMm / INCH, "paperHeight", heightMm / INCH));
        return Base64.getDecoder().decode(answer.get("data").asString());
    }

    private JsonNode ask(String method, Map<String, ?> parameters) throws Exception {
        return send(page, method, parameters);
    }

    private JsonNode send(String session, String method, Map<String, ?> parameters) throws Exception {
        int number = numbers.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        asked.put(number, answer);
        String text = JSON.writeValueAsString(
                session.isEmpty()
                        ? Map.of("id", number, "method", method, "params", parameters)
                        : Map.of("id", number, "method", method, "params", parameters, "sessionId", session));
        socket.sendText(text, true).get(PATIENCE, TimeUnit.SECONDS);
        return answer.get(PATIENCE, TimeUnit.SECONDS);
    }

    private void heard(JsonNode message) {
        if (message.has("id")) {
            CompletableFuture<JsonNode> answer = asked.remove(message.get("id").asInt());
            if (answer != null && message.has("error")) {
                answer.completeExceptionally(
                        new IllegalStateException(message.get("error").toString()));
            } else if (answer != null) {
                answer.complete(message.get("result"));
            }
            return;
        }
        switch (message.get("method").asString()) {
            case "Page.loadEventFired" -> loaded.complete(null);
            case "Runtime.consoleAPICalled", "Runtime.exceptionThrown", "Log.entryAdded" ->
                complaints.add(message.get("params").toString());
            default -> {
                // nothing that is asked for
            }
        }
    }

    /** Puts the pieces of a message together. */
    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
            text.append(part);
            if (last) {
                heard(JSON.readTree(text.toString()));
                text.setLength(0);
            }
            from.request(1);
            return CompletableFuture.completedFuture(null);
        }
    }

    @Override
    public void close() throws IOException {
        socket.abort();
        List<ProcessHandle> all = new ArrayList<>(process.descendants().toList());
        all.add(process.toHandle());
        all.forEach(ProcessHandle::destroyForcibly);
        all.forEach(each -> each.onExit().orTimeout(PATIENCE, TimeUnit.SECONDS).join());
        try (Stream<Path> files = Files.walk(profile)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
