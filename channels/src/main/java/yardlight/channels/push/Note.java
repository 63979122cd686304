package yardlight.channels.push;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import yardlight.channels.Message;

/** What the page on the phone gets: JSON with {@code id}, {@code text} and {@code at}. */
final class Note {

    /** RFC 8030 7.2: 4,096 bytes pass anywhere; RFC 8291 4: less the header of 86 and the 17 of one record. */
    static final int MOST_BYTES = 3_993;

    /** RFC 8030 5.4: 32 characters, in 24 bytes. */
    private static final int TOPIC_BYTES = 24;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Note() {}

    /** A text that is too long ends in three dots. */
    static byte[] of(Message message) {
        byte[] whole = write(message, message.text());
        if (whole.length <= MOST_BYTES) {
            return whole;
        }
        int fits = 0;
        int tooMany = Math.min(message.text().length(), MOST_BYTES);
        while (tooMany - fits > 1) {
            int half = (fits + tooMany) / 2;
            if (write(message, cut(message.text(), half)).length <= MOST_BYTES) {
                fits = half;
            } else {
                tooMany = half;
            }
        }
        return write(message, cut(message.text(), fits));
    }

    /** The same for the same message: a service that still has it puts the later one in its place (RFC 8030 5.4). */
    static String topic(String id) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.US_ASCII));
            return Base64.getUrlEncoder().encodeToString(Arrays.copyOf(digest, TOPIC_BYTES));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    private static String cut(String text, int length) {
        int end = length > 0 && Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
        return text.substring(0, end) + "...";
    }

    private static byte[] write(Message message, String text) {
        ObjectNode note = JSON.createObjectNode();
        note.put("id", message.id());
        note.put("text", text);
        note.put("at", message.at().toString());
        return JSON.writeValueAsString(note).getBytes(StandardCharsets.UTF_8);
    }
}
