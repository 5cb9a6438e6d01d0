package runthrough.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.http.Context;
import java.io.IOException;
import runthrough.web.job.Refusal;

/** What goes between the page and its server: JSON, read with care. */
final class PageMessages {
    static final String TYPE = "application/json";

    private final JsonMapper json = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** What is asked. */
    PageRequest ask(Context context) {
        return ask(context.bodyAsBytes());
    }

    /** The same from its bytes. */
    PageRequest ask(byte[] body) {
        try {
            PageRequest ask = json.readValue(body, PageRequest.class);
            if (ask != null) {
                return ask;
            }
        } catch (IOException e) {
            // Said below.
        }
        throw new Refusal(400, "The request is not what this program reads.");
    }

    void reply(Context context, Object value) throws JsonProcessingException {
        context.contentType(TYPE).result(written(value));
    }

    byte[] written(Object value) throws JsonProcessingException {
        return json.writeValueAsBytes(value);
    }

    void refuse(Context context, int status, String message) {
        context.status(status).contentType(TYPE).result(Refusal.body(message));
    }
}
