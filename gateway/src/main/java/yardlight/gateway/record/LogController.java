package yardlight.gateway.record;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.databind.json.JsonMapper;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Reader;

/** Gives out the log, line after line as it is read, so that three years of it need no more memory than a day. */
@RestController
@RequestMapping("/api/v1/log")
class LogController {

    private static final String CSV = "text/csv";
    private static final List<String> ABOUT = List.of("site", "box", "alarm", "callout", "notice", "contact");

    private final LogLines lines;
    private final JsonMapper json;

    LogController(LogLines lines, JsonMapper json) {
        this.lines = lines;
        this.json = json;
    }

    @GetMapping(produces = {MediaType.APPLICATION_JSON_VALUE, CSV})
    void log(HttpServletRequest request, HttpServletResponse response) throws IOException {
        LogFilter filter = filter(request);
        if (Reader.choose(request, MediaType.APPLICATION_JSON_VALUE, CSV).equals(CSV)) {
            csv(filter, response);
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

    private void csv(LogFilter filter, HttpServletResponse response) throws IOException {
        response.setContentType(CSV + ";charset=UTF-8;header=present");
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"yardlight-log.csv\"");
        Writer writer = response.getWriter();
        writer.write("line,at,what," + String.join(",", ABOUT) + ",words\r\n");
        lines.each(filter, line -> write(writer, Csv.line(cells(line))));
    }

    private static LogFilter filter(HttpServletRequest request) {
        var query = new Query(request);
        var filter =
                new LogFilter(query.instant("from"), query.instant("to"), query.text("site"), query.text("contact"));
        query.orNothing();
        return filter;
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

    private static List<String> cells(LogLine line) {
        var cells =
                new ArrayList<>(List.of(Long.toString(line.line()), line.at().toString(), line.what()));
        ABOUT.forEach(name -> cells.add(line.about().getOrDefault(name, "")));
        cells.add(line.words());
        return cells;
    }

    private static void write(Writer writer, String text) {
        try {
            writer.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
