package yardlight.gateway.sentence;

import java.util.Locale;
import yardlight.escalation.setup.Language;

/** How words, numbers and dates are written in each of the two languages. */
public final class Locales {

    public static final Locale ENGLISH = Locale.ENGLISH;

    /**
     * Of Spanish speakers in the United States: {@code 1,000} and {@code 18.4}, as on their gauges and in the texts. Spain
     * would have {@code 1.000} and {@code 18,4}.
     */
    public static final Locale SPANISH = Locale.forLanguageTag("es-US");

    private Locales() {}

    public static Locale of(Language language) {
        return switch (language) {
            case EN -> ENGLISH;
            case ES -> SPANISH;
        };
    }

    /** The one for whoever asks for this; English where they ask for neither language. */
    public static Locale of(Locale asked) {
        return asked.getLanguage().equals(SPANISH.getLanguage()) ? SPANISH : ENGLISH;
    }
}
