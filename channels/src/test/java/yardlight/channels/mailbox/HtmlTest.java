package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<p>OK 47</p>|OK 47",
                "OK <b>4</b>7|OK 47",
                "<div>Enterado&nbsp;47,<br>voy para all&aacute;</div>|Enterado 47,/voy para allá",
                "<p>OK 47</p><blockquote><p>MESA 9<br>Reply OK 48</p></blockquote>me|OK 47/> MESA 9/> Reply OK 48/me",
                "<style>OK 1</style><script>OK 2</script>OK 47<!-- OK 3 -->|OK 47",
                "<head><title>OK 1</title></head><body>OK 47|OK 47",
                "<head><meta x><body>OK 47|OK 47",
                "<div style=display:none>OK 1<div>OK 2</div>OK 3</div>OK 47|OK 47",
                "<span style=\"font-size:0\">OK 1</span><span style=\"font-size:0.9em\">OK 47</span>|OK 47",
                "3 &lt; 4 &amp;&amp; &#49;&#x32; &unknown; &#0; &#99999999;|3 < 4 && 12 &unknown; &#0; &#99999999;",
                "OK 47<|OK 47",
                "OK 47<div|OK 47",
                "OK 47<!-- never ends|OK 47"
            })
    void leaves_what_a_person_reads(String html, String text) {
        assertThat(Html.text(html).strip().replace('\n', '/')).isEqualTo(text);
    }

    /** Each would take minutes if the time went with the square. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<",
                "<!--",
                "<div>",
                "</",
                "&",
                "<blockquote>",
                "<a <",
                "&#",
                " ",
                "<style>",
                "<p style=display:"
            })
    @Timeout(10)
    void takes_no_longer_for_what_is_made_to_take_long(String one) {
        assertThat(Html.text(one.repeat(200_000 / one.length()))).isNotNull();
    }
}
