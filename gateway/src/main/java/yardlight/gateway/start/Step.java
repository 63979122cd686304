package yardlight.gateway.start;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What there is to do, in this order. */
enum Step {
    YOU,
    SITE,
    BOX,
    LADDER,
    TEST;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Step> of(String word) {
        return Stream.of(values()).filter(step -> step.word().equals(word)).findFirst();
    }

    Optional<Step> next() {
        return ordinal() + 1 < values().length ? Optional.of(values()[ordinal() + 1]) : Optional.empty();
    }
}
