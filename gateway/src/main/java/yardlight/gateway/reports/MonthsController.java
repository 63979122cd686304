package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.gateway.document.CsvLine;
import yardlight.gateway.problem.Reader;
import yardlight.gateway.setup.SetupInForce;

/** Gives out how the alarms of months were and what they cost people, for programs and for spreadsheets. */
@RestController
class MonthsController {

    private static final String CSV = NotificationController.CSV;
    private static final MediaType CSV_TYPE = MediaType.parseMediaType(CSV + ";charset=UTF-8;header=present");

    private final PerformanceReports performance;
    private final BurdenReports burden;
    private final SetupInForce inForce;
    private final InstantSource clock;

    MonthsController(PerformanceReports performance, BurdenReports burden, SetupInForce inForce, InstantSource clock) {
        this.performance = performance;
        this.burden = burden;
        this.inForce = inForce;
        this.clock = clock;
    }

    @GetMapping(
            path = "/api/v1/reports/performance",
            produces = {MediaType.APPLICATION_JSON_VALUE, CSV})
    ResponseEntity<Object> performance(HttpServletRequest request) {
        List<MonthView> months = months(request);
        return csv(request) ? file(PerformanceCsv.of(months), "performance") : ResponseEntity.ok(months);
    }

    @GetMapping(path = "/reports/performance.csv", produces = CSV)
    ResponseEntity<Object> performanceFile(HttpServletRequest request) {
        return file(PerformanceCsv.of(months(request)), "performance");
    }

    @GetMapping(
            path = "/api/v1/reports/burden",
            produces = {MediaType.APPLICATION_JSON_VALUE, CSV})
    ResponseEntity<Object> burden(HttpServletRequest request) {
        List<MonthOfTexts> rows = burden.of(asked(request));
        return csv(request) ? file(lines(rows), "burden") : ResponseEntity.ok(rows);
    }

    @GetMapping(path = "/reports/burden.csv", produces = CSV)
    ResponseEntity<Object> burdenFile(HttpServletRequest request) {
        return file(lines(burden.of(asked(request))), "burden");
    }

    private List<MonthView> months(HttpServletRequest request) {
        return performance.of(asked(request)).stream().map(MonthView::of).toList();
    }

    private Months asked(HttpServletRequest request) {
        return Months.of(request, inForce.setup(), clock.instant());
    }

    private static boolean csv(HttpServletRequest request) {
        return Reader.choose(request, MediaType.APPLICATION_JSON_VALUE, CSV).equals(CSV);
    }

    private static ResponseEntity<Object> file(String text, String name) {
        return NotificationController.file(
                text.getBytes(StandardCharsets.UTF_8), CSV_TYPE, "yardlight-" + name + ".csv");
    }

    private static String lines(List<MonthOfTexts> rows) {
        var text = new StringBuilder(CsvLine.line(
                List.of("month", "contact", "name", "zone", "texts", "mails", "calls", "textsAtNight", "wakings")));
        rows.forEach(row -> text.append(CsvLine.line(List.of(
                row.month(),
                row.contact(),
                row.name(),
                row.zone(),
                row.texts() + "",
                row.mails() + "",
                row.calls() + "",
                row.atNight() + "",
                row.wakings() + ""))));
        return text.toString();
    }
}
