package yardlight.channels.mail;

import java.util.Locale;
import java.util.Optional;

/** How far a conversation with a server has come: what it was asked last. In their order. */
enum Stage {
    /** Connecting, and the greeting. */
    GREETING("greeting", "the server does not let us in"),
    HELLO("hello", "the server does not let us in"),
    STARTTLS("STARTTLS", "no TLS"),
    LOGIN("login", "the login was not taken"),
    /** MAIL. Up to here the line has not even been named. */
    SENDER("MAIL", "the sender was not taken"),
    /** RCPT. */
    RECIPIENT("RCPT", ""),
    /** DATA, and the text while it is being sent. */
    DATA("DATA", ""),
    /** The end of the text has left: from here on the server may have taken it. */
    SENT("end of the text", "");

    private final String step;
    private final String trouble;

    Stage(String step, String trouble) {
        this.step = step;
        this.trouble = trouble;
    }

    /** Whether a refusal at this stage says anything of the line, and not only of us and the server. */
    boolean concernsLine() {
        return compareTo(RECIPIENT) >= 0;
    }

    /** As a person reads it: {@code RCPT}. */
    String step() {
        return step;
    }

    /** What a refusal at this stage means for the owner; empty once it concerns the line. */
    String trouble() {
        return trouble;
    }

    /** Empty for commands that are no step of handing over: NOOP, RSET, QUIT. */
    static Optional<Stage> askedBy(String command) {
        return switch (command.split(" ", 2)[0].toUpperCase(Locale.ROOT)) {
            case "EHLO", "HELO" -> Optional.of(HELLO);
            case "STARTTLS" -> Optional.of(STARTTLS);
            case "AUTH" -> Optional.of(LOGIN);
            case "MAIL" -> Optional.of(SENDER);
            case "RCPT" -> Optional.of(RECIPIENT);
            case "DATA" -> Optional.of(DATA);
            case "." -> Optional.of(SENT);
            default -> Optional.empty();
        };
    }
}
