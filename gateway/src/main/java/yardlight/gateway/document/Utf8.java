package yardlight.gateway.document;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import yardlight.gateway.problem.Problem;

/** Strict UTF-8: bytes that are none are refused rather than replaced. */
final class Utf8 {

    private static final char MARK = '\uFEFF';

    private Utf8() {}

    /** The text without a leading byte order mark. */
    static String text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw Problem.unreadable("the body must be UTF-8");
        }
    }
}
