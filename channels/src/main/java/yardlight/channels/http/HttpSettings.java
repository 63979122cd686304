package yardlight.channels.http;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import yardlight.channels.web.Limits;

/**
 * Everything that is to be known of one provider. Sentences about what is wrong begin with the name of the property.
 *
 * @param secret what {@code {secret}} stands for; also in {@code authentication} if there is one
 * @param address what a whole address of a line looks like, besides being 1 to 254 printable ASCII characters without a
 *     space, a comma or a semicolon
 * @param knock what is asked with GET to see whether the provider is there; without it, {@link Form#url} is asked with
 *     OPTIONS
 */
public record HttpSettings(
        Form form,
        Optional<Authentication> authentication,
        Optional<Secret> secret,
        Reading reading,
        Pattern address,
        Optional<String> knock,
        Limits limits) {

    /** A telephone number in the international form, with its plus or without. */
    public static final Pattern PHONE = Pattern.compile("\\+?[0-9]{3,20}");

    public HttpSettings {
        if (secret.isEmpty() && form.wantsSecret()) {
            throw new IllegalArgumentException("secret must be set, for the request asks for {secret}");
        }
    }

    /**
     * What goes out.
     *
     * @param url with placeholders in path and query
     * @param headers values may have {@code {to}}, {@code {id}} and {@code {at}}
     * @param contentType of the body; JSON, XML, a form, or plain text
     * @param body empty for none
     * @param idempotencyHeader gets the message's id, by which the provider can tell that it is the same again
     */
    public record Form(
            String method,
            String url,
            Map<String, String> headers,
            String contentType,
            String body,
            Optional<String> idempotencyHeader) {

        private static final Set<String> METHODS = Set.of("POST", "PUT", "GET");

        public Form {
            headers = Map.copyOf(headers);
            if (!METHODS.contains(method)) {
                throw new IllegalArgumentException("method must be POST, PUT or GET: " + method);
            }
            if (method.equals("GET") && !body.isEmpty()) {
                throw new IllegalArgumentException("body must be empty with the method GET: " + body);
            }
        }

        private boolean wantsSecret() {
            String asked = Placeholder.SECRET.toString();
            return url.contains(asked) || body.contains(asked);
        }
    }

    /**
     * What an answer means.
     *
     * @param success the status codes of success, 200 to 299; empty: all of them
     * @param passing status codes, 400 to 499, with which the provider says "later" and not "never"
     * @param taken what shows in an answer of success that the message was taken; empty: the status is enough
     * @param reference where the provider says what it calls the message
     */
    public record Reading(
            Set<Integer> success, Set<Integer> passing, Optional<Sign> taken, Optional<Whereabouts> reference) {

        public Reading {
            success = Set.copyOf(success);
            passing = Set.copyOf(passing);
            within("success", success, 200);
            within("transient", passing, 400);
        }

        private static void within(String property, Set<Integer> codes, int hundred) {
            for (int code : codes) {
                if (code / 100 * 100 != hundred) {
                    throw new IllegalArgumentException(
                            property + " must be status codes from " + hundred + " to " + (hundred + 99) + ": " + code);
                }
            }
        }
    }
}
