package yardlight.channels.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpHeaders;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against RFC 9110 10.2.3 and 5.6.7 (both read). */
class RetryAfterAgainstTest {

    private static HttpHeaders headers(String... namesAndValues) {
        Map<String, List<String>> headers = new HashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            headers.put(namesAndValues[i], List.of(namesAndValues[i + 1]));
        }
        return HttpHeaders.of(headers, (name, value) -> true);
    }

    /** The example of 10.2.3: 120 seconds are two minutes. */
    @Test
    void reads_seconds() {
        assertThat(RetryAfter.in(headers("Retry-After", "120"))).contains(Duration.ofMinutes(2));
        assertThat(RetryAfter.in(headers("retry-after", " 0 "))).contains(Duration.ZERO);
    }

    /** The other example of 10.2.3, two minutes before its time. */
    @Test
    void reads_a_date_by_the_servers_own_clock() {
        assertThat(RetryAfter.in(headers(
                        "Retry-After", "Fri, 31 Dec 1999 23:59:59 GMT", "Date", "Fri, 31 Dec 1999 23:57:59 GMT")))
                .contains(Duration.ofMinutes(2));
        assertThat(RetryAfter.in(headers("Retry-After", "Fri, 31 Dec 1999 23:59:59 GMT")))
                .isEmpty();
    }

    /** The three forms of 5.6.7, all of the same second; its number was recomputed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sun, 06 Nov 1994 08:49:37 GMT",
                "Sunday, 06-Nov-94 08:49:37 GMT",
                "Sun Nov  6 08:49:37 1994",
            })
    void reads_all_three_forms_of_a_date(String date) {
        assertThat(RetryAfter.date(date))
                .hasValueSatisfying(
                        read -> assertThat(read.toEpochSecond(ZoneOffset.UTC)).isEqualTo(784_111_777));
    }

    @Test
    void waits_no_time_for_a_date_that_is_over() {
        assertThat(RetryAfter.in(headers(
                        "Retry-After", "Fri, 31 Dec 1999 23:57:59 GMT", "Date", "Fri, 31 Dec 1999 23:59:59 GMT")))
                .contains(Duration.ZERO);
    }

    /** 10.2.3: delay-seconds is a non-negative decimal integer. */
    @ParameterizedTest
    @ValueSource(strings = {"-1", "1.5", "soon", "", "0x10", "+3", "٣", "Fri, 31 Dec 1999"})
    void takes_anything_else_for_nothing(String words) {
        assertThat(RetryAfter.in(headers("Retry-After", words, "Date", "Fri, 31 Dec 1999 23:59:59 GMT")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"86400", "99999999999999999999999999"})
    void waits_an_hour_at_most(String seconds) {
        assertThat(RetryAfter.in(headers("Retry-After", seconds))).contains(RetryAfter.LONGEST);
    }
}
