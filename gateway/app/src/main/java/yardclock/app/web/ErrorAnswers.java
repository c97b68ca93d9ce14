package yardclock.app.web;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers in the usual form also where a request is so broken that it never reaches the table. */
final class ErrorAnswers extends ErrorHandler {
    @Override
    protected void generateResponse(
            Request request,
            Response response,
            int code,
            String message,
            Throwable cause,
            Callback callback) {
        WebRefusal refusal = WebRefusal.ofStatus(code);
        String body = Refusals.json(new Refusals.Body(refusal.reason(), refusal.words()));
        response.setStatus(code);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json");
        Content.Sink.write(response, true, body, callback);
    }
}
