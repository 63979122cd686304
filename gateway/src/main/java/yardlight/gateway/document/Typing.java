package yardlight.gateway.document;

import java.util.Optional;

/**
 * What may count as a text, a number or a flag.
 *
 * @param loose whether they are taken for each other, because the format cannot tell them apart for certain
 */
record Typing(boolean loose) {

    Optional<String> text(Node node) {
        if (node instanceof Node.Text text) {
            return Optional.of(text.value());
        }
        if (loose && node instanceof Node.Number number) {
            return Optional.of(number.written());
        }
        return loose && node instanceof Node.Flag flag ? Optional.of(Boolean.toString(flag.value())) : Optional.empty();
    }

    /** A number as it was written, or what is to be one. */
    Optional<String> number(Node node) {
        if (node instanceof Node.Number number) {
            return Optional.of(number.written());
        }
        return loose && node instanceof Node.Text text ? Optional.of(text.value()) : Optional.empty();
    }

    Optional<Boolean> flag(Node node) {
        if (node instanceof Node.Flag flag) {
            return Optional.of(flag.value());
        }
        return text(node).filter(word -> loose && word.matches("true|false")).map(Boolean::valueOf);
    }
}
