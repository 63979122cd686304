package yardlight.demo.phone;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import yardlight.demo.carrier.Letter;
import yardlight.demo.cast.Cast;
import yardlight.demo.cast.Person;

/** Everybody's phone and mail box, with all that has arrived since the demo began. */
public final class Phones {

    private final Cast cast;
    private final InstantSource clock;
    private final List<Text> texts = new ArrayList<>();
    private final List<Consumer<Text>> listeners = new CopyOnWriteArrayList<>();

    /**
     * @param clock the gateway's time, which the phones show
     */
    public Phones(Cast cast, InstantSource clock) {
        this.cast = cast;
        this.clock = clock;
    }

    public boolean know(String address) {
        return cast.owner(address).isPresent();
    }

    /** Puts a letter where it belongs. */
    public void take(Letter letter) {
        Person person = cast.owner(letter.to())
                .orElseThrow(() -> new IllegalArgumentException("nobody has the address " + letter.to()));
        Text.Path path = person.text().equalsIgnoreCase(letter.to()) ? Text.Path.PHONE : Text.Path.MAIL;
        Text text = keep(letter, person, path);
        listeners.forEach(listener -> listener.accept(text));
    }

    private synchronized Text keep(Letter letter, Person person, Text.Path path) {
        Text text = new Text(texts.size() + 1, person, path, clock.instant(), letter.body(), letter.messageId());
        texts.add(text);
        return text;
    }

    /** Is told of each message once it is kept, on the carrier's thread: it must be quick. */
    public void onArrival(Consumer<Text> listener) {
        listeners.add(listener);
    }

    /** All messages, oldest first. */
    public synchronized List<Text> texts() {
        return List.copyOf(texts);
    }
}
