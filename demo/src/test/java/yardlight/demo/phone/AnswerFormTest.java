package yardlight.demo.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AnswerFormTest {

    private static final URI PAGE = URI.create("http://localhost:8080/a/tok");

    @Test
    void goes_back_to_its_page_when_it_names_no_action() {
        assertThat(AnswerForm.on(PAGE, "<form method=post><button>I have it</button></form>"))
                .contains(new AnswerForm(PAGE, Map.of()));
    }

    @Test
    void sends_the_hidden_fields_and_the_button_that_is_pressed() {
        String html = """
                <form class="answer" action="/a/tok?x=1&amp;y=2" method="POST">
                  <input type="hidden" name="_csrf" value="a&quot;b"/>
                  <input name='once' type='hidden' value='7'>
                  <input type="text" name="note" value="typed">
                  <button name="do" value="acknowledge">I have it</button>
                  <button name="do" value="other">Not me</button>
                </form>""";

        AnswerForm form = AnswerForm.on(PAGE, html).orElseThrow();

        assertThat(form.action()).isEqualTo(URI.create("http://localhost:8080/a/tok?x=1&y=2"));
        assertThat(form.fields())
                .containsExactly(Map.entry("_csrf", "a\"b"), Map.entry("once", "7"), Map.entry("do", "acknowledge"));
        assertThat(form.encoded()).isEqualTo("_csrf=a%22b&once=7&do=acknowledge");
    }

    @Test
    void is_not_taken_for_a_form_that_only_asks() {
        String html = "<form action=/find><button>Find</button></form><form method='post' action=/a/tok></form>";

        assertThat(AnswerForm.on(PAGE, html)).contains(new AnswerForm(PAGE, Map.of()));
    }

    @Test
    void is_not_there_once_the_link_was_used() {
        assertThat(AnswerForm.on(PAGE, "<p>Ben answered at 2:26 AM.</p>")).isEmpty();
    }
}
