package yardlight.channels;

import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * A picture that goes along with a message, by the channels that can carry one; the others leave it out. The text never
 * depends on it.
 *
 * @param name of the file, {@code curve.png}: 1 to 60 of letters, digits, dots, hyphens and underscores
 * @param type its media type, such as {@code image/png}
 * @param content never changed after it was handed in
 * @param words what it shows, for whoever cannot see it; one sentence or a few, without line ends
 */
public record Attachment(String name, String type, byte[] content, String words) {

    /** What is larger than this is no small picture; in bytes, inclusive. */
    public static final int MOST_BYTES = 30_000;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9._-]{1,60}");
    private static final Pattern TYPE = Pattern.compile("[a-z]+/[a-z0-9.+-]+");

    public Attachment {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("attachment must have a plain file name: " + name);
        }
        if (!TYPE.matcher(type).matches()) {
            throw new IllegalArgumentException("attachment must have a media type: " + type);
        }
        if (content.length == 0 || content.length > MOST_BYTES) {
            throw new IllegalArgumentException("attachment must have 1 to " + MOST_BYTES + " bytes: " + content.length);
        }
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Attachment that
                && name.equals(that.name)
                && type.equals(that.type)
                && words.equals(that.words)
                && Arrays.equals(content, that.content);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(content);
    }

    @Override
    public String toString() {
        return name + " (" + type + ", " + content.length + " bytes)";
    }
}
