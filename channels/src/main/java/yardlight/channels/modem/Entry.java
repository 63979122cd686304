package yardlight.channels.modem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import yardlight.channels.gsm.TpAddress;

/**
 * A message that the modem has for us.
 *
 * @param index where it is kept; empty if the modem told us of it and kept nothing
 * @param message without the service centre's address
 * @param centre the service centre's number, as {@code +15755550190}, if it is one with a country
 */
record Entry(Optional<Integer> index, byte[] message, Optional<String> centre) {

    /** {@code <stat>} of clause 3.1 from which on a message is one of ours, put there to be sent. */
    private static final int TO_BE_SENT = 2;

    /** Those of a list (clause 4.1): {@code +CMGL: <index>,<stat>,[<alpha>],<length>} and a line with the message. */
    static List<Entry> listed(Answer answer) {
        List<Entry> entries = new ArrayList<>();
        List<String> lines = answer.lines();
        for (int i = 0; i + 1 < lines.size(); i++) {
            String[] values = lines.get(i)
                    .substring(lines.get(i).indexOf(':') + 1)
                    .strip()
                    .split("\\s*,\\s*");
            boolean ours = values.length > 1 && values[1].matches("[0-9]") && Integer.parseInt(values[1]) >= TO_BE_SENT;
            if (lines.get(i).startsWith("+") && values[0].matches("[0-9]{1,5}") && !ours) {
                entry(Optional.of(Integer.valueOf(values[0])), lines.get(i), lines.get(i + 1))
                        .ifPresent(entries::add);
            }
        }
        return entries;
    }

    /** One that came by itself (clauses 3.4.1): {@code +CDS: <length>} or {@code +CMT: [<alpha>],<length>}. */
    static Optional<Entry> told(Dialogue.Unasked told) {
        return entry(Optional.empty(), told.line(), told.message());
    }

    private static Optional<Entry> entry(Optional<Integer> index, String head, String hexadecimal) {
        if (!hexadecimal.matches("(?:[0-9A-Fa-f]{2})+")) {
            return Optional.empty();
        }
        byte[] octets = HexFormat.of().parseHex(hexadecimal);
        String last = head.substring(Math.max(head.lastIndexOf(','), head.indexOf(':')) + 1)
                .strip();
        int length = last.matches("[0-9]{1,3}") ? Integer.parseInt(last) : octets.length;
        // Its length leaves the service centre's address out; some modems leave the address out as well.
        int centre = length >= octets.length ? 0 : Math.min(1 + (octets[0] & 0xFF), octets.length);
        return Optional.of(new Entry(
                index,
                Arrays.copyOfRange(octets, centre, octets.length),
                TpAddress.centre(Arrays.copyOf(octets, centre))));
    }
}
