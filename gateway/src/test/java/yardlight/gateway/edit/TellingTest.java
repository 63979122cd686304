package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;
import yardlight.escalation.Fixtures;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.sentence.Locales;

class TellingTest {

    private static final Telling ENGLISH = telling(Locale.ENGLISH, true);

    private static Telling telling(Locale locale, boolean addresses) {
        var words = new ResourceBundleMessageSource();
        words.setBasename("words/edits");
        words.setDefaultEncoding("UTF-8");
        words.setFallbackToSystemLocale(false);
        return new Telling(new Tongue(words, locale), Fixtures.theSetup(), addresses);
    }

    @Test
    void says_what_an_edit_did_to_a_ladder() {
        assertThat(said(ENGLISH, "rungs/2/wait", "PT5M", "PT1H30M")).isEqualTo("rung 2, wait: 5 min → 1 h 30 min");
        assertThat(said(ENGLISH, "rungs/1/call", "ana", "roster:crew, ben, everyone"))
                .isEqualTo("rung 1, calls: Ana Ruelas → on call: crew, Ben Tully, everyone");
        assertThat(said(ENGLISH, "again", "", "2")).isEqualTo("climbs again: 2, new");
        assertThat(said(ENGLISH, "rungs/3/call", "ben", "")).isEqualTo("rung 3, calls: Ben Tully, taken away");
        assertThat(said(ENGLISH, "", "", "night")).isEqualTo("new");
        assertThat(said(ENGLISH, "", "night", "")).isEqualTo("taken away");
    }

    @Test
    void says_it_in_spanish() {
        Telling spanish = telling(Locales.SPANISH, true);

        assertThat(said(spanish, "rungs/2/wait", "PT5M", "PT10M")).isEqualTo("peldaño 2, espera: 5 min → 10 min");
        assertThat(spanish.name(new Saved.Changed(Part.LADDERS, "night", List.of())))
                .isEqualTo("Escalera night");
    }

    @Test
    void hides_addresses_from_who_may_only_read() {
        Telling reader = telling(Locale.ENGLISH, false);

        assertThat(said(reader, "lines/1/address", "5755550101@txt.example", "5755550102@txt.example"))
                .isEqualTo("line 1, address: changed");
        assertThat(said(reader, "lines/2", "", "channel mail, address ana@mesa.example"))
                .isEqualTo("line 2: changed");
        assertThat(said(ENGLISH, "lines/1/address", "", "ana@mesa.example")).contains("ana@mesa.example");
    }

    @Test
    void says_what_it_has_no_word_for_as_it_is_written() {
        assertThat(said(ENGLISH, "colour", "P", "blue")).isEqualTo("colour: P → blue");
    }

    @ParameterizedTest
    @CsvSource({"PT0S, 0 s", "PT30S, 30 s", "PT5M, 5 min", "P7D, 7 d", "P1DT2H3M4S, 1 d 2 h 3 min 4 s"})
    void says_how_long_something_is(Duration length, String words) {
        assertThat(Telling.length(length)).isEqualTo(words);
    }

    private static String said(Telling telling, String field, String before, String after) {
        var changed = new Saved.Changed(Part.LADDERS, "night", List.of(new Difference(field, before, after)));
        return telling.differences(changed).get(0);
    }
}
