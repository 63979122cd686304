package yardlight.channels.smpp;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.jsmpp.bean.OptionalParameter;

/** The optional parameters that we heed (section 5.3.2), by their tags. */
enum Tlv {
    ADDITIONAL_STATUS_INFO_TEXT(0x001D),
    RECEIPTED_MESSAGE_ID(0x001E),
    USER_MESSAGE_REFERENCE(0x0204),
    SAR_MSG_REF_NUM(0x020C),
    SAR_TOTAL_SEGMENTS(0x020E),
    SAR_SEGMENT_SEQNUM(0x020F),
    MESSAGE_PAYLOAD(0x0424),
    MESSAGE_STATE(0x0427);

    /** Tag and length before each value: section 3.2.4.1. */
    private static final int HEAD = 4;

    private final int tag;

    Tlv(int tag) {
        this.tag = tag;
    }

    Optional<byte[]> in(OptionalParameter[] parameters) {
        return parameters == null
                ? Optional.empty()
                : Arrays.stream(parameters)
                        .filter(one -> one.tag == (short) tag)
                        .map(OptionalParameter::serialize)
                        .map(whole -> Arrays.copyOfRange(whole, HEAD, whole.length))
                        .findFirst();
    }

    /** As an unsigned number of as many octets as it has; empty if it has none or more than four. */
    Optional<Integer> numberIn(OptionalParameter[] parameters) {
        return in(parameters)
                .filter(value -> value.length >= 1 && value.length <= 4)
                .map(Tlv::number);
    }

    /** As text up to its NUL; empty if it is not there. */
    String textIn(OptionalParameter[] parameters) {
        return in(parameters)
                .map(value -> new String(value, StandardCharsets.ISO_8859_1))
                .map(text -> text.indexOf('\0') < 0 ? text : text.substring(0, text.indexOf('\0')))
                .orElse("");
    }

    private static int number(byte[] value) {
        int number = 0;
        for (byte octet : value) {
            number = number << 8 | octet & 0xFF;
        }
        return number;
    }
}
