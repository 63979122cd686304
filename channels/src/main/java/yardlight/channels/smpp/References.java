package yardlight.channels.smpp;

import java.math.BigInteger;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Finds the text that a receipt is about.
 *
 * <p>Two things are in the way. Some centres name a text in hexadecimal when they take it and in decimal in its receipt,
 * or the other way about: SMPP 3.3 had it so, and appendix B still shows ten decimal digits. And of a text in several parts
 * each has a name, while ours is that of the last. Both are learned from what the centre took and then receipted, and kept
 * in memory, the last {@value #MOST} names: a receipt that comes after a restart is looked up as the centre writes it, or
 * as it wrote the last one.
 */
final class References {

    static final int MOST = 10_000;

    /** How the name in a receipt becomes the name at the submit. */
    private enum Form implements UnaryOperator<String> {
        AS_IT_IS {
            @Override
            public String apply(String id) {
                return id;
            }
        },
        DECIMAL_OF_HEXADECIMAL {
            @Override
            public String apply(String id) {
                return id.matches("[0-9]{1,20}") ? new BigInteger(id).toString(16) : id;
            }
        },
        HEXADECIMAL_OF_DECIMAL {
            @Override
            public String apply(String id) {
                return id.matches("[0-9A-Fa-f]{1,16}") ? new BigInteger(id, 16).toString() : id;
            }
        }
    }

    /** From the bare name of a part to the name of its text. */
    private final Map<String, String> known = new LinkedHashMap<>();

    private Form form = Form.AS_IT_IS;

    /** The centre has taken a part under this name, and its text is known by that one. */
    synchronized void taken(String part, String text) {
        known.put(bare(part), text);
        Iterator<String> oldest = known.keySet().iterator();
        while (known.size() > MOST) {
            oldest.next();
            oldest.remove();
        }
    }

    /** The name under which the text was taken that this name in a receipt means. */
    synchronized String meant(String id) {
        Optional<String> found = find(form, id);
        for (Form other : Form.values()) {
            if (found.isEmpty()) {
                found = find(other, id);
                form = found.isPresent() ? other : form;
            }
        }
        return found.orElseGet(() -> form.apply(id));
    }

    private Optional<String> find(Form how, String id) {
        return Optional.ofNullable(known.get(bare(how.apply(id))));
    }

    /** Without what only fills it up, for centres differ in that between the two as well. */
    private static String bare(String id) {
        return id.strip().toLowerCase(Locale.ROOT).replaceFirst("^0+(?=.)", "");
    }
}
