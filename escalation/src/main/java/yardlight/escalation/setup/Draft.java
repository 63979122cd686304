package yardlight.escalation.setup;

import java.util.List;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.roster.Roster;

/** The six lists of a setup document, in the order in which they were written, before anybody has checked them. */
public record Draft(
        List<Site> sites,
        List<Box> boxes,
        List<Point> points,
        List<Contact> contacts,
        List<Roster> rosters,
        List<Ladder> ladders) {

    public Draft {
        sites = List.copyOf(sites);
        boxes = List.copyOf(boxes);
        points = List.copyOf(points);
        contacts = List.copyOf(contacts);
        rosters = List.copyOf(rosters);
        ladders = List.copyOf(ladders);
    }

    /** The setup itself. Only for a draft in which {@link SetupCheck} finds no mistake. */
    public Setup setup() {
        return new Setup(sites, boxes, points, contacts, rosters, ladders);
    }
}
