package yardlight.gateway.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.gateway.Doors;
import yardlight.gateway.browser.Look;
import yardlight.gateway.browser.SharedGateway;
import yardlight.gateway.browser.Visit;
import yardlight.gateway.setup.Documents;

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

    @ParameterizedTest
    @EnumSource(Look.class)
    void times_away_are_taken_over_from_the_text_of_a_calendar_and_forgotten_again(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            visit.open("/people/ana").getByText("Times away").click();
            visit.page().getByLabel("Or the text of a calendar file").fill("hello");
            visit.page().getByText("Take over").click();
            assertThat(visit.page().content()).contains("there is no calendar in it");
            visit.forgive();
            visit.page().getByLabel("Address of the calendar").fill("https://localhost/a.ics");
            visit.page().getByText("Take over").click();
            assertThat(visit.page().content()).contains("it must be a public https address of a calendar");
            visit.forgive();
            visit.open("/people/ana/vacations")
                    .getByLabel("Or the text of a calendar file")
                    .fill(away());
            visit.page().getByText("Take over").click();
            visit.page().waitForURL("**/people/ana/vacations");
            assertThat(visit.page().locator("main").textContent()).contains("12:00 AM to ", "Fishing, far out");
            assertThat(visit.page().locator("#left").textContent())
                    .contains("a rule that is not followed here", "Crew meeting");
            visit.check("vacations");

            visit.page().getByText("Forget what came from a calendar").click();
            assertThat(visit.page().locator("main").textContent()).contains("Nothing is known of times away.");
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
        assertThat(web.get("/api/v1/log", "Authorization", Doors.basic("owner")).body())
                .contains("owner made an address for the calendar of ben")
                .doesNotContain(token);
    }

    @Test
    void an_address_ends_with_its_person_and_is_none_of_who_comes_after_them() {
        String address = make();
        assertThat(web.get(address).statusCode()).isEqualTo(200);

        setUp("sites: []\ncontacts: []\n");
        assertThat(web.get(address).statusCode()).isEqualTo(404);
        setUp(Documents.CONTRACT);

        assertThat(web.get(address).statusCode()).isEqualTo(404);
    }

    private static String away() {
        String day = LocalDate.now(ZoneId.of("America/Chicago")).plusDays(20).format(DateTimeFormatter.BASIC_ISO_DATE);
        return "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//Example//EN\nBEGIN:VEVENT\nUID:1\nDTSTAMP:20261101T000000Z\n"
                + "DTSTART;VALUE=DATE:" + day + "\nSUMMARY:Fishing\\, far out\nEND:VEVENT\n"
                + "BEGIN:VEVENT\nUID:2\nDTSTAMP:20261101T000000Z\nDTSTART;VALUE=DATE:" + day
                + "\nSUMMARY:Crew meeting\nRRULE:FREQ=MONTHLY;BYDAY=MO;BYSETPOS=-1\nEND:VEVENT\nEND:VCALENDAR\n";
    }

    private String make() {
        String page = web.post(
                        "/people/ben/calendar",
                        "application/x-www-form-urlencoded",
                        "",
                        "Authorization",
                        Doors.basic("owner"))
                .body();
        return page.replaceAll("(?s).*(/calendar/[A-Za-z0-9_-]{22}\\.ics).*", "$1");
    }
}
