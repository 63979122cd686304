package yardlight.gateway.record;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.databind.json.JsonMapper;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.escalation.Entry;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Reader;

/** Gives out the log, line after line as it is read, so that three years of it need no more memory than a day. */
@RestController
@RequestMapping("/api/v1/log")
class LogController {

    private static final String CSV = LogCsv.TYPE;
    private static final String KINDS =
            Stream.of(Entry.What.values()).map(Entry.What::word).collect(Collectors.joining(", "));

    private final LogLines lines;
    private final LogCsv csv;
    private final JsonMapper json;

    LogController(LogLines lines, LogCsv csv, JsonMapper json) {
        this.lines = lines;
        this.csv = csv;
        this.json = json;
    }

    @GetMapping(produces = {MediaType.APPLICATION_JSON_VALUE, CSV})
    void log(HttpServletRequest request, HttpServletResponse response) throws IOException {
        LogFilter filter = filter(request);
        if (Reader.choose(request, MediaType.APPLICATION_JSON_VALUE, CSV).equals(CSV)) {
            csv.write(filter, response);
        } else {
            json(filter, response);
        }
    }

    /** Is closed only when all went well: half a log must not look like a whole one. */
    private void json(LogFilter filter, HttpServletResponse response) throws IOException {
        response.setContentType(MediaType.APPLICATION_JSON_VALUE);
        SequenceWriter writer = json.writer().writeValuesAsArray(response.getOutputStream());
        lines.each(filter, line -> writer.write(members(line)));
        writer.close();
    }

    private static LogFilter filter(HttpServletRequest request) {
        var query = new Query(request);
        var filter = new LogFilter(
                query.instant("from"),
                query.instant("to"),
                query.text("site"),
                query.text("contact"),
                query.as("what", "must be one of " + KINDS, LogController::kind));
        query.orNothing();
        return filter;
    }

    private static Optional<String> kind(String word) {
        return Stream.of(Entry.What.values())
                .map(Entry.What::word)
                .filter(word::equals)
                .findFirst();
    }

    private static Map<String, Object> members(LogLine line) {
        var members = new LinkedHashMap<String, Object>();
        members.put("line", line.line());
        members.put("at", line.at());
        members.put("what", line.what());
        members.put("about", line.about());
        members.put("words", line.words());
        return members;
    }
}
