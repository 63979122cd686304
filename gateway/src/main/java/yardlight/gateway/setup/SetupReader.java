package yardlight.gateway.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import yardlight.channels.Channel;
import yardlight.escalation.setup.Draft;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.SetupCheck;
import yardlight.escalation.setup.Site;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.problem.Problem;

/**
 * Reads a setup document. Nothing in it may be misspelt, doubled or lead nowhere: what the owner meant to set up would
 * silently be missing on the night it is needed.
 */
@Component
public class SetupReader {

    private final SetupCheck check;
    private final LineReader lines;

    /** @param channels those that a line may name */
    public SetupReader(List<Channel> channels) {
        check = new SetupCheck(channels.stream().map(Channel::name).collect(Collectors.toSet()));
        lines = new LineReader(channels);
    }

    /**
     * Reads a document. Texts and numbers are taken for each other in JSON as in YAML, because a document may be written
     * in one and fetched in the other.
     *
     * @throws Problem 422 with every mistake, in the order of the document's lists
     */
    public Setup read(Document document) {
        var faults = new Faults();
        Optional<Setup> setup = read(document, "#", faults);
        faults.orNothing();
        return setup.orElseThrow();
    }

    /**
     * Reads a document that is part of another one.
     *
     * @param pointer where it stands there
     * @param into gets every mistake
     * @return empty when there is any
     */
    public Optional<Setup> read(Document document, String pointer, Faults into) {
        var faults = new Faults();
        faults.addAll(document.faults());
        Draft draft = draft(document.loosely().fields(faults));
        check.check(draft).stream()
                .filter(mistake -> !faults.within(mistake.pointer()))
                .forEach(mistake -> faults.add(mistake.pointer(), mistake.rule()));
        faults.list().forEach(fault -> into.add(pointer + fault.place().substring(1), fault.rule()));
        return faults.count() == 0 ? Optional.of(draft.setup()) : Optional.empty();
    }

    private Draft draft(Fields fields) {
        List<Site> sites = each(fields, "sites", PlaceReader::site);
        var zones = Zones.of(sites);
        var people = new PeopleReader(lines, zones);
        var calling = new CallingReader(zones);
        var draft = new Draft(
                sites,
                each(fields, "boxes", PlaceReader::box),
                each(fields, "points", PlaceReader::point),
                each(fields, "contacts", people::contact),
                each(fields, "rosters", calling::roster),
                each(fields, "ladders", calling::ladder));
        fields.nothingElse();
        return draft;
    }

    private static <T> List<T> each(Fields fields, String name, Function<Fields, T> reader) {
        var things = new ArrayList<T>();
        fields.objects(name).forEach(object -> things.add(reader.apply(object)));
        return things;
    }
}
