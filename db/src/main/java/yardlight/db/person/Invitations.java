package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** The invitations, open and used. */
@Repository
public class Invitations {

    /** What became of the wish to use one. */
    public enum Use {
        JOINED,
        /** It was used, taken back or too old. */
        GONE,
        /** Somebody has this login; the invitation is still good. */
        TAKEN
    }

    private final InvitationRows rows;
    private final PersonRows people;
    private final Disk disk;

    Invitations(InvitationRows rows, PersonRows people, Disk disk) {
        this.rows = rows;
        this.people = people;
        this.disk = disk;
    }

    public Optional<Invitation> byHash(String tokenHash) {
        return rows.byTokenHash(tokenHash).map(InvitationRow::invitation);
    }

    /** Those that can still be used at {@code now}, oldest first. */
    public List<Invitation> open(Instant now) {
        return rows.open(now).stream().map(InvitationRow::invitation).toList();
    }

    /** On disk when it returns. */
    public void add(Invitation invitation) {
        disk.keep(() -> rows.save(new InvitationRow(invitation)));
    }

    /** Removes one that nobody has used; false when there is none. On disk when it returns. */
    public boolean takeBack(String id) {
        return disk.keep(() -> rows.takeBack(id)) > 0;
    }

    /** Makes the login and uses the invitation up, both or neither; of several at once one gets it. On disk when it returns. */
    public Use use(String tokenHash, Person person, Instant now) {
        try {
            return disk.keep(() -> {
                if (people.findById(person.login()).isPresent()) {
                    return Use.TAKEN;
                }
                if (rows.use(tokenHash, person.login(), now) == 0) {
                    return Use.GONE;
                }
                people.saveAndFlush(new PersonRow(person, now));
                return Use.JOINED;
            });
        } catch (DataIntegrityViolationException another) {
            return Use.TAKEN;
        }
    }
}
