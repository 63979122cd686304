package yardlight.gateway.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.springframework.context.support.ResourceBundleMessageSource;
import yardlight.gateway.sentence.Locales;

/** The two languages, with every list of words that the gateway has. */
public final class Tongues {

    public static final Tongue ENGLISH = new Tongue(words(), Locales.ENGLISH);
    public static final Tongue SPANISH = new Tongue(words(), Locales.SPANISH);

    private Tongues() {}

    private static ResourceBundleMessageSource words() {
        var source = new ResourceBundleMessageSource();
        source.setDefaultEncoding("UTF-8");
        source.setFallbackToSystemLocale(false);
        source.setBasenames(lists());
        return source;
    }

    private static String[] lists() {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/words"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.endsWith("_es.properties"))
                    .map(name -> "words/" + name.replace(".properties", ""))
                    .toArray(String[]::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
