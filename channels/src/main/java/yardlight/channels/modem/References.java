package yardlight.channels.modem;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.channels.Receipt.Fate;
import yardlight.channels.gsm.StatusReport;

/**
 * Finds the text that a status report is about. It names the message by the recipient and one octet that the modem counts up,
 * and that begins again after 255 messages: so what is too old to be reported on is forgotten, and where two could be meant,
 * none is. In memory only: a report that comes after a restart finds nothing.
 */
final class References {

    private static final int MOST = 5_000;

    /** So long after it has run out a message may still be reported on. */
    private static final Duration LATE = Duration.ofHours(1);

    /** Digits from the end by which numbers are compared of which one lacks its beginning. */
    private static final int ENOUGH = 7;

    private final Duration validity;
    private final List<Sent> sent = new ArrayList<>();

    private record Sent(String digits, int number, Text text, Instant at) {}

    /** @param missing numbers of the parts of which it is not known that they arrived */
    private record Text(String reference, Set<Integer> missing) {}

    /**
     * What a report says.
     *
     * @param reference of the text
     * @param about to be given to {@link #heeded} once it has been kept for good
     */
    record Told(String reference, Fate fate, StatusReport about) {}

    References(Duration validity) {
        this.validity = validity;
    }

    /**
     * All parts of a text were taken.
     *
     * @param numbers by which the modem calls them, in order
     * @return what the text is called from now on
     */
    synchronized String taken(String address, List<Integer> numbers, Instant now) {
        forget(now);
        int last = numbers.get(numbers.size() - 1);
        var text = new Text(address + "/" + last + "/" + now.toEpochMilli(), new HashSet<>(numbers));
        for (int number : numbers) {
            sent.add(new Sent(address.substring(1), number, text, now));
        }
        while (sent.size() > MOST) {
            sent.remove(0);
        }
        return text.reference();
    }

    /**
     * What is to be told of a text: that it arrived, once all its parts have, and that it will not, once one of them will
     * not. Empty if there is nothing to tell, or it cannot be said of which text.
     */
    synchronized Optional<Told> meaning(StatusReport report, Instant now) {
        forget(now);
        Optional<Fate> fate = DeliveryStatus.fate(report.status());
        Optional<Sent> about = about(report);
        if (about.isEmpty() || fate.isEmpty()) {
            return Optional.empty();
        }
        Text text = about.get().text();
        if (fate.get() == Fate.DELIVERED && text.missing().size() > 1) {
            heeded(report, fate.get());
            return Optional.empty();
        }
        return Optional.of(new Told(text.reference(), fate.get(), report));
    }

    synchronized void heeded(Told told) {
        heeded(told.about(), told.fate());
    }

    private void heeded(StatusReport report, Fate fate) {
        about(report).ifPresent(found -> {
            switch (fate) {
                case DELIVERED -> {
                    found.text().missing().remove(found.number());
                    sent.remove(found);
                }
                case REFUSED -> sent.removeIf(other -> other.text() == found.text());
                case DELAYED -> {}
            }
        });
    }

    private Optional<Sent> about(StatusReport report) {
        List<Sent> found = sent.stream()
                .filter(one -> one.number() == report.reference()
                        && isSame(one.digits(), report.recipient().digits()))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** Some centres write the number without its country's code, or with a zero in its place. */
    private static boolean isSame(String ours, String theirs) {
        String bare = theirs.replaceFirst("^0+", "");
        return ours.equals(theirs) || bare.length() >= ENOUGH && ours.endsWith(bare);
    }

    private void forget(Instant now) {
        sent.removeIf(one -> one.at().plus(validity).plus(LATE).isBefore(now));
    }
}
