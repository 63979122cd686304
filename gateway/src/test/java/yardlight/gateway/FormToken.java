package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import java.io.UnsupportedEncodingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/**
 * The token of a form, as a page has it. The one that Spring's test support puts into a request would change the
 * application for every test behind it.
 */
public record FormToken(Cookie cookie, String value) {

    private static final Pattern FIELD = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    /**
     * @param known what the browser has kept, in case that the page gives none anew
     */
    public static FormToken of(MvcTestResult page, Cookie known) {
        try {
            Matcher field = FIELD.matcher(page.getResponse().getContentAsString());
            assertThat(field.find()).as("a form on the page").isTrue();
            Cookie fresh = page.getResponse().getCookie("XSRF-TOKEN");
            return new FormToken(fresh == null ? known : fresh, field.group(1));
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }
}
