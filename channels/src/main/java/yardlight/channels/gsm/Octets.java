package yardlight.channels.gsm;

import java.util.Arrays;

/** Octets read from the first to the last. An {@link IllegalArgumentException} where there are not as many as are asked for. */
final class Octets {

    /** 3GPP TS 23.040 clause 9.1.2.3 and TS 24.008 table 10.5.118: what a half of an octet may be; 15 fills up. */
    private static final String DIGITS = "0123456789*#abc";

    private final byte[] all;
    private int at;

    Octets(byte[] all) {
        this.all = all.clone();
    }

    int next() {
        return next(1)[0] & 0xFF;
    }

    byte[] next(int count) {
        if (at + count > all.length) {
            throw new IllegalArgumentException("there must be " + (at + count) + " octets: " + all.length);
        }
        at += count;
        return Arrays.copyOfRange(all, at - count, at);
    }

    byte[] rest() {
        return next(all.length - at);
    }

    /** So many digits, two an octet, the first in its lower half; what only fills up is left out. */
    String digits(int count) {
        StringBuilder digits = new StringBuilder(count + 1);
        for (byte octet : next((count + 1) / 2)) {
            append(digits, octet & 0x0F);
            append(digits, octet >> 4 & 0x0F);
        }
        return digits.length() > count ? digits.substring(0, count) : digits.toString();
    }

    private static void append(StringBuilder digits, int half) {
        if (half < DIGITS.length()) {
            digits.append(DIGITS.charAt(half));
        }
    }

    /** The same, written. Only decimal digits. */
    static byte[] ofDigits(String digits) {
        byte[] octets = new byte[(digits.length() + 1) / 2];
        for (int i = 0; i < octets.length; i++) {
            int low = digits.charAt(2 * i) - '0';
            int high = 2 * i + 1 < digits.length() ? digits.charAt(2 * i + 1) - '0' : 0x0F;
            octets[i] = (byte) (high << 4 | low);
        }
        return octets;
    }
}
