package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.InternetHeaders;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimePart;
import jakarta.mail.internet.MimeUtility;
import jakarta.mail.internet.ParseException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Locale;
import java.util.Optional;

/** A part of a mail that has no parts of its own, or that is a mail itself. */
record Leaf(MimePart part, ContentType type) {

    /** Of what is read of one part, in bytes. */
    private static final int MOST = 256 * 1024;

    static Leaf of(MimePart part) throws MessagingException {
        return new Leaf(part, typeOf(part));
    }

    /** What does not say its type is text (RFC 2045 5.2); what says it in a way that nobody can read is anything. */
    static ContentType typeOf(MimePart part) throws MessagingException {
        try {
            return new ContentType(part.getContentType());
        } catch (ParseException e) {
            return new ContentType("application", "octet-stream", null);
        }
    }

    boolean is(String primary, String... sub) {
        for (String one : sub) {
            if (type.match(primary + "/" + one)) {
                return true;
            }
        }
        return false;
    }

    boolean isAttached() throws MessagingException {
        String disposition = part.getHeader("Content-Disposition", ";");
        return disposition != null
                && disposition.strip().toLowerCase(Locale.ROOT).startsWith(Part.ATTACHMENT);
    }

    Optional<String> parameter(String name) {
        return Optional.ofNullable(type.getParameter(name));
    }

    String text() throws MessagingException, IOException {
        return decoded(bytes(), parameter("charset"));
    }

    /** The header lines of a mail that is within this one, or that is all there is of it. */
    InternetHeaders headers() throws MessagingException, IOException {
        return new InternetHeaders(new ByteArrayInputStream(bytes()), true);
    }

    private byte[] bytes() throws MessagingException, IOException {
        try (InputStream in = stream()) {
            return in.readNBytes(MOST);
        }
    }

    /** A transfer encoding that nobody knows is read as it stands. */
    private InputStream stream() throws MessagingException, IOException {
        try {
            return part.getInputStream();
        } catch (MessagingException | IOException e) {
            return part instanceof MimeBodyPart inner
                    ? inner.getRawInputStream()
                    : ((MimeMessage) part).getRawInputStream();
        }
    }

    /** Eight bits under a name that says seven, or under none that is known, are UTF-8 if they can be. */
    private static String decoded(byte[] bytes, Optional<String> name) {
        Optional<Charset> charset = name.flatMap(Leaf::charset).filter(known -> known != StandardCharsets.US_ASCII);
        if (charset.isPresent()) {
            return new String(bytes, charset.get());
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    private static Optional<Charset> charset(String name) {
        try {
            return Optional.of(Charset.forName(MimeUtility.javaCharset(name.strip())));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            return Optional.empty();
        }
    }
}
