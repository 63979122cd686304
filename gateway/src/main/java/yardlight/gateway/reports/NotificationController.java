package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.gateway.document.Query;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Reader;
import yardlight.gateway.setup.SetupInForce;

/** Gives out notification reports, for programs by one address and for browsers, which cannot say what they want, by two more. */
@RestController
class NotificationController {

    static final String CSV = "text/csv";

    private final NotificationReports reports;
    private final SetupInForce inForce;
    private final InstantSource clock;
    private final MessageSource words;
    private final OneReport one;

    NotificationController(
            NotificationReports reports,
            SetupInForce inForce,
            InstantSource clock,
            MessageSource words,
            OneReport one) {
        this.reports = reports;
        this.inForce = inForce;
        this.clock = clock;
        this.words = words;
        this.one = one;
    }

    @GetMapping(
            path = "/api/v1/reports/notification",
            produces = {MediaType.APPLICATION_JSON_VALUE, MediaType.APPLICATION_PDF_VALUE, CSV})
    ResponseEntity<Object> notification(HttpServletRequest request, Locale locale) {
        return switch (Reader.choose(request, MediaType.APPLICATION_JSON_VALUE, MediaType.APPLICATION_PDF_VALUE, CSV)) {
            case MediaType.APPLICATION_PDF_VALUE -> pdf(request, locale);
            case CSV -> csv(request, locale);
            default ->
                ResponseEntity.ok()
                        .contentType(MediaType.APPLICATION_JSON)
                        .body(one.make(() -> report(request, locale)));
        };
    }

    @GetMapping(path = "/reports/notification.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    ResponseEntity<Object> pdf(HttpServletRequest request, Locale locale) {
        return one.make(() -> pdf(report(request, locale), locale));
    }

    @GetMapping(path = "/reports/notification.csv", produces = CSV)
    ResponseEntity<Object> csv(HttpServletRequest request, Locale locale) {
        return one.make(() -> csv(report(request, locale)));
    }

    private NotificationReport report(HttpServletRequest request, Locale locale) {
        Asked asked = Asked.of(new Query(request), clock.instant());
        return reports.of(asked, new Tongue(words, locale), request.getRemoteUser());
    }

    private ResponseEntity<Object> pdf(NotificationReport report, Locale locale) {
        return file(
                NotificationPdf.of(report, new Tongue(words, locale), inForce),
                MediaType.APPLICATION_PDF,
                "yardlight-notification.pdf");
    }

    private static ResponseEntity<Object> csv(NotificationReport report) {
        return file(
                NotificationCsv.of(report).getBytes(StandardCharsets.UTF_8),
                MediaType.parseMediaType(CSV + ";charset=UTF-8;header=present"),
                "yardlight-notification.csv");
    }

    static ResponseEntity<Object> file(byte[] content, MediaType type, String name) {
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(content);
    }
}
