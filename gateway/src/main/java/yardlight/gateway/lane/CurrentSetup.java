package yardlight.gateway.lane;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.journal.Writing;
import yardlight.escalation.setup.Setup;

/** The setup that holds, kept in memory; read again when another gateway has stored a newer one. */
public final class CurrentSetup {

    private static final Logger LOG = LoggerFactory.getLogger(CurrentSetup.class);

    private record Version(int number, Setup setup) {}

    private final SetupSource source;
    private volatile Version version = new Version(0, Setup.EMPTY);

    CurrentSetup(SetupSource source) {
        this.source = source;
    }

    /** The setup of the last transaction; an empty one before the first is stored. */
    public Setup setup() {
        return version.setup();
    }

    /** Takes over what the transaction finds, if it is another version. */
    void follow(Writing writing) {
        int number = writing.setupVersion();
        if (number != version.number()) {
            version = new Version(number, read(number, writing.setupDocument()));
        }
    }

    /** Takes over what this gateway has just stored. */
    void replace(int number, Setup setup) {
        version = new Version(number, setup);
    }

    /** A document that another release of the gateway stored may be beyond this one: better the old one than none. */
    private Setup read(int number, Optional<String> document) {
        try {
            return document.map(source::read).orElse(Setup.EMPTY);
        } catch (RuntimeException e) {
            LOG.error("version {} of the setup cannot be read; the one before it stays in force here", number, e);
            return version.setup();
        }
    }
}
