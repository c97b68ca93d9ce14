package yardclock.app.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Reads a live stream as a page does, on a thread of its own. */
final class SseClient implements AutoCloseable {
    final List<Message> messages = new CopyOnWriteArrayList<>();
    final List<String> comments = new CopyOnWriteArrayList<>();
    volatile boolean ended;
    final HttpResponse<InputStream> response;

    record Message(String name, long id, String data) {}

    SseClient(HttpClient client, HttpRequest request) throws Exception {
        response = client.send(request, BodyHandlers.ofInputStream());
        Thread reader = new Thread(this::read, "sse-client");
        reader.setDaemon(true);
        reader.start();
    }

    private void read() {
        String name = "";
        String data = "";
        long id = -1;
        try (BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(response.body(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.isEmpty() && !name.isEmpty()) {
                    messages.add(new Message(name, id, data));
                    name = "";
                } else if (line.startsWith(":")) {
                    comments.add(line);
                } else if (line.startsWith("event: ")) {
                    name = line.substring(7);
                } else if (line.startsWith("id: ")) {
                    id = Long.parseLong(line.substring(4));
                } else if (line.startsWith("data: ")) {
                    data = line.substring(6);
                }
            }
        } catch (IOException e) {
            // the stream ended, which is what the flag says
        }
        ended = true;
    }

    @Override
    public void close() throws IOException {
        response.body().close();
    }
}
