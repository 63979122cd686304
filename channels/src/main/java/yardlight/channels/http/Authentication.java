package yardlight.channels.http;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** How the provider knows us: one header. */
public sealed interface Authentication {

    /** Which header, such as {@code Authorization}. */
    String header();

    /** With the secret in it. */
    String value();

    /** The secret alone, in a header of the provider's own. */
    record Header(String header, Secret secret) implements Authentication {

        public Header {
            HeaderNames.check("secret-header", header);
        }

        @Override
        public String value() {
            return secret.value();
        }
    }

    /** RFC 6750. */
    record Bearer(Secret secret) implements Authentication {

        @Override
        public String header() {
            return "Authorization";
        }

        @Override
        public String value() {
            return "Bearer " + secret.value();
        }
    }

    /** RFC 7617, in UTF-8. */
    record Basic(String user, Secret secret) implements Authentication {

        public Basic {
            if (user.isEmpty() || user.contains(":") || user.chars().anyMatch(c -> c < ' ' || c == 127)) {
                throw new IllegalArgumentException(
                        "user must not be empty nor have a colon or a control character: " + user);
            }
        }

        @Override
        public String header() {
            return "Authorization";
        }

        @Override
        public String value() {
            byte[] both = (user + ":" + secret.value()).getBytes(StandardCharsets.UTF_8);
            return "Basic " + Base64.getEncoder().encodeToString(both);
        }
    }
}
