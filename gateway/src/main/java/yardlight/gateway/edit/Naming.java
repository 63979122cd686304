package yardlight.gateway.edit;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/** Makes ids of what people call things. */
public final class Naming {

    /** Leaves room for a number in the 64 characters of an id. */
    private static final int LONGEST = 58;

    private Naming() {}

    /**
     * {@code mesa-9} for {@code Mesa 9}; {@code mesa-9-2} when that is taken.
     *
     * @param otherwise for a name in which no letter or digit of an id is
     */
    public static String id(String name, Set<String> taken, String otherwise) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String cut = trimmed(plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain);
        String id = cut.isEmpty() ? otherwise : cut;
        return taken.contains(id)
                ? IntStream.iterate(2, n -> n + 1)
                        .mapToObj(n -> id + "-" + n)
                        .filter(other -> !taken.contains(other))
                        .findFirst()
                        .orElseThrow()
                : id;
    }

    private static String trimmed(String id) {
        return id.replaceAll("^-+|-+$", "");
    }
}
