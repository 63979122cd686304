package yardlight.gateway.arrival;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FormFieldsTest {

    private static final String FORM = "application/x-www-form-urlencoded";

    @Test
    void are_read_also_behind_a_calendar_of_a_megabyte() {
        String event = "BEGIN:VEVENT\r\nSUMMARY:Vacaciones de verano; en la costa\r\nEND:VEVENT\r\n";
        String calendar = event.repeat(1_000_000 / event.length());

        Map<String, String[]> fields = in("text=" + URLEncoder.encode(calendar, StandardCharsets.UTF_8) + "&_csrf=t");

        assertThat(fields.get("text")).containsExactly(calendar);
        assertThat(fields.get("_csrf")).containsExactly("t");
    }

    @Test
    void that_are_more_than_any_page_has_are_not_read() {
        assertThat(in("a=b&".repeat(1_000))).containsOnlyKeys("a");
        assertThat(in("a=b&".repeat(100_000))).isEmpty();
    }

    private static Map<String, String[]> in(String body) {
        return FormFields.in(body.getBytes(StandardCharsets.UTF_8), "POST", FORM, Map.of());
    }
}
