package yardlight.gateway.lines;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Masks;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** The contacts with their lines, and the test of one of them. */
@Component
class PeopleLines {

    private final SetupInForce inForce;
    private final KnownLines known;
    private final Lane lane;

    PeopleLines(SetupInForce inForce, KnownLines known, Lane lane) {
        this.inForce = inForce;
        this.known = known;
        this.lane = lane;
    }

    List<Contact> all() {
        return List.copyOf(inForce.setup().contacts().values());
    }

    /** 404 when there is no such contact. */
    Contact one(String id) {
        return Optional.ofNullable(inForce.setup().contacts().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such contact"));
    }

    /** What is known of all lines that anything is known of. */
    Map<LineHealth.Key, LineHealth> known() {
        return known.all();
    }

    List<KnownLine> lines(Contact contact, HttpServletRequest request) {
        return lines(contact, known.of(contact), request);
    }

    List<KnownLine> lines(Contact contact, List<LineHealth> lines, HttpServletRequest request) {
        boolean whole = request.isUserInRole("HAND") || request.isUserInRole("OWNER");
        return IntStream.range(0, lines.size())
                .mapToObj(place -> line(place, contact, lines, whole))
                .toList();
    }

    private static KnownLine line(int place, Contact contact, List<LineHealth> lines, boolean whole) {
        LineHealth line = lines.get(place);
        return whole
                ? new KnownLine(place, contact.lines().get(place).address(), line)
                : new KnownLine(place, Masks.of(line.key().address()), Masks.of(line));
    }

    /**
     * Sends a test by exactly this line.
     *
     * @param number of the line, from 1 on
     * @throws Problem 404 when there is no such line; 409 when the rules refuse, with their reason
     */
    int test(String id, String number, String by) {
        Contact contact = one(id);
        int place = number.matches("[1-9]\\d{0,3}")
                ? Integer.parseInt(number) - 1
                : contact.lines().size();
        if (place >= contact.lines().size()) {
            throw Problem.notFound("this contact has no such line");
        }
        if (lane.decide(new Stimulus.TestLine(id, place, by)) instanceof Answer.Refusal refusal) {
            throw Problem.of(HttpStatus.CONFLICT, refusal.why());
        }
        return place;
    }
}
