package yardlight.gateway.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.gateway.browser.Look;
import yardlight.gateway.browser.SharedGateway;
import yardlight.gateway.browser.Visit;

/** A person's calendar by its address: read by whoever has it, and by nobody once it is revoked. */
class FeedIT extends SharedGateway {

    private final JdbcTemplate jdbc;

    @Autowired
    FeedIT(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void an_address_is_made_read_and_revoked(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            visit.open("/people/ana");
            visit.page().getByText("Calendar of the turns").click();
            assertThat(visit.page().content()).contains("There is no address.");
            visit.page().getByText("Make an address").click();
            String address = visit.page().locator("p.address").textContent();
            visit.check("calendar-feed");

            HttpResponse<String> calendar = web.get(URI.create(address).getPath());
            assertThat(calendar.statusCode()).isEqualTo(200);
            assertThat(calendar.headers().firstValue("Content-Type")).contains("text/calendar;charset=UTF-8");
            assertThat(calendar.body()).startsWith("BEGIN:VCALENDAR").contains("SUMMARY:On call: crew");

            visit.page().getByText("Revoke the address").click();
            assertThat(web.get(URI.create(address).getPath()).statusCode()).isEqualTo(404);
        }
    }

    @Test
    void the_token_is_not_kept_and_a_new_address_ends_the_one_before() {
        String first = make();
        String second = make();

        assertThat(web.get(first).statusCode()).isEqualTo(404);
        assertThat(web.get(second).statusCode()).isEqualTo(200);
        assertThat(web.get(second.replaceAll(".\\.ics$", "!.ics")).statusCode()).isEqualTo(404);
        assertThat(web.get("/calendar/x.ics").statusCode()).isEqualTo(404);
        String token = second.replaceAll(".*/|\\.ics", "");
        assertThat(token).hasSize(22);
        assertThat(jdbc.queryForList("select token_hash from calendar_feed", String.class))
                .hasSize(1)
                .noneMatch(token::equals);
        assertThat(web.get("/api/v1/log", "Authorization", yardlight.gateway.Doors.basic("owner"))
                        .body())
                .contains("owner made an address for the calendar of ben")
                .doesNotContain(token);
    }

    private String make() {
        String page = web.post(
                        "/people/ben/calendar",
                        "application/x-www-form-urlencoded",
                        "",
                        "Authorization",
                        yardlight.gateway.Doors.basic("owner"))
                .body();
        return page.replaceAll("(?s).*(/calendar/[A-Za-z0-9_-]{22}\\.ics).*", "$1");
    }
}
