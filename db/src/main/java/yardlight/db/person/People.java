package yardlight.db.person;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** Everybody who may sign in. */
@Repository
public class People {

    private final PersonRows rows;
    private final Disk disk;

    People(PersonRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    public Optional<Person> byLogin(String login) {
        return rows.findById(login).map(PersonRow::person);
    }

    /** All of them, by login. */
    public List<Person> all() {
        return rows.findAll().stream()
                .map(PersonRow::person)
                .sorted(Comparator.comparing(Person::login))
                .toList();
    }

    public boolean anyOwner() {
        return rows.anyWithRole(Role.OWNER.word());
    }

    /** Adds the person, or replaces the one with the same login; on disk when it returns. */
    public void keep(Person person, Instant now) {
        disk.keep(() -> rows.save(new PersonRow(person, now)));
    }

    /**
     * Adds the person unless the login exists, and says whether it did; on disk when it returns.
     *
     * @param before is run when it does not exist, and before anything of it is kept
     */
    public boolean keepIfNew(Person person, Instant now, Runnable before) {
        return disk.keep(() -> {
            boolean missing = rows.findById(person.login()).isEmpty();
            if (missing) {
                rows.saveAndFlush(new PersonRow(person, now));
                before.run();
            }
            return missing;
        });
    }

    /** Changes what is known of a login, but never the last owner into something else; on disk when it returns. */
    public Change change(String login, UnaryOperator<Person> how) {
        return disk.keep(() -> {
            List<PersonRow> owners = rows.lockByRole(Role.OWNER.word());
            Optional<PersonRow> row = rows.findById(login);
            if (row.isEmpty()) {
                return Change.UNKNOWN;
            }
            Person before = row.get().person();
            Person after = how.apply(before);
            if (isLast(before, owners) && after.role() != Role.OWNER) {
                return Change.LAST_OWNER;
            }
            row.get().become(after);
            return Change.DONE;
        });
    }

    /** Removes a login with all that belongs to it, but never the last owner; on disk when it returns. */
    public Change remove(String login) {
        return disk.keep(() -> {
            List<PersonRow> owners = rows.lockByRole(Role.OWNER.word());
            Optional<PersonRow> row = rows.findById(login);
            if (row.isEmpty()) {
                return Change.UNKNOWN;
            }
            if (isLast(row.get().person(), owners)) {
                return Change.LAST_OWNER;
            }
            rows.delete(row.get());
            return Change.DONE;
        });
    }

    private static boolean isLast(Person person, List<PersonRow> owners) {
        return person.role() == Role.OWNER && owners.size() <= 1;
    }
}
