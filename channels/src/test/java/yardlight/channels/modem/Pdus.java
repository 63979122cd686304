package yardlight.channels.modem;

import com.cloudhopper.commons.charset.CharsetUtil;
import com.cloudhopper.commons.charset.GSMBitPacker;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * The other side's hand at 3GPP TS 23.040: reads what we send and writes what we read, with septets packed and spelled by
 * ch-commons-charset.
 */
final class Pdus {

    static final HexFormat HEX = HexFormat.of().withUpperCase();

    /** +15755550190, with its length. */
    static final String CENTRE = "07915157550591F0";

    private static final int INTERNATIONAL = 0x91;

    private Pdus() {}

    /**
     * An SMS-SUBMIT that came from us.
     *
     * @param centre the service centre's address, its length first; {@code 00} for that of the card
     */
    record Submitted(String centre, int reference, String address, String header, String text, boolean report) {

        static Submitted of(String pdu) {
            byte[] all = HEX.parseHex(pdu);
            byte[] octets = Arrays.copyOfRange(all, 1 + all[0], all.length);
            int first = octets[0] & 0xFF;
            int digits = octets[2] & 0xFF;
            int at = 4 + (digits + 1) / 2;
            String number = digits(Arrays.copyOfRange(octets, 4, at), digits);
            int coding = octets[at + 1] & 0xFF;
            int length = octets[at + 3] & 0xFF;
            byte[] data = Arrays.copyOfRange(octets, at + 4, octets.length);
            byte[] header = (first & 0x40) == 0 ? new byte[0] : Arrays.copyOf(data, data[0] + 1);
            String text = coding == 8
                    ? new String(data, header.length, data.length - header.length, StandardCharsets.UTF_16BE)
                    : septets(data, length, (header.length * 8 + 6) / 7);
            return new Submitted(
                    pdu.substring(0, 2 + 2 * all[0]),
                    octets[1] & 0xFF,
                    (octets[3] == (byte) INTERNATIONAL ? "+" : "") + number,
                    HEX.formatHex(header),
                    text,
                    (first & 0x20) != 0);
        }

        boolean isLast() {
            return header.isEmpty() || header.substring(8, 10).equals(header.substring(10, 12));
        }
    }

    /** That library leaves out a last at-sign where it cannot be told from spare bits. */
    private static String septets(byte[] data, int length, int header) {
        if (length == header) {
            return "";
        }
        byte[] all = Arrays.copyOf(GSMBitPacker.unpack(data), length);
        return CharsetUtil.decode(Arrays.copyOfRange(all, header, length), CharsetUtil.CHARSET_GSM);
    }

    /** An SMS-DELIVER of a text in the GSM alphabet, with the service centre's address. */
    static String delivered(String from, String text, String time) {
        byte[] septets = CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM);
        return CENTRE + "04" + address(from) + "0000" + time + octet(septets.length)
                + HEX.formatHex(GSMBitPacker.pack(septets));
    }

    /** One in UCS-2, with a header or none, in hexadecimal. */
    static String delivered(String from, String header, String text, String time) {
        byte[] characters = text.getBytes(StandardCharsets.UTF_16BE);
        return CENTRE + (header.isEmpty() ? "04" : "44") + address(from) + "0008" + time
                + octet(header.length() / 2 + characters.length) + header + HEX.formatHex(characters);
    }

    /** An SMS-STATUS-REPORT, with the service centre's address. */
    static String reported(int reference, String to, int status, String time) {
        return CENTRE + "06" + octet(reference) + address(to) + time + time + octet(status);
    }

    /** In octets, without the service centre's address: what a modem says beside a message. */
    static int length(String pdu) {
        return pdu.length() / 2 - 1 - Integer.parseInt(pdu.substring(0, 2), 16);
    }

    /** A number with a plus is international, one without national, and anything else a name. */
    private static String address(String number) {
        if (!number.matches("\\+?[0-9]+")) {
            byte[] packed = GSMBitPacker.pack(CharsetUtil.encode(number, CharsetUtil.CHARSET_GSM));
            return octet((number.length() * 7 + 3) / 4) + "D0" + HEX.formatHex(packed);
        }
        String digits = number.replace("+", "");
        var swapped = new ByteArrayOutputStream();
        for (int i = 0; i < digits.length(); i += 2) {
            int low = digits.charAt(i) - '0';
            int high = i + 1 < digits.length() ? digits.charAt(i + 1) - '0' : 0x0F;
            swapped.write(high << 4 | low);
        }
        return octet(digits.length()) + (number.startsWith("+") ? "91" : "A1") + HEX.formatHex(swapped.toByteArray());
    }

    private static String digits(byte[] octets, int count) {
        StringBuilder digits = new StringBuilder();
        for (byte octet : octets) {
            digits.append(octet & 0x0F).append(octet >> 4 & 0x0F);
        }
        return digits.substring(0, count);
    }

    private static String octet(int value) {
        return String.format("%02X", value);
    }
}
