package yardlight.gateway.record;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.gateway.document.CsvLine;

/** The log as a file for a spreadsheet, oldest line first. */
@Component
class LogCsv {

    static final String TYPE = "text/csv";
    private static final List<String> ABOUT = List.of("site", "box", "alarm", "callout", "notice", "contact");

    private final LogLines lines;

    LogCsv(LogLines lines) {
        this.lines = lines;
    }

    void write(LogFilter filter, HttpServletResponse response) throws IOException {
        response.setContentType(TYPE + ";charset=UTF-8;header=present");
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"yardlight-log.csv\"");
        Writer writer = response.getWriter();
        writer.write("line,at,what," + String.join(",", ABOUT) + ",words\r\n");
        lines.each(filter, line -> write(writer, CsvLine.line(cells(line))));
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
