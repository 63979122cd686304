package yardlight.channels.web;

import java.net.http.HttpHeaders;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What came of an exchange. */
public sealed interface Reply {

    /**
     * The other side answered.
     *
     * @param body as far as it came, at most {@link Exchanges#MOST_BODY} bytes
     * @param whole whether that is all of it
     */
    record Answer(int status, HttpHeaders headers, byte[] body, boolean whole) implements Reply {

        private static final Pattern CHARSET = Pattern.compile("(?i)charset=\"?([A-Za-z0-9._:+-]{1,40})");

        /** The body as text; bytes that are none in its charset become a question mark in a box. */
        public String text() {
            return new String(body, charset());
        }

        private Charset charset() {
            Matcher named = CHARSET.matcher(headers.firstValue("Content-Type").orElse(""));
            try {
                return named.find() ? Charset.forName(named.group(1)) : StandardCharsets.UTF_8;
            } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
                return StandardCharsets.UTF_8;
            }
        }
    }

    /**
     * No answer came.
     *
     * @param sent whether all of the request may have reached the other side; if not, it cannot have been heeded
     */
    record Silence(boolean sent, String why) implements Reply {}
}
