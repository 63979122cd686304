package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;

/** Mails for these tests: those that lie beside them, and those that a test writes. */
final class Mails {

    /** The address that the mails beside the tests are written to. */
    static final String OWN = "yardlight@yardlight.example";

    /** @param meant in the words of the index, without the Message-ID */
    record Listed(String file, String kind, String from, String meant, String about) {

        @Override
        public String toString() {
            return file;
        }
    }

    private Mails() {}

    static List<Listed> listed() {
        return new String(bytes("index.txt"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.split(" ", 4))
                .map(words -> words[1].startsWith("bounce")
                        ? new Listed(words[0], words[1], words[2], "-", words[3].replaceFirst("^- ", ""))
                        : new Listed(words[0], words[1], words[2], words[3], "-"))
                .toList();
    }

    static byte[] bytes(String file) {
        try (var in = Mails.class.getResourceAsStream(file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static MimeMessage file(String file) throws MessagingException {
        return parsed(bytes(file));
    }

    /** @param text with bare line ends; one character is one byte */
    static MimeMessage of(String text) throws MessagingException {
        return parsed(text.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    /** A person's, with further lines in its header. */
    static String from(String address, String fields, String words) {
        return "From: " + address + "\nTo: " + OWN + "\nSubject: Re: MESA 9\nMessage-ID: <m1@mail.example>\n" + fields
                + "\n" + words + "\n";
    }

    static Meaning read(MimeMessage mail) throws MessagingException, IOException {
        return new MailReader(OWN).read(mail);
    }

    private static MimeMessage parsed(byte[] bytes) throws MessagingException {
        return new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(bytes));
    }
}
