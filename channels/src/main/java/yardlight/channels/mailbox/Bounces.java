package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yardlight.channels.Receipt.Fate;

/**
 * Reads what mail servers report: for machines (RFC 3464), or in plain words as some still do (common practice, no source).
 *
 * @param domain of our Message-IDs
 */
record Bounces(String domain) {

    private static final Pattern SERVER = Pattern.compile("(mailer-daemon|postmaster)@.*");

    private static final Pattern STILL_TRYING =
            Pattern.compile("delayed|not (been )?delivered yet|will (be tried|keep|retry|continue)"
                    + "|still trying|temporar|retrasad|se sigue intentando|se seguir[aá]|seguiremos");

    private static final Pattern RETURNED = Pattern.compile("(?im)^message-id:\\s*(<[^<>\\s]{1,900}>)");

    /** From here on a report in plain words repeats what was sent. */
    private static final Pattern REPEATED = Pattern.compile("(?im)^(return-path|received|message-id):");

    /** Empty when it is no report of a mail server on a mail of somebody. */
    Optional<Meaning> read(Fields fields, List<Leaf> leaves) throws MessagingException, IOException {
        for (Leaf leaf : leaves) {
            if (leaf.is("message", "delivery-status", "global-delivery-status") && !leaf.isAttached()) {
                return Optional.of(formal(StatusReport.of(leaf.text()), fields, leaves));
            }
        }
        boolean named = fields.has("X-Failed-Recipients");
        boolean server =
                fields.sender().filter(from -> SERVER.matcher(from).matches()).isPresent();
        boolean report = leaves.stream().anyMatch(leaf -> leaf.is("message", "disposition-notification"));
        return (named || server) && !report ? Optional.of(plain(fields, leaves)) : Optional.empty();
    }

    private Meaning formal(StatusReport report, Fields fields, List<Leaf> leaves)
            throws MessagingException, IOException {
        Optional<StatusReport.Recipient> counts = report.whatCounts();
        if (counts.isEmpty()) {
            return new Meaning.Automatic("a report of nothing final");
        }
        Optional<List<String>> returned = returned(leaves);
        Optional<String> about = returned.isPresent() ? ours(returned.get()) : named(fields);
        if (returned.isEmpty() && about.isEmpty()) {
            about = Optional.ofNullable(report.message().get("original-envelope-id"))
                    .filter(id -> id.matches("[!-;=?A-~]{1,200}"))
                    .map(id -> "<" + id + "@" + domain + ">");
        }
        return new Meaning.Report(
                counts.get().fate().orElseThrow(), about, counts.get().words());
    }

    private Meaning plain(Fields fields, List<Leaf> leaves) throws MessagingException, IOException {
        String body = BodyText.of(leaves);
        var repeated = REPEATED.matcher(body);
        String own = fields.words("Subject") + " " + (repeated.find() ? body.substring(0, repeated.start()) : body);
        boolean waits = STILL_TRYING.matcher(own.toLowerCase(Locale.ROOT)).find();
        Optional<List<String>> returned = returned(leaves);
        List<String> all = returned.orElseGet(() ->
                RETURNED.matcher(body).results().map(found -> found.group(1)).toList());
        Optional<String> about = all.isEmpty() ? named(fields) : ours(all);
        return new Meaning.Report(waits ? Fate.DELAYED : Fate.REFUSED, about, own);
    }

    /** The Message-ID of what was returned, whole or its header; empty when nothing was. */
    private static Optional<List<String>> returned(List<Leaf> leaves) throws MessagingException, IOException {
        for (Leaf leaf : leaves) {
            boolean whole = leaf.is("message", "rfc822", "global", "global-headers", "rfc822-headers");
            if (whole || leaf.is("text", "rfc822-headers")) {
                var headers = leaf.headers();
                List<String> ids = new Fields(headers::getHeader).messageIds("Message-ID");
                if (!ids.isEmpty()) {
                    return Optional.of(ids);
                }
            }
        }
        return Optional.empty();
    }

    /** What the report itself says to refer to. */
    private Optional<String> named(Fields fields) throws MessagingException {
        var all = new ArrayList<>(fields.messageIds("In-Reply-To"));
        all.addAll(fields.messageIds("References"));
        return ours(all);
    }

    private Optional<String> ours(List<String> ids) {
        return stream(ids).findFirst();
    }

    private Stream<String> stream(List<String> ids) {
        String end = "@" + domain.toLowerCase(Locale.ROOT) + ">";
        return ids.stream().filter(id -> id.toLowerCase(Locale.ROOT).endsWith(end));
    }
}
