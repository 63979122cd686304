package yardlight.escalation.setup;

import java.util.Locale;
import java.util.Optional;

/** The languages that texts are written in. */
public enum Language {
    EN,
    ES;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Language> of(String word) {
        for (Language language : values()) {
            if (language.word().equals(word)) {
                return Optional.of(language);
            }
        }
        return Optional.empty();
    }
}
