package yardlight.demo.cast;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The people, sites and boxes of a setup document.
 *
 * @param document the document itself, YAML as the gateway takes it
 * @param siteNames names by site id
 * @param siteOfBox site ids by box id
 * @param zone that of the first site; the demo's clock shows it
 */
public record Cast(
        String document,
        List<Person> people,
        Map<String, String> siteNames,
        Map<String, String> siteOfBox,
        ZoneId zone) {

    public Cast {
        people = List.copyOf(people);
    }

    /** The operator of the demo. */
    public static Cast ofTheDemo() {
        try (InputStream in = Cast.class.getResourceAsStream("/setup.yaml")) {
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Cast read(String document) {
        Map<String, List<Map<String, Object>>> setup =
                new Yaml(new SafeConstructor(new LoaderOptions())).load(document);
        Map<String, String> names = new LinkedHashMap<>();
        setup.get("sites").forEach(site -> names.put(word(site, "id"), word(site, "name")));
        Map<String, String> boxes = new LinkedHashMap<>();
        setup.get("boxes").forEach(box -> boxes.put(word(box, "id"), word(box, "site")));
        List<Person> people = setup.get("contacts").stream().map(Cast::person).toList();
        ZoneId zone = ZoneId.of(word(setup.get("sites").get(0), "zone"));
        return new Cast(document, people, names, boxes, zone);
    }

    private static Person person(Map<String, Object> contact) {
        return new Person(word(contact, "id"), word(contact, "name"), line(contact, "sms-mail"), line(contact, "mail"));
    }

    private static String line(Map<String, Object> contact, String channel) {
        return ((List<?>) contact.get("lines"))
                .stream()
                        .map(line -> (Map<?, ?>) line)
                        .filter(line -> channel.equals(line.get("channel")))
                        .map(line -> String.valueOf(line.get("address")))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(
                                "contact must have a line of channel " + channel + ": " + contact.get("id")));
    }

    private static String word(Map<String, Object> thing, String key) {
        return String.valueOf(thing.get(key));
    }

    public Optional<Person> person(String id) {
        return people.stream().filter(person -> person.id().equals(id)).findFirst();
    }

    /** Whose phone or mail box this address is. */
    public Optional<Person> owner(String address) {
        return people.stream()
                .filter(person ->
                        person.text().equalsIgnoreCase(address) || person.mail().equalsIgnoreCase(address))
                .findFirst();
    }
}
