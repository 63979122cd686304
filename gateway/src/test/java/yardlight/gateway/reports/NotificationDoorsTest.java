package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

/** What the doors of the notification report take and refuse. */
@GatewayTest
class NotificationDoorsTest {

    private static final String API = "/api/v1/reports/notification";

    private final Doors doors;
    private final OneReport one;

    NotificationDoorsTest(Doors doors, OneReport one) {
        this.doors = doors;
        this.one = one;
    }

    private MvcTestResult get(String address, String accept) {
        return doors.as("reader", HttpMethod.GET, address).accept(accept).exchange();
    }

    @Test
    void a_reader_gets_it_in_the_form_that_they_ask_for() {
        String period = API + "?from=2026-11-01T00:00:00Z&to=2026-11-30T00:00:00Z";

        assertThat(get(period, "application/pdf")).hasStatusOk().hasContentType("application/pdf");
        assertThat(get(period, "text/csv")).hasStatusOk().bodyText().startsWith("what,utc");
        assertThat(get(period, "*/*"))
                .hasStatusOk()
                .bodyJson()
                .extractingPath("head.size")
                .isNotNull();
        assertThat(get("/reports/notification.pdf", "text/html,application/xhtml+xml,*/*;q=0.8"))
                .hasStatusOk()
                .hasContentType("application/pdf");
    }

    @Test
    void a_period_is_at_most_400_days_and_does_not_end_before_it_begins() {
        assertThat(get(API + "?from=2025-01-01T00:00:00Z&to=2026-11-30T00:00:00Z", "*/*"))
                .hasStatus(422)
                .bodyText()
                .contains("must be at most 400 days before to");
        assertThat(get(API + "?from=2026-11-30T00:00:00Z&to=2026-11-30T00:00:00Z", "*/*"))
                .hasStatus(422)
                .bodyText()
                .contains("must be before to");
        assertThat(get(API + "?from=yesterday", "*/*")).hasStatus(422);
        assertThat(get(API + "?alarm=mesa-9.none.high.1", "*/*")).hasStatus(404);
    }

    @Test
    void the_page_says_beside_the_day_what_is_wrong_and_leads_to_no_report_then() {
        assertThat(get("/reports?from=2026-11-25&to=2026-11-24", "text/html"))
                .hasStatusOk()
                .bodyText()
                .contains("Not before the first day.")
                .doesNotContain("notification.pdf");
        assertThat(get("/reports?from=2024-11-25&to=2026-11-24", "text/html"))
                .bodyText()
                .contains("400 days at most.");
        assertThat(get("/reports?site=mesa-9&from=2026-11-01&to=2026-11-30", "text/html"))
                .bodyText()
                .contains(
                        "/reports/notification.pdf?site=mesa-9&amp;from=2026-11-01T05:00:00Z&amp;to=2026-12-01T06:00:00Z");
    }

    @Test
    void only_one_report_of_any_kind_is_made_at_a_time() {
        List<String> makers = List.of(
                API + ", application/json",
                API + ", text/csv",
                API + ", application/pdf",
                "/reports/notification.pdf, application/pdf",
                "/reports/notification.csv, text/csv",
                "/api/v1/reports/performance, application/json",
                "/reports/performance, text/html",
                "/api/v1/reports/burden, application/json",
                "/reports/burden.csv, text/csv",
                "/reports/burden, text/html");
        for (String maker : makers) {
            String[] door = maker.split(", ");
            assertThat(one.make(() -> asHand(door[0], door[1])))
                    .as(maker)
                    .hasStatus(503)
                    .hasHeader("Retry-After", "5");
            assertThat(asHand(door[0], door[1])).as(maker).hasStatusOk();
        }
    }

    private MvcTestResult asHand(String address, String accept) {
        return doors.as("hand", HttpMethod.GET, address).accept(accept).exchange();
    }
}
