package yardlight.gateway.push;

import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import yardlight.db.setup.SetupVersion;
import yardlight.db.setup.SetupVersions;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.AddedLine;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/** Adds a subscription to the setup, as its owner would by putting a whole one: checked, logged and kept the same way. */
@Component
class PhoneLines {

    private static final Logger LOG = LoggerFactory.getLogger(PhoneLines.class);
    private static final String CHANNEL = "push";
    private static final String OVERTAKEN = "somebody stored another setup at the same moment; add the phone again";
    private static final String BY_HAND =
            "the setup is written in a way that is not changed from here; copy the line and put it there by hand";

    private final SetupInForce inForce;
    private final SetupVersions versions;
    private final SetupReader reader;
    private final Lane lane;

    PhoneLines(SetupInForce inForce, SetupVersions versions, SetupReader reader, Lane lane) {
        this.inForce = inForce;
        this.versions = versions;
        this.reader = reader;
        this.lane = lane;
    }

    List<Contact> people() {
        return List.copyOf(inForce.setup().contacts().values());
    }

    /**
     * Adds the line behind the contact's others; one that is there already is left as it is.
     *
     * @throws Problem 404 when there is no such contact, 409 when the document cannot be changed from here, or when another one
     *     was stored meanwhile, 422 when the channel does not take the address
     */
    void add(String contact, String address, String by) {
        Contact known = Optional.ofNullable(inForce.setup().contacts().get(contact))
                .orElseThrow(() -> Problem.notFound("there is no such contact"));
        if (known.lines().contains(new Line(CHANNEL, address))) {
            return;
        }
        SetupVersion newest = versions.newest().orElseThrow(() -> Problem.conflict(BY_HAND));
        String text =
                AddedLine.in(newest.document(), contact, CHANNEL, address).orElseThrow(() -> Problem.conflict(BY_HAND));
        Setup setup = reader.read(SetupText.document(text));
        if (lane.setup(text, new Stimulus.SetupChanged(setup, by), newest.version()) instanceof Answer.Refusal) {
            throw Problem.conflict(OVERTAKEN);
        }
        LOG.info("{} added a phone to the lines of {}", by, contact);
    }
}
