package yardlight.channels.mailbox;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yardlight.channels.Receipt.Fate;

/**
 * The part of a delivery status notification that is for machines: fields of the message, an empty line, then one group of
 * fields for each recipient (RFC 3464 2.1).
 *
 * @param recipients in their order
 */
record StatusReport(Map<String, String> message, List<Recipient> recipients) {

    /** What became of the mail for one recipient; the fields by their names in small letters. */
    record Recipient(Map<String, String> fields) {

        /** RFC 3464 2.3.3, in any letter case. Decides alone: a failure is final also with a status of class 4. */
        String action() {
            return fields.getOrDefault("action", "").split("[ (;]", 2)[0].toLowerCase(Locale.ROOT);
        }

        /** Empty when nothing more will be heard of it, or nothing final: relayed, expanded, or no word of the RFC. */
        Optional<Fate> fate() {
            return switch (action()) {
                case "failed" -> Optional.of(Fate.REFUSED);
                case "delayed" -> Optional.of(Fate.DELAYED);
                case "delivered" -> Optional.of(Fate.DELIVERED);
                default -> Optional.empty();
            };
        }

        String words() {
            String status = fields.getOrDefault("status", "");
            String reason = fields.getOrDefault("diagnostic-code", "");
            return (action() + " " + status + (reason.isEmpty() ? "" : ", " + reason)).strip();
        }
    }

    static StatusReport of(String text) {
        var groups = new ArrayList<Map<String, String>>();
        for (String group : text.replaceAll("\\r\\n?", "\n").strip().split("\\n[ \\t]*\\n")) {
            Map<String, String> fields = fields(group);
            if (!fields.isEmpty()) {
                groups.add(fields);
            }
        }
        // Some leave the group of the message out.
        boolean first = !groups.isEmpty() && !groups.get(0).containsKey("action");
        Map<String, String> message = first ? groups.get(0) : Map.of();
        return new StatusReport(
                message,
                groups.stream()
                        .skip(first ? 1 : 0)
                        .filter(fields -> fields.containsKey("action"))
                        .map(Recipient::new)
                        .toList());
    }

    /**
     * Ours go to one recipient each. When an address stood for several, one that was reached is enough, and one that still may
     * be is waited for.
     */
    Optional<Recipient> whatCounts() {
        return with(Fate.DELIVERED).or(() -> with(Fate.DELAYED)).or(() -> with(Fate.REFUSED));
    }

    private Optional<Recipient> with(Fate fate) {
        return recipients.stream()
                .filter(one -> one.fate().filter(fate::equals).isPresent())
                .findFirst();
    }

    /** Folded lines put together; the first of a name counts. */
    private static Map<String, String> fields(String group) {
        var fields = new LinkedHashMap<String, String>();
        for (String line : group.replaceAll("\\n[ \\t]+", " ").split("\\n")) {
            int colon = line.indexOf(':');
            if (colon > 0) {
                String name = line.substring(0, colon).strip().toLowerCase(Locale.ROOT);
                fields.putIfAbsent(name, line.substring(colon + 1).strip());
            }
        }
        return fields;
    }
}
