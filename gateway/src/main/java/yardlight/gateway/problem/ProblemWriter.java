package yardlight.gateway.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;
import yardlight.gateway.sentence.Locales;

/** Writes a {@link Problem} as the answer: as JSON, or as a page when a person asks with a browser. */
@Component
public class ProblemWriter {

    private static final String WRITTEN = ProblemWriter.class.getName() + ".written";

    private final JsonMapper json;
    private final MessageSource words;

    public ProblemWriter(JsonMapper json, MessageSource words) {
        this.json = json;
        this.words = words;
    }

    /** What this request was answered, if that was a problem. */
    public static Optional<Problem> written(HttpServletRequest request) {
        return Optional.ofNullable((Problem) request.getAttribute(WRITTEN));
    }

    /** Does nothing when part of an answer is already on its way. */
    public void write(Problem problem, HttpServletRequest request, HttpServletResponse response) throws IOException {
        if (response.isCommitted()) {
            return;
        }
        response.resetBuffer();
        request.setAttribute(WRITTEN, problem);
        response.setStatus(problem.status().value());
        SafeHeaders.bare(response);
        problem.headers().forEach(response::setHeader);
        boolean page = Reader.wantsPage(request.getHeader(HttpHeaders.ACCEPT));
        response.setContentType(page ? "text/html;charset=UTF-8" : MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        String body = page
                ? new ProblemPage(words, Locales.of(request.getLocale())).html(problem)
                : json.writeValueAsString(members(problem, request));
        response.getOutputStream().write(body.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, Object> members(Problem problem, HttpServletRequest request) {
        var members = new LinkedHashMap<String, Object>();
        members.put("title", problem.status().getReasonPhrase());
        members.put("status", problem.status().value());
        members.put("detail", problem.getMessage());
        members.put("instance", Reader.path(request));
        if (!problem.faults().isEmpty()) {
            members.put("errors", problem.faults().stream().map(Fault::members).toList());
        }
        return members;
    }
}
