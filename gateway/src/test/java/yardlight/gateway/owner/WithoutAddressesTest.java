package yardlight.gateway.owner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yardlight.gateway.document.Format;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupText;

class WithoutAddressesTest {

    private static final String ADDRESS = "\"address\":\"[^\"]*\"";

    private final String shown = SetupText.of(
            Format.JSON,
            WithoutAddresses.of(SetupText.document(Documents.CONTRACT).root()));

    @Test
    void hides_where_a_line_goes_and_shows_that_it_is_there() {
        assertThat(shown)
                .contains("\"channel\":\"sms-mail\",\"address\":\"***0101@txt.example\"", "***@mesa.example")
                .doesNotContain("5755550101", "5755550102", "ana@");
    }

    @Test
    void leaves_everything_else_as_it_was() {
        String whole = SetupText.as(Format.JSON, Documents.CONTRACT);

        assertThat(shown.replaceAll(ADDRESS, "")).isEqualTo(whole.replaceAll(ADDRESS, ""));
    }
}
