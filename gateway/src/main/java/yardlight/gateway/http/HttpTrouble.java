package yardlight.gateway.http;

/** A provider cannot be used as it is set up. The message is a sentence with the property, the rule and the value. */
final class HttpTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    HttpTrouble(String message, Throwable cause) {
        super(message, cause);
    }
}
